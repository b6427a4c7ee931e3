// Lays the bands of one chamber into a draft: windings, blocks, plies, screens, the leads in their bands.

import { nm, type Nm } from '#units/quantity.ts';
import type { Build, BuildLayer, Lay, Side } from './build.ts';
import { type Draft, rect, shrink } from './draft.ts';
import { placementOf } from './fit.ts';
import { riserIsSleeved } from './lead-shape.ts';
import { clipOf, faceX, type Riser } from './risers.ts';
import type { Band, Rect } from './section.ts';
import { driftRoom, isRetained } from './slump.ts';
import type { LaidLead, StackBand } from './stack.ts';

export type Slump = null | 'as-is' | 'left' | 'right';

interface Span {
  readonly x0: Nm;
  readonly x1: Nm;
}

/** What lays in a band must know of the section. */
export interface Laying {
  readonly draft: Draft;
  readonly build: Build;
  readonly risers: readonly Riser[];
  readonly slump: Slump;
  readonly bands: Band[];
}

export function layBand(laying: Laying, chamber: number, band: StackBand): void {
  const { build, draft, risers, bands } = laying;
  const layer = build.layers[band.position]!;
  const clip = (side: Side) => clipOf(risers, chamber, side, band.position, band.y1);
  const room: Span = {
    x0: nm(faceX(build, chamber, 'left') + clip('left')),
    x1: nm(faceX(build, chamber, 'right') - clip('right')),
  };
  switch (band.kind) {
    case 'cross-tape':
      draft.plies(room.x0, room.x1, band.y0, band.tape, band.plies, { layer: band.tape.index });
      bands.push({ layer: band.tape.index, chamber, kind: 'tape', y0: band.y0, y1: band.y1, ...room });
      return;
    case 'crossing-lead': {
      layLead(laying, chamber, band.lead, room, true);
      bands.push({ layer: layer.index, chamber, kind: 'crossing-lead', y0: band.y0, y1: band.y1, ...room });
      return;
    }
    case 'layer': {
      const span = layLayer(laying, layer, band, room);
      bands.push({ layer: layer.index, chamber, kind: layer.kind, y0: band.y0, y1: band.y1, ...span });
      if (band.lead) layLead(laying, chamber, band.lead, room, false);
    }
  }
}

function layLayer(
  laying: Laying,
  layer: BuildLayer,
  band: Extract<StackBand, { kind: 'layer' }>,
  room: Span,
): Span {
  const { build, draft } = laying;
  layBlocks(laying, layer, band, room);
  switch (layer.kind) {
    case 'winding': {
      const { x0, x1 } = layWinding(laying, layer, band, room);
      return { x0, x1 };
    }
    case 'tape': {
      const { x0, x1, drifted } = tapeSpan(laying, layer, room);
      draft.plies(x0, x1, band.y0, layer, layer.plies, {
        layer: layer.index,
        turnUp: layer.turnUp,
        closed: layer.cemented,
        drifted,
      });
      return { x0, x1 };
    }
    case 'screen': {
      const span = within(placementOf(build, layer), room);
      draft.conductor(rect(span.x0, band.y0, span.x1, band.y0 + band.height), {
        conductor: layer.circuit ?? layer.id,
        of: 'screen',
        layer: layer.index,
        bare: true,
        crossing: false,
        strippedLead: false,
        stretched: false,
      });
      return span;
    }
  }
}

/** Filled margins; a lead on the band's outer face takes its height from the block under it. */
function layBlocks(
  laying: Laying,
  layer: BuildLayer,
  band: Extract<StackBand, { kind: 'layer' }>,
  room: Span,
): void {
  const { build, draft } = laying;
  const { blocks } = placementOf(build, layer);
  for (const side of ['left', 'right'] as const) {
    if (blocks[side] === 0) continue;
    const beside = band.lead?.lay.exit === side ? band.lead : null;
    if (beside?.lifts) continue;
    const margin = layer.margins[side];
    const top = Math.min(band.y0 + (margin.height ?? band.height), beside?.y0 ?? Infinity);
    const face = faceX(build, layer.chamber, side);
    const x0 = side === 'left' ? room.x0 : face - blocks.right;
    const x1 = side === 'left' ? face + blocks.left : room.x1;
    draft.solid(rect(x0, band.y0, x1, top), {
      kind: 'block',
      body: draft.body(),
      stuff: margin.stuff,
      layer: layer.index,
      ply: null,
      // strong along the axis, where it spaces; tape wound in many turns is one ply across them
      crossX: 'strong',
      crossY: margin.moulded ? 'measured' : 1,
      turnUp: nm(0),
      drifted: false,
    });
  }
}

