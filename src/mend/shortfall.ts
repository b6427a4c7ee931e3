// How far a judged build is from what is asked, as one number to steer a search by: rungs of the ladder first, then the
// part of each length that is missing. 0 where it meets.

import { heightOf } from '#standards/ladder.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';

const RUNG = 10;
/** A coil that does not fit its window is no build. */
const OVERFULL = 100;

export function shortfall({ pairs, weakSpots, verdict }: Verdict): number {
  if (verdict === 'meets') return 0;
  const ofPairs = pairs.reduce((sum, pair) => {
    if (pair.verdict === 'meets' || pair.needed === null) return sum;
    const rungs = Math.max(0, heightOf(pair.needed) - heightOf(pair.achieved));
    const { length, required } = pair.limiting ?? { length: null, required: null };
    const missing =
      length === null || required === null || required === 0 ? 0.5 : Math.max(0, 1 - length / required);
    return sum + 1 + rungs * RUNG + missing;
  }, 0);
  const ofSpots = weakSpots.reduce((sum, { kind }) => sum + (kind === 'overfull' ? OVERFULL : 0.01), 0);
  return ofPairs + ofSpots;
}
