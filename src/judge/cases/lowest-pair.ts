// Of several judgings of one build, each with its open figures counted another way, the lowest for every pair.

import type { Choice } from '#judge/assume/assumption.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import { shorterOf } from '#judge/paths/shortest-paths.ts';
import { heightOf, reaches } from '#standards/ladder.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';

/** Longer than any distance that a book asks for, nanometres. */
const NO_FIGURE = 1e12;

export interface Judged {
  readonly choice: Choice;
  /** Places of the pairs that were judged; null: all. */
  readonly only: readonly number[] | null;
  readonly pairs: readonly PairOutcome[];
}

/**
 * For every pair of the first, which judged all of them. `again`: judged once more with every weak place, of which the
 * others were not asked; null where nobody wants them. The printed lengths of a pair are the shortest of all.
 */
export function lowestOf(
  first: Judged,
  others: readonly Judged[],
  again: ((choice: Choice, only: readonly number[]) => readonly PairOutcome[]) | null,
): readonly PairOutcome[] {
  const lowest = first.pairs.map((pair) => ({ pair, shortest: pair.shortest, of: first }));
  for (const judged of others)
    judged.pairs.forEach((pair, k) => {
      const i = judged.only?.[k] ?? k;
      const known = lowest[i]!;
      const shortest = shorterOf(known.shortest, pair.shortest);
      lowest[i] = isLowerPair(pair, known.pair) ? { pair, shortest, of: judged } : { ...known, shortest };
    });
  const pairs = lowest.map(({ pair, shortest }) => ({ ...pair, shortest }));
  for (const judged of again ? others : []) {
    const only = lowest.flatMap(({ of }, i) => (of === judged ? [i] : []));
    if (only.length === 0) continue;
    again!(judged.choice, only).forEach((pair, k) => {
      const { shortest } = pairs[only[k]!]!;
      pairs[only[k]!] = { ...pair, shortest };
    });
  }
  return pairs;
}

export const isLowerPair = (a: PairOutcome, b: PairOutcome): boolean => comparePairs(a, b) < 0;

/**
 * What falls short of what it needs is lower, for a circuit that counts as mains at one end only needs more there; then by
 * what is reached, by what is needed, then by how far the holding path is from what would do, then by how much is asked. */
function comparePairs(a: PairOutcome, b: PairOutcome): number {
  const reached = Number(reaches(a.achieved, a.needed)) - Number(reaches(b.achieved, b.needed));
  if (reached !== 0) return reached;
  const height = heightOf(a.achieved) - heightOf(b.achieved);
  if (height !== 0) return height;
  const needed = neededHeight(b) - neededHeight(a);
  if (needed !== 0) return needed;
  const left = reserve(a) - reserve(b);
  return left !== 0 ? left : askedLength(b) - askedLength(a);
}

const neededHeight = ({ needed }: PairOutcome): number => (needed === null ? 0 : heightOf(needed));

/** Clearance and creepage asked for reinforced; without a figure more than any. */
function askedLength({ required }: PairOutcome): number {
  const figures = [required.clearance.reinforced, required.creepage('IIIb').reinforced];
  return figures.reduce((sum, one) => sum + (isOutOfRange(one) ? NO_FIGURE : one.value), 0);
}

function reserve(pair: PairOutcome): number {
  const { holding } = pair;
  if (holding === null || holding.kind === 'bridge') return 0;
  const { basic, reinforced } = holding.asked.distance(holding.rank);
  return holding.length - (reinforced ?? basic ?? 0);
}
