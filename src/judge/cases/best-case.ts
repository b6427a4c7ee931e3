// The judging at best: every unknown at its best, the intervals nominal. What belongs to a third circuit has no best end
// for a pair, so where that is open the better of both ends holds. What is enough at worst is left as it is.

import type { Design } from '#model/design.ts';
import { openBridgeFields } from '#judge/conductors/open-bridges.ts';
import { BEST, type Choice } from '#judge/assume/assumption.ts';
import { reaches } from '#standards/ladder.ts';
import { openFrequency } from '#judge/assume/counted-stress.ts';
import { judgeOnce } from '#judge/once/judge-once.ts';
import type { Judging } from '#judge/once/judging.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import { isLowerPair } from './lowest-pair.ts';
import type { WorstCase } from './worst-case.ts';

export function judgeBest(
  judging: Judging,
  design: Design,
  worst: WorstCase,
  coreTo?: string,
): readonly PairOutcome[] {
  const best = [...worst.pairs];
  const short = ({ achieved, needed }: PairOutcome) => !reaches(achieved, needed);
  const tryAt = (choice: Choice, among: readonly number[]): void => {
    const only = among.filter((i) => short(best[i]!));
    if (only.length === 0) return;
    // what leads straight through plies that are too few at best as well is proven: found beside the way that holds the pair
    const isProof = judging.places !== false && choice === BEST;
    const printed = judging.printed || (isProof && only.some((i) => hasStraight(worst.pairs[i]!)));
    const { pairs } = judgeOnce({ places: true, ...judging, printed, only }, design, choice, coreTo);
    only.forEach((i, k) => {
      if (best[i] === worst.pairs[i] || isLowerPair(best[i]!, pairs[k]!)) best[i] = pairs[k]!;
    });
  };
  if (!isAnythingOpen(design, worst)) return best;
  tryAt(
    BEST,
    best.map((_, i) => i),
  );
  for (const { turned, pairs } of worst.turns) tryAt({ ...BEST, turned }, pairs);
  return best;
}

/** A way straight through solids falls short at worst. */
const hasStraight = ({ failing }: PairOutcome): boolean =>
  failing.some((one) => one.kind === 'path' && one.plies > 0 && one.length === 0);

function isAnythingOpen(design: Design, { nominal, intervals, pairs }: WorstCase): boolean {
  return (
    intervals.length > 0 ||
    nominal.filled.counted.some(({ kind }) => kind !== 'default') ||
    design.bridges.some((bridge, i) => openBridgeFields(bridge, i).length > 0) ||
    pairs.some(
      ({ stress }) => stress.within.rms > 0 || stress.within.peak > 0 || openFrequency(stress) !== null,
    )
  );
}
