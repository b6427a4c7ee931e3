// The judging at worst: every unknown at its worst; intervals each alone at either end, then all at the ends found
// worse. Per pair the lowest of these holds.

import type { Design } from '#model/design.ts';
import { intervalsOf, WORST, withEnds } from './choice.ts';
import { heightOf } from './grade.ts';
import { judgeOnce, type Judging } from './judge-once.ts';
import type { Outcome, PairOutcome } from './outcome.ts';

export interface WorstCase {
  /** All at nominal; its sections are the ones drawn. */
  readonly nominal: ReturnType<typeof judgeOnce>;
  readonly pairs: readonly PairOutcome[];
  readonly intervals: readonly string[];
}

export function judgeWorst(
  judging: Judging,
  design: Design,
  best: ReadonlySet<string> = new Set(),
  coreTo?: string | null,
): WorstCase {
  const choice = { ...WORST, best };
  const nominal = judgeOnce(judging, design, choice, coreTo);
  const intervals = intervalsOf(design);
  const outcomes: Outcome[] = [nominal];
  const worse = new Map<string, -1 | 1>();
  for (const path of intervals) {
    const ends = ([-1, 1] as const).map((end) => ({
      end,
      outcome: judgeOnce(judging, design, { ...withEnds(new Map([[path, end]])), best }, coreTo),
    }));
    outcomes.push(...ends.map(({ outcome }) => outcome));
    const [low, high] = ends;
    worse.set(path, isLower(high!.outcome, low!.outcome) ? 1 : -1);
  }
  if (intervals.length > 1) {
    outcomes.push(judgeOnce(judging, design, { ...withEnds(worse), best }, coreTo));
  }
  const pairs = nominal.pairs.map((_, i) =>
    outcomes.map((outcome) => outcome.pairs[i]!).reduce((a, b) => (isLowerPair(b, a) ? b : a)),
  );
  return { nominal, pairs, intervals };
}

function isLower(a: Outcome, b: Outcome): boolean {
  const difference = a.pairs.map((pair, i) => comparePairs(pair, b.pairs[i]!));
  return (difference.find((step) => step !== 0) ?? 0) < 0;
}

const isLowerPair = (a: PairOutcome, b: PairOutcome): boolean => comparePairs(a, b) < 0;

/** By what is reached, then by how far the holding path is from what would do. */
function comparePairs(a: PairOutcome, b: PairOutcome): number {
  const height = heightOf(a.achieved) - heightOf(b.achieved);
  return height !== 0 ? height : reserve(a) - reserve(b);
}

function reserve(pair: PairOutcome): number {
  const { holding } = pair;
  if (holding === null || holding.kind === 'bridge') return 0;
  const { basic, reinforced } = holding.asked.distance(holding.rank);
  return holding.length - (reinforced ?? basic ?? 0);
}
