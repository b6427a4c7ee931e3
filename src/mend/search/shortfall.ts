// How far a judged build is from what is asked, as one number to steer a search by: rungs of the ladder first, then the
// part of each length that is missing. 0 where nothing is left to mend.

import { heightOf, reaches } from '#standards/ladder.ts';
import type { ShortJudgement } from '#judge/judging/short-judgement.ts';

const RUNG = 10;
/** A coil that does not fit its window is no build; a larger former makes it one. */
const OVERFULL = 5;
/** A spot of the whole build, such as heat, that no pair tells. */
const OWN_SPOT = 0.01;

export function shortfall({ pairs, mended, overfull }: ShortJudgement): number {
  if (mended) return 0;
  const ofPairs = pairs.reduce((sum, { needed, achieved, length, required }) => {
    if (reaches(achieved, needed)) return sum;
    const rungs = Math.max(0, heightOf(needed) - heightOf(achieved));
    const missing =
      length === null || required === null || required === 0 ? 0.5 : Math.max(0, 1 - length / required);
    return sum + 1 + rungs * RUNG + missing;
  }, 0);
  return ofPairs + (overfull ? OVERFULL : 0) + OWN_SPOT;
}
