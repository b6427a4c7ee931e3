// Whether there is nothing left to mend: every pair reaches its grade with all unknowns at worst, and no spot is left.
// Such a build may still be not shown to meet, for want of a fact that no act of mending gives (an unknown voltage).

import { reaches } from '#standards/ladder.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';

export const isMended = ({ verdict, pairs, weakSpots }: Verdict): boolean =>
  verdict === 'meets' ||
  (weakSpots.length === 0 && pairs.every(({ achieved, needed }) => reaches(achieved, needed)));
