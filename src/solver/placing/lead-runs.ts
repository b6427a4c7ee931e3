// Lead-outs in their bands and their columns up a flange, each with its sleeve and cover.

import { nm } from '#units/quantity.ts';
import type { Build, Lay } from '#solver/section/build.ts';
import { type Draft, rect, shrink } from '#solver/section/draft.ts';
import type { Laying, Span } from './placing.ts';
import { riserIsSleeved } from '#solver/stack/lead-shape.ts';
import type { PlacedBuild } from '#solver/section/placement.ts';
import { faceX, type Riser } from '#solver/stack/risers.ts';
import type { Rect } from '#solver/section/section.ts';
import type { LaidLead } from '#solver/stack/stack.ts';

/** A lead in its band, from the winding's end to the flange; a sleeve on it from `into` outward, closed at the flange. */
export function layLead(
  { draft, placed, risers }: Laying,
  lead: LaidLead,
  ends: Span,
  room: Span,
  crossing: boolean,
): void {
  const { lay } = lead;
  const layer = placed.build.layers[lay.layer]!;
  const inner = lay.at === 'left' ? ends.x0 : ends.x1;
  const column = risers.find((riser) => riser.lay === lay && riser.chamber === layer.chamber);
  // to its own column, whatever stands behind that
  const outer = column ? besideFace(placed, column) : lay.exit === 'left' ? room.x0 : room.x1;
  const offset = Math.abs(outer - faceX(placed, layer.chamber, lay.exit));
  const x0 = Math.min(inner, outer);
  const x1 = Math.max(inner, outer);
  if (lay.exit === 'left' ? outer >= inner : outer <= inner) return;
  // a sleeve reaches in from the flange, also where another lead's riser stands before it
  const into = isSleeved(lay, offset) ? lay.sleeve!.into - offset : 0;
  const sleeved = Math.min(Math.max(0, into), x1 - x0);
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
  const skin = lay.wire.cover?.thickness ?? 0;
  const core = {
    x0: lay.exit === 'left' ? under.x0 + wall : under.x0,
    x1: lay.exit === 'left' ? under.x1 : under.x1 - wall,
  };
  const inside = rect(core.x0, lead.y0 + wall, core.x1, lead.y1 - wall);
  draft.wire(inside, lay.wire, { ...what, strippedLead: false }, cover);
  // the metal of a covered wire runs on from the bare part into the sleeve
  const [low, high] = [Math.min(bare.x0, core.x0) + skin, Math.max(bare.x1, core.x1) - skin];
  if (skin === 0 || bare.x0 >= bare.x1) return;
  const [from, to] = [Math.max(split - skin, low), Math.min(split + skin, high)];
  const metal = rect(from, inside.y0 + skin, to, inside.y1 - skin);
  draft.conductor(metal, { ...what, bare: false, strippedLead: false });
}

/** The side of a column that is nearer to its face. */
function besideFace(placed: PlacedBuild, { chamber, side, offset }: Riser): number {
  const face = faceX(placed, chamber, side);
  return side === 'left' ? face + offset : face - offset;
}

/** A sleeve that is too short to cover the riser leaves the whole lead bare. */
const isSleeved = (lay: Lay, offset: number): boolean =>
  lay.sleeve !== null && lay.sleeve.wall > 0 && (lay.way === 'slot' || riserIsSleeved(lay, offset));

/** The column of a riser, with its thin cover or sleeve where it has one. */
export function layRiser({ draft, placed }: Laying, riser: Riser): void {
  const { lay } = riser;
  const face = faceX(placed, riser.chamber, riser.side);
  const x0 = riser.side === 'left' ? face + riser.offset : face - riser.offset - riser.width;
  const hull = rect(x0, riser.y0, x0 + riser.width, riser.y1);
  const sleeved = riserIsSleeved(lay, riser.offset);
  const what = conductorOf(placed.build, lay, sleeved);
  const cover = draft.bodyOf(`cover ${lay.name}`);
  const wall = sleeved ? lay.sleeve!.wall : 0;
  if (wall > 0) draft.sleeve(hull, lay, what.layer);
  const bore = shrink(hull, wall);
  // one that begins on its winding is open there
  draft.wire(riser.onTop ? rect(bore.x0, hull.y0, bore.x1, bore.y1) : bore, lay.wire, what, cover);
  if (riser.onTop) layElbow(draft, placed, riser, hull, what, wall);
}

/** A column that begins on top of its own winding: the metal beside the winding runs on into it. */
function layElbow(
  draft: Draft,
  placed: PlacedBuild,
  { lay, side }: Riser,
  column: Rect,
  what: ReturnType<typeof conductorOf>,
  wall: number,
): void {
  const cover = lay.wire.cover?.thickness ?? 0;
  const skin = wall + cover;
  const place = placed.places.get(placed.build.layers[lay.layer]!)!;
  const x0 = side === 'left' ? column.x0 + skin : Math.max(place.x1 + cover, column.x0 + skin);
  const x1 = side === 'left' ? Math.min(place.x0 - cover, column.x1 - skin) : column.x1 - skin;
  const metal = rect(x0, column.y0 - skin, x1, column.y0 + skin);
  draft.conductor(metal, { ...what, bare: lay.wire.cover === null && lay.wire.bare });
}

const conductorOf = (build: Build, lay: Lay, sleeved: boolean) =>
  ({
    conductor: lay.circuit,
    of: lay.kind,
    layer: build.layers[lay.layer]!.index,
    crossing: false,
    strippedLead: lay.sleeve !== null && !sleeved,
    stretched: false,
  }) as const;
