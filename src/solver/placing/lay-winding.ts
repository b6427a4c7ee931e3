// A winding in its band: the hull of its rows, and what its ends take up once handling has stretched them. Rows that a
// block holds stay; those above it go on over it until they meet the flange, a riser or the winding beside them.

import { nm } from '#units/quantity.ts';
import type { BuildWindingLayer } from '#solver/section/build.ts';
import type { Side } from '#units/terms.ts';
import { type Draft, isEmpty, rect } from '#solver/section/draft.ts';
import type { LayerBand, Laying, Span } from './placing.ts';
import type { Rect } from '#solver/section/section.ts';
import { facesLooseEnd, isRetained, rowsReached } from '#solver/stack/displacement.ts';

const SIDES: readonly Side[] = ['left', 'right'];

/** All rows in one hull: between the rows of a covered wire it is on the safe side by its cover. */
export function layWinding(
  laying: Laying,
  layer: BuildWindingLayer,
  band: LayerBand,
  drawn: Span,
  room: Span,
): Span {
  const { draft } = laying;
  const what = {
    conductor: layer.circuit,
    of: 'winding',
    layer: layer.index,
    crossing: false,
    strippedLead: false,
  } as const;
  const top = nm(band.y0 + band.height);
  let hull = rect(drawn.x0, band.y0, drawn.x1, top);
  const apart: { readonly side: Side; readonly part: Rect }[] = [];
  for (const side of SIDES) {
    for (const part of stretched(laying, layer, band, drawn, room, side)) {
      // as high as the winding and next to it: part of its hull
      const joins = side === 'left' ? part.x1 === hull.x0 : part.x0 === hull.x1;
      if (joins && part.y0 === hull.y0 && part.y1 === hull.y1)
        hull = rect(Math.min(hull.x0, part.x0), hull.y0, Math.max(hull.x1, part.x1), hull.y1);
      else apart.push({ side, part });
    }
  }
  const body = draft.body();
  const grown = hull.x0 !== drawn.x0 || hull.x1 !== drawn.x1;
  draft.wire(hull, layer.wire, { ...what, stretched: grown }, body);
  for (const { side, part } of apart) {
    draft.wire(part, layer.wire, { ...what, stretched: true }, body);
    joinMetal(draft, layer, part, side, { ...what, bare: false, stretched: true });
  }
  return { x0: hull.x0, x1: hull.x1 };
}

/** Rectangles beyond one end as drawn, from it outward. */
function stretched(
  { placed, slump, moves }: Laying,
  layer: BuildWindingLayer,
  band: LayerBand,
  drawn: Span,
  room: Span,
  side: Side,
): readonly Rect[] {
  if (slump === null || !moves(layer) || isRetained(placed, layer, side)) return [];
  // of two loose ends that face each other the one goes that is pushed towards the other
  if (facesLooseEnd(placed, layer, side, moves) && slump !== side) return [];
  const { stops, blocks } = placed.places.get(layer)!;
  const isLeft = side === 'left';
  const [outward, inward] = isLeft ? [Math.min, Math.max] : [Math.max, Math.min];
  const end = isLeft ? drawn.x0 : drawn.x1;
  const last = outward(end, inward(isLeft ? room.x0 : room.x1, stops[side]));
  const block = blocks[side];
  const face = block ? outward(end, inward(isLeft ? block.x1 : block.x0, last)) : last;
  // beside its own lead it goes under the lead only
  const lead = band.lead?.lay.exit === side ? band.lead.y0 : Infinity;
  const top = Math.min(band.y0 + band.height, lead);
  const parts = [between(end, face, band.y0, top)];
  const reached = block && rowsReached(placed, layer, block.height);
  if (block && reached !== null && reached < placed.fits.get(layer)!.rows) {
    const over = Math.max(reached * layer.wire.overall, block.height);
    parts.push(between(face, last, band.y0 + over, top));
  }
  return parts.filter((part) => !isEmpty(part));
}

const between = (a: number, b: number, y0: number, y1: number): Rect =>
  rect(Math.min(a, b), y0, Math.max(a, b), y1);

/** The metal of covered wire runs on from the rows into what has been stretched out of them. */
function joinMetal(
  draft: Draft,
  layer: BuildWindingLayer,
  part: Rect,
  side: Side,
  what: Parameters<Draft['conductor']>[1],
): void {
  const skin = layer.wire.cover?.thickness ?? 0;
  const seam = side === 'left' ? part.x1 : part.x0;
  if (skin > 0) draft.conductor(rect(seam - skin, part.y0 + skin, seam + skin, part.y1 - skin), what);
}
