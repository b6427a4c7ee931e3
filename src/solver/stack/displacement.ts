// Where handling takes the ends: which rows of a winding are held at its ends, which tapes and screens can wander.
// Judged without the lead: retention is a matter of how the layer was wound.

import { nm, type Nm } from '#units/quantity.ts';
import type { BuildLayer, BuildWindingLayer } from '#solver/section/build.ts';
import type { Side } from '#units/terms.ts';
import type { PlacedBuild } from '#solver/section/placement.ts';

/** Nothing has moved; loose ends have; they have, and loose tapes and screens are pushed to one side. */
export type Slump = null | 'as-is' | 'left' | 'right';

/** A winding's end goes nowhere: every one of its rows is held. */
export const isRetained = (placed: PlacedBuild, layer: BuildWindingLayer, side: Side): boolean =>
  heldRows(placed, layer, side) === placed.fits.get(layer)!.rows;

/**
 * Rows from the floor up that stay where they are: all where the end is anchored or nothing is left between it and the
 * flange, else those whose middle is reached by a block that touches them.
 */
export function heldRows(placed: PlacedBuild, layer: BuildWindingLayer, side: Side): number {
  const { rows } = placed.fits.get(layer)!;
  if (!layer.wire.slumps || layer.anchored || gapAt(placed, layer, side) === 0) return rows;
  const place = placed.places.get(layer)!;
  const block = place.blocks[side];
  const touches = side === 'left' ? block?.x1 === place.x0 : block?.x0 === place.x1;
  return touches ? rowsReached(placed, layer, block!.height) : 0;
}

/** Rows from the floor up whose middle a block of this height reaches. */
export function rowsReached(placed: PlacedBuild, layer: BuildWindingLayer, height: Nm): number {
  const { overall } = layer.wire;
  return Math.min(placed.fits.get(layer)!.rows, Math.floor((2 * height + overall) / (2 * overall)));
}

/** What is left between an end and the flange, divider or winding beyond it. */
function gapAt(placed: PlacedBuild, layer: BuildLayer, side: Side): Nm {
  const place = placed.places.get(layer)!;
  return nm(side === 'left' ? place.x0 - place.stops.left : place.stops.right - place.x1);
}

/** A tape or screen that does not touch a solid at both edges wanders. */
export const wanders = (placed: PlacedBuild, layer: BuildLayer): boolean =>
  layer.kind !== 'winding' &&
  (wanderRoom(placed, layer, 'left') > 0 || wanderRoom(placed, layer, 'right') > 0);

/** How far a tape or screen can go to one side before it meets a block or a flange. */
export function wanderRoom(placed: PlacedBuild, layer: BuildLayer, side: Side): Nm {
  const place = placed.places.get(layer)!;
  const block = place.blocks[side];
  if (!block) return gapAt(placed, layer, side);
  return nm(side === 'left' ? place.x0 - block.x1 : block.x0 - place.x1);
}

/** The circuit that a layer belongs to; null where it belongs to none. */
export const circuitOf = (layer: BuildLayer): string | null => (layer.kind === 'tape' ? null : layer.circuit);

/**
 * Two loose ends face each other in one band with nothing between: either may have gone to the other, so that it
 * depends on the side to which things are pushed which of them has.
 */
export function facesLooseEnd(
  placed: PlacedBuild,
  layer: BuildWindingLayer,
  side: Side,
  moves: (layer: BuildLayer) => boolean,
): boolean {
  const place = placed.places.get(layer)!;
  const next = place.neighbours[side];
  if (!next || place.blocks[side] || !moves(next) || gapAt(placed, layer, side) === 0) return false;
  return !isRetained(placed, next, side === 'left' ? 'right' : 'left');
}