/** All rows in one hull: between the rows of a covered wire it is on the safe side by its cover. */
function layWinding(
  laying: Laying,
  layer: Extract<BuildLayer, { kind: 'winding' }>,
  band: Extract<StackBand, { kind: 'layer' }>,
  room: Span,
): Span {
  const { build, draft, slump } = laying;
  const place = placementOf(build, layer);
  const span = within(place, room);
  const what = {
    conductor: layer.circuit,
    of: 'winding',
    layer: layer.index,
    crossing: false,
    strippedLead: false,
  } as const;
  const top = band.y0 + band.height;
  // an end that is not held goes until it meets a block, a flange or a conductor
  const goesTo = {
    left: Math.min(span.x0, Math.max(room.x0, faceX(build, layer.chamber, 'left') + place.blocks.left)),
    right: Math.max(span.x1, Math.min(room.x1, faceX(build, layer.chamber, 'right') - place.blocks.right)),
  };
  const loose = (side: Side) => slump !== null && !isRetained(build, layer, side);
  const beside = band.lead?.lay.exit ?? null;
  const x0 = loose('left') && beside !== 'left' ? goesTo.left : span.x0;
  const x1 = loose('right') && beside !== 'right' ? goesTo.right : span.x1;
  const stretched = x0 !== span.x0 || x1 !== span.x1;
  draft.wire(rect(x0, band.y0, x1, top), layer.wire, { ...what, stretched });
  if (beside !== null && loose(beside)) {
    // beside its own lead it goes under the lead only
    const under = rect(
      beside === 'left' ? goesTo.left : span.x1,
      band.y0,
      beside === 'left' ? span.x0 : goesTo.right,
      Math.min(top, band.lead!.y0),
    );
    draft.wire(under, layer.wire, { ...what, stretched: true });
  }
  return { x0: nm(x0), x1: nm(x1) };
}

function tapeSpan(
  laying: Laying,
  layer: Extract<BuildLayer, { kind: 'tape' }>,
  room: Span,
): Span & { readonly drifted: boolean } {
  const { build, slump } = laying;
  const span = within(placementOf(build, layer), room);
  const none = { ...span, drifted: false };
  if (slump !== 'left' && slump !== 'right') return none;
  const free = driftRoom(build, layer, slump);
  if (free === 0) return none;
  const { blocks } = placementOf(build, layer);
  const by =
    slump === 'left'
      ? Math.max(room.x0, faceX(build, layer.chamber, 'left') + blocks.left) - span.x0
      : Math.min(room.x1, faceX(build, layer.chamber, 'right') - blocks.right) - span.x1;
  return { x0: nm(span.x0 + by), x1: nm(span.x1 + by), drifted: by !== 0 };
}

/** Cut to the room that risers leave; never to nothing, so that what meets a riser still touches it. */
function within(span: Span, room: Span): Span {
  const x0 = Math.min(Math.max(span.x0, room.x0), room.x1 - 1);
  const x1 = Math.max(Math.min(span.x1, room.x1), x0 + 1);
  return { x0: nm(x0), x1: nm(x1) };
}

