// Where an interval is judged: at both ends, and on both sides of every place between where turns change their rows, for
// there a distance jumps and neither end need be the worse.

import type { Design } from '#model/design.ts';
import { chamberFits } from '#solver/lay-out.ts';
import { WORST, settled, withEnds } from './choice.ts';
import { fillBuild } from './fill-build.ts';
import type { Judging } from './judge-once.ts';

export interface IntervalPoint {
  /** Part of the half-width from the nominal value, -1 to 1. */
  readonly end: number;
  /** Every winding lies in as many rows as at the nominal value. */
  readonly keepsRows: boolean;
}

/** How finely a change of rows is looked for: 2^-20 of the half-width is a nanometre in a millimetre. */
const FINEST = 2 ** -20;

export function pointsOf({ book }: Judging, design: Design, path: string): readonly IntervalPoint[] {
  const rows = (end: number): string => {
    const choice = end === 0 ? WORST : withEnds(new Map([[path, end]]));
    const { builds } = fillBuild(settled(design, choice.ends), book, choice);
    const fits = builds.flat().flatMap((build) => chamberFits(build));
    return fits.flatMap(({ layers }) => layers.map((layer) => layer.rows)).join();
  };
  const nominal = rows(0);
  const between = (low: number, high: number): readonly number[] => {
    if (rows(low) === rows(high)) return [];
    if (high - low <= FINEST) return [low, high];
    const middle = (low + high) / 2;
    return [...between(low, middle), ...between(middle, high)];
  };
  const ends = [-1, ...between(-1, 0), ...between(0, 1), 1].filter((end) => end !== 0);
  return [...new Set(ends)].map((end) => ({ end, keepsRows: rows(end) === nominal }));
}
