// The judging at worst: every unknown at its worst; intervals each alone at either end and where the build changes
// its kind (see interval-points.ts), then all where they were found worse. Per pair the lowest of these holds.

import type { Design } from '#model/design.ts';
import { isOutOfRange } from '#standards/out-of-range.ts';
import { type Choice, intervalsOf, WORST, withEnds } from '#judge/fill/choice.ts';
import { heightOf, reaches } from '#judge/grade/grade.ts';
import { type IntervalPoint, pointsOf } from './interval-points.ts';
import { judgeOnce, type Judging } from './judge-once.ts';
import type { Outcome, PairOutcome } from '#judge/paths/outcome.ts';

/** Longer than any distance that a book asks for, nanometres. */
const NO_FIGURE = 1e12;

export interface WorstCase {
  /** All at nominal; its sections are the ones drawn. */
  readonly nominal: ReturnType<typeof judgeOnce>;
  readonly pairs: readonly PairOutcome[];
  /** The first that is overfull; null where none is. */
  readonly overfull: Outcome | null;
  /** The intervals. */
  readonly intervals: readonly string[];
  /** Every interval where it was found worse, as the pairs find it: once where they agree. */
  readonly ends: readonly Ends[];
}

type Ends = Choice['ends'];

export function judgeWorst(judging: Judging, design: Design, coreTo?: string | null): WorstCase {
  const nominal = judgeOnce(judging, design, WORST, coreTo);
  const at = (ends: Ends): Outcome => judgeOnce(judging, design, withEnds(ends), coreTo);
  const intervals = intervalsOf(design);
  const alone = intervals.map((path) =>
    pointsOf(judging, design, path).map((point): Tried => ({
      ...point,
      path,
      outcome: at(new Map([[path, point.end]])),
    })),
  );
  const ends = intervals.length === 0 ? [] : allWorse(nominal, alone);
  const outcomes = [
    nominal,
    ...alone.flat().map(({ outcome }) => outcome),
    ...(intervals.length > 1 ? ends.map(at) : []),
  ];
  const overfull = outcomes.find((outcome) => outcome.overfull) ?? null;
  return { nominal, pairs: lowestPairs(outcomes), overfull, intervals, ends };
}

/** One interval alone off its nominal value. */
interface Tried extends IntervalPoint {
  readonly path: string;
  readonly outcome: Outcome;
}

/**
 * All intervals where each was found worse alone, as the pairs find it; where the kind of the build
 * changes, also where each was found worse with the kind as it is, which another interval's change hides.
 */
function allWorse(nominal: Outcome, alone: readonly (readonly Tried[])[]): readonly Ends[] {
  const changes = alone.some((tried) => tried.some(({ keepsKind }) => !keepsKind));
  const worse = (i: number, among: (tried: Tried) => boolean): Ends =>
    new Map(
      alone.flatMap((tried) => {
        const left = tried.filter(among);
        if (left.length === 0) return [];
        const worst = left.reduce((a, b) => (isLowerPair(b.outcome.pairs[i]!, a.outcome.pairs[i]!) ? b : a));
        return [[worst.path, worst.end] as const];
      }),
    );
  return distinct(
    nominal.pairs.flatMap((_, i) => [
      worse(i, () => true),
      ...(changes ? [worse(i, ({ keepsKind }) => keepsKind)] : []),
    ]),
  );
}

function distinct(all: readonly Ends[]): readonly Ends[] {
  const named = new Map(all.map((ends) => [[...ends].join(), ends]));
  return [...named.values()];
}

/**
 * Which of these pairs reach what is needed with some unknowns at their best, the intervals nominal and at the ends
 * that were found worse.
 */
export function reachedAtWorst(
  judging: Judging,
  design: Design,
  best: ReadonlySet<string>,
  ends: WorstCase['ends'],
  pairs: ReadonlySet<number>,
): ReadonlySet<number> {
  const reachedIn = (choice: Choice, among: ReadonlySet<number>): ReadonlySet<number> => {
    if (among.size === 0) return among;
    const outcome = judgeOnce(judging, design, choice);
    return new Set([...among].filter((i) => reaches(outcome.pairs[i]!.achieved, outcome.pairs[i]!.needed)));
  };
  const nominal = reachedIn({ ...WORST, best }, pairs);
  return ends.reduce((reached, all) => reachedIn({ ...withEnds(all), best }, reached), nominal);
}

const lowestPairs = (outcomes: readonly Outcome[]): readonly PairOutcome[] =>
  outcomes[0]!.pairs.map((_, i) =>
    outcomes.map((outcome) => outcome.pairs[i]!).reduce((a, b) => (isLowerPair(b, a) ? b : a)),
  );

const isLowerPair = (a: PairOutcome, b: PairOutcome): boolean => comparePairs(a, b) < 0;

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