/** A lead in its band, from the winding's end to the flange; a sleeve on it from `into` outward, closed at the flange. */
function layLead(laying: Laying, chamber: number, lead: LaidLead, room: Span, crossing: boolean): void {
  const { build, draft } = laying;
  const { lay } = lead;
  const layer = build.layers[lay.layer]!;
  const end = placementOf(build, layer);
  const inner = lay.at === 'left' ? end.x0 : end.x1;
  const outer = lay.exit === 'left' ? room.x0 : room.x1;
  const x0 = Math.min(inner, outer);
  const x1 = Math.max(inner, outer);
  if (lay.exit === 'left' ? outer >= inner : outer <= inner) return;
  const into = isSleeved(lay) ? lay.sleeve!.into : 0;
  const sleeved = Math.min(into, x1 - x0);
  // the part under the sleeve lies at the exit side
  const split = lay.exit === 'left' ? x0 + sleeved : x1 - sleeved;
  const bare: Span = lay.exit === 'left' ? { x0: nm(split), x1: nm(x1) } : { x0: nm(x0), x1: nm(split) };
  const under: Span = lay.exit === 'left' ? { x0: nm(x0), x1: nm(split) } : { x0: nm(split), x1: nm(x1) };
  const what = {
    conductor: lay.circuit,
    of: lay.kind,
    layer: layer.index,
    crossing,
    stretched: false,
  } as const;
  const stripped = lay.sleeve !== null && lay.wire.cover === null;
  const cover = draft.bodyOf(`cover ${lay.name}`);
  draft.wire(rect(bare.x0, lead.y0, bare.x1, lead.y1), lay.wire, { ...what, strippedLead: stripped }, cover);
  if (sleeved === 0) return;
  const wall = lay.sleeve!.wall;
  draft.sleeve(rect(under.x0, lead.y0, under.x1, lead.y1), lay, layer.index);
  const core = {
    x0: lay.exit === 'left' ? under.x0 + wall : under.x0,
    x1: lay.exit === 'left' ? under.x1 : under.x1 - wall,
  };
  const inside = rect(core.x0, lead.y0 + wall, core.x1, lead.y1 - wall);
  draft.wire(inside, lay.wire, { ...what, strippedLead: false }, cover);
  // the metal of a covered wire runs on from the bare part into the sleeve
  const skin = lay.wire.cover?.thickness ?? 0;
  const [low, high] = [Math.min(bare.x0, core.x0) + skin, Math.max(bare.x1, core.x1) - skin];
  if (skin === 0 || bare.x0 >= bare.x1) return;
  const [from, to] = [Math.max(split - skin, low), Math.min(split + skin, high)];
  const metal = rect(from, inside.y0 + skin, to, inside.y1 - skin);
  draft.conductor(metal, { ...what, bare: false, strippedLead: false });
}

/** A sleeve that is too short to cover the riser leaves the whole lead bare. */
const isSleeved = (lay: Lay): boolean =>
  lay.sleeve !== null && lay.sleeve.wall > 0 && (lay.way === 'slot' || riserIsSleeved(lay));

/** The column of a riser, with its thin cover or sleeve where it has one. */
export function layRiser(laying: Laying, riser: Riser): void {
  const { build, draft } = laying;
  const { lay } = riser;
  const face = faceX(build, riser.chamber, riser.side);
  const x0 = riser.side === 'left' ? face + riser.offset : face - riser.offset - riser.width;
  const hull = rect(x0, riser.y0, x0 + riser.width, riser.y1);
  const what = conductorOf(build, lay);
  const cover = draft.bodyOf(`cover ${lay.name}`);
  const wall = riserIsSleeved(lay) ? lay.sleeve!.wall : 0;
  if (wall > 0) draft.sleeve(hull, lay, what.layer);
  draft.wire(shrink(hull, wall), lay.wire, what, cover);
  if (riser.onTop) layElbow(draft, riser, hull, what, wall);
}

/** A column that begins on top of its own winding: the metal beside the winding runs on into it. */
function layElbow(
  draft: Draft,
  { lay, side }: Riser,
  column: Rect,
  what: ReturnType<typeof conductorOf>,
  wall: number,
): void {
  const cover = lay.wire.cover?.thickness ?? 0;
  const skin = wall + cover;
  const layer = draft.build.layers[lay.layer]!;
  const place = placementOf(draft.build, layer);
  const x0 = side === 'left' ? column.x0 + skin : Math.max(place.x1 + cover, column.x0 + skin);
  const x1 = side === 'left' ? Math.min(place.x0 - cover, column.x1 - skin) : column.x1 - skin;
  const metal = rect(x0, column.y0 - skin, x1, column.y0 + skin);
  draft.conductor(metal, { ...what, bare: lay.wire.cover === null && lay.wire.bare });
}

const conductorOf = (build: Build, lay: Lay) =>
  ({
    conductor: lay.circuit,
    of: lay.kind,
    layer: build.layers[lay.layer]!.index,
    crossing: false,
    strippedLead: lay.sleeve !== null && !riserIsSleeved(lay),
    stretched: false,
  }) as const;
