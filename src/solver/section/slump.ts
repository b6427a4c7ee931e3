// Where handling takes the ends: which winding ends are held, which tapes can wander.
// Judged without the lead: retention is a matter of how the layer was wound.

import { nm, type Nm } from '#units/quantity.ts';
import type { Build, BuildTapeLayer, BuildWindingLayer, Side } from './build.ts';
import { chamberFaces, placementOf } from './fit.ts';

/** A winding's end is held by a filled block that touches it, by the flange less than one turn away, or by an anchor. */
export function isRetained(build: Build, layer: BuildWindingLayer, side: Side): boolean {
  if (!layer.wire.slumps || layer.anchored) return true;
  const face = chamberFaces(build)[layer.chamber]!;
  const place = placementOf(build, layer);
  const gap = side === 'left' ? place.x0 - face.x0 : face.x1 - place.x1;
  const block = place.blocks[side];
  return (block > 0 && block === gap) || gap < layer.wire.overall;
}

/** A tape that does not touch a solid at both edges wanders. */
export function canDrift(build: Build, layer: BuildTapeLayer): boolean {
  return driftRoom(build, layer, 'left') > 0 || driftRoom(build, layer, 'right') > 0;
}

/** How far a tape can go to one side before it meets a block or a flange. */
export function driftRoom(build: Build, layer: BuildTapeLayer, side: Side): Nm {
  const face = chamberFaces(build)[layer.chamber]!;
  const place = placementOf(build, layer);
  const gap = side === 'left' ? place.x0 - face.x0 : face.x1 - place.x1;
  return nm(gap - place.blocks[side]);
}
