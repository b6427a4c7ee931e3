// The voltage between two turns that a reader picks, at its worst over all that the file leaves open.

import type { Design } from '#model/design.ts';
import { runningConverter } from '#stress/converter/computed-stress.ts';
import { waysWound, worstBetween } from './ways-wound.ts';

/** A turn of a layer, counted from where the layer begins. */
export interface Place {
  readonly layer: number;
  readonly turn: number;
}

export interface PlaceVoltage {
  readonly peak: number;
  readonly rms: number;
}

/** Null without a converter, and where a layer is no winding. */
export function placeVoltage(design: Design, a: Place, b: Place): PlaceVoltage | null {
  const running = runningConverter(design);
  if (running === null) return null;
  const at = ({ layer, turn }: Place) => ({ layer, turns: [turn] });
  const found = worstBetween(waysWound(design, running), at(a), at(b));
  return found === null ? null : { peak: found.peak, rms: found.rms };
}
