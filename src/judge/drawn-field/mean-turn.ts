// How long the mean turn is at a height over the tube, mm: from the tube where the file gives it, else by a rule of thumb
// from the winding window. A rectangular tube has rounded turns at its corners.

import type { Design } from '#model/design.ts';
import { MEAN_TURN_PER_WIDTH } from '#stress/current/winding-capacitance.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';
import type { DrawnField } from './drawn-field.ts';

export interface MeanTurn {
  readonly millimetres: number;
  readonly from: 'tube' | 'estimate';
}

export function meanTurn({ former }: Design, height: Nm): MeanTurn {
  const { tube, chambers } = former;
  if (tube === null) {
    const width = chambers.reduce((sum, chamber) => sum + inMm(chamber.width.value), 0);
    return { millimetres: MEAN_TURN_PER_WIDTH * width, from: 'estimate' };
  }
  const [width, depth, up] = [inMm(tube.width.value), inMm(tube.depth.value), inMm(height)];
  const round = tube.shape === 'round';
  const millimetres = round ? Math.PI * (width + 2 * up) : 2 * (width + depth) + 2 * Math.PI * up;
  return { millimetres, from: 'tube' };
}

/** Half way between the turns of both. */
export function middleHeight(drawn: DrawnField, owners: readonly string[]): Nm {
  const means = owners.flatMap((owner) => {
    const heights = drawn.electrodes.flatMap((one) => (one.owner === owner && one.turn ? [one.turn.y] : []));
    return heights.length === 0 ? [] : [heights.reduce((sum, y) => sum + y, 0) / heights.length];
  });
  return nm(Math.round(means.reduce((sum, y) => sum + y, 0) / Math.max(1, means.length)));
}
