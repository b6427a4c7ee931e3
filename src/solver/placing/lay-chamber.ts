// Lays the bands of one chamber into a draft: windings with their blocks, plies, screens, the leads in their bands.

import { nm } from '#units/quantity.ts';
import type { BuildLayer, BuildScreenLayer, BuildTapeLayer } from '#solver/section/build.ts';
import type { Side } from '#units/terms.ts';
import { Draft, rect } from '#solver/section/draft.ts';
import { layBlocks } from './lay-blocks.ts';
import { layLead } from './lead-runs.ts';
import { layWinding } from './lay-winding.ts';
import type { LayerBand, Laying, Span } from './placing.ts';
import { clipOf, faceX } from '#solver/stack/risers.ts';
import { wanderRoom } from '#solver/stack/displacement.ts';
import type { StackBand } from '#solver/stack/stack.ts';

export function layBand(laying: Laying, chamber: number, band: StackBand): void {
  const { placed, bands } = laying;
  const layer = placed.build.layers[band.position]!;
  const room = roomAt(laying, chamber, band.position, band.y1);
  const { y0, y1 } = band;
  switch (band.kind) {
    case 'cross-tape': {
      layPlies(laying, { ...band, chamber, place: null });
      bands.push({ layer: band.tape.index, chamber, kind: 'tape', y0, y1, ...room });
      return;
    }
    case 'crossing-lead': {
      layLead(laying, band.lead, endsOf(laying, layer, room), room, true);
      bands.push({ layer: layer.index, chamber, kind: 'crossing-lead', y0, y1, ...room });
      return;
    }
    case 'layer': {
      if (band.lead === null && isEven(laying, chamber, layer, band, room))
        return takeBand(laying, chamber, layer, band, room);
      const span = layLayer(laying, layer, band, room);
      bands.push({ layer: layer.index, chamber, kind: layer.kind, y0, y1, ...span });
      if (band.lead) layLead(laying, band.lead, endsOf(laying, layer, room), room, false);
    }
  }
}

/** No riser begins within the band: what has room at its lowest ply has the same at its top. */
function isEven(laying: Laying, chamber: number, layer: BuildLayer, band: LayerBand, room: Span): boolean {
  if (layer.kind !== 'tape' || laying.risers.length === 0) return true;
  const lowest = roomAt(laying, chamber, band.position, band.y0 + layer.plyThickness);
  return lowest.x0 === room.x0 && lowest.x1 === room.x1;
}

/** Lays a band without a lead, once for all sections in which it lies there. */
function takeBand(laying: Laying, chamber: number, layer: BuildLayer, band: LayerBand, room: Span): void {
  const { draft, laidBands } = laying;
  const { y0, y1 } = band;
  const key = `${band.position} ${y0} ${y1} ${room.x0} ${room.x1}`;
  let laid = laidBands.get(key);
  if (laid === undefined) {
    const own = new Draft(draft.build, draft.bodies);
    const span = layLayer({ ...laying, draft: own }, layer, band, room);
    laid = {
      regions: own.regions,
      band: { layer: layer.index, chamber, kind: layer.kind, y0, y1, ...span },
    };
    laidBands.set(key, laid);
  }
  draft.take(laid.regions);
  laying.bands.push(laid.band);
}

/** Where a lead begins: at the ends of its winding as drawn, or of its screen, which takes it along. */
const endsOf = (laying: Laying, layer: BuildLayer, room: Span): Span =>
  layer.kind === 'screen' ? wandered(laying, layer, room) : laying.placed.places.get(layer)!;

/** What risers leave of the chamber's width to something of this layer that reaches up to `top`. */
function roomAt({ placed, risers }: Laying, chamber: number, position: number, top: number): Span {
  const clip = (side: Side) => clipOf(risers, chamber, side, position, nm(top));
  return {
    x0: nm(faceX(placed, chamber, 'left') + clip('left')),
    x1: nm(faceX(placed, chamber, 'right') - clip('right')),
  };
}

function layLayer(laying: Laying, layer: BuildLayer, band: LayerBand, room: Span): Span {
  const { draft, placed } = laying;
  layBlocks(laying, layer, band, room);
  const place = placed.places.get(layer)!;
  switch (layer.kind) {
    case 'winding':
      return layWinding(laying, layer, band, within(place, room), room);
    case 'tape':
      return layPlies(laying, { ...band, chamber: layer.chamber, tape: layer, plies: layer.plies, place });
    case 'screen': {
      const span = wandered(laying, layer, room);
      draft.conductor(rect(span.x0, band.y0, span.x1, band.y0 + band.height), {
        conductor: layer.circuit ?? layer.id,
        of: 'screen',
        layer: layer.index,
        bare: true,
        crossing: false,
        strippedLead: false,
        stretched: wanderedBy(laying, layer, room) !== 0,
      });
      return span;
    }
  }
}

/** Plies end where a riser stands that begins below their outer face. */
function layPlies(laying: Laying, band: PlyBand): Span {
  const { draft, placed } = laying;
  const { chamber, position, y0, tape, plies, place } = band;
  const by = place ? wanderedBy(laying, tape, roomAt(laying, chamber, position, band.y1)) : 0;
  // edges turned up end at the rim
  const turnUp = place ? nm(Math.max(0, Math.min(tape.turnUp, placed.build.height - band.y1))) : nm(0);
  const closed = place !== null && tape.cemented;
  let widest: Span | null = null;
  for (let ply = 0; ply < plies; ply++) {
    const bottom = y0 + ply * tape.plyThickness;
    const room = roomAt(laying, chamber, position, bottom + tape.plyThickness);
    const { x0, x1 } = place ? shifted(within(place, room), by) : room;
    draft.ply(rect(x0, bottom, x1, bottom + tape.plyThickness), tape, ply, {
      layer: tape.index,
      closed,
      turnUp,
      drifted: by !== 0,
    });
    widest ??= { x0, x1 };
  }
  return widest!;
}

interface PlyBand {
  readonly chamber: number;
  readonly position: number;
  readonly y0: number;
  readonly y1: number;
  readonly tape: BuildTapeLayer;
  readonly plies: number;
  /** Null: from flange to flange. */
  readonly place: Span | null;
}

/** A tape or screen where handling has pushed it, keeping its width. */
const wandered = (laying: Laying, layer: BuildTapeLayer | BuildScreenLayer, room: Span): Span =>
  shifted(within(laying.placed.places.get(layer)!, room), wanderedBy(laying, layer, room));

const shifted = ({ x0, x1 }: Span, by: number): Span => ({ x0: nm(x0 + by), x1: nm(x1 + by) });

function wanderedBy(
  { placed, slump, moves }: Laying,
  layer: BuildTapeLayer | BuildScreenLayer,
  room: Span,
): number {
  if ((slump !== 'left' && slump !== 'right') || !moves(layer)) return 0;
  if (wanderRoom(placed, layer, slump) === 0) return 0;
  const place = placed.places.get(layer)!;
  const { x0, x1 } = within(place, room);
  const block = place.blocks[slump];
  return slump === 'left'
    ? Math.min(0, Math.max(room.x0, block?.x1 ?? room.x0) - x0)
    : Math.max(0, Math.min(room.x1, block?.x0 ?? room.x1) - x1);
}

/** Cut to the room that risers leave; never to nothing, so that what meets a riser still touches it. */
function within(span: Span, room: Span): Span {
  const x0 = Math.min(Math.max(span.x0, room.x0), room.x1 - 1);
  const x1 = Math.max(Math.min(span.x1, room.x1), x0 + 1);
  return { x0: nm(x0), x1: nm(x1) };
}
