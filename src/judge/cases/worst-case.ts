// The judging at worst: every unknown at its worst; intervals each alone at either end and where the build changes
// its kind (see interval-points.ts), then all where they were found worse. Past third circuits of which something is open
// all that is done once more, those taking the least room. Per pair the lowest of these holds.

import type { Design } from '#model/design.ts';
import { type Choice, type Ends, intervalsOf, WORST } from '#judge/assume/assumption.ts';
import { reaches } from '#standards/ladder.ts';
import { type IntervalPoint, pointsOf } from './interval-points.ts';
import { judgeOnce } from '#judge/once/judge-once.ts';
import { isEveryPlace, type Judging } from '#judge/once/judging.ts';
import type { Outcome, PairOutcome } from '#judge/paths/case-result.ts';
import { isLowerPair, type Judged, lowestOf } from './lowest-pair.ts';
import { type Past, pastOthers } from './past-others.ts';

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
  /** The same for pairs past third circuits of which something is open, those taking the least room. */
  readonly turns: readonly Turn[];
}

export interface Turn extends Past {
  /** As counted, and with every other interval where it was found worse. */
  readonly ends: readonly Ends[];
}

export function judgeWorst(judging: Judging, design: Design, coreTo?: string | null): WorstCase {
  const intervals = intervalsOf(design);
  const points = new Map<string, readonly IntervalPoint[]>();
  const pointsAt = (path: string, pairs: readonly PairOutcome[]): readonly IntervalPoint[] => {
    const known = points.get(path) ?? pointsOf(judging, design, path, pairs);
    points.set(path, known);
    return known;
  };
  const judged: Judged[] = [];
  const run = (among: Judging, choice: Choice, moved: readonly string[]) => {
    const at = (ends: Ends) => {
      const counted = { ...choice, ends: new Map([...choice.ends, ...ends]) };
      // weak places are wanted only of what counts in the end; the nominal one most often does
      const places = isEveryPlace(judging) && judged.length === 0;
      const outcome = judgeOnce({ ...among, places }, design, counted, coreTo);
      judged.push({ choice: counted, only: among.only ?? null, pairs: outcome.pairs });
      return outcome;
    };
    return judgeMoved(at, moved, pointsAt);
  };
  const own = run(judging, WORST, intervals);
  const turns = pastOthers(design, own.nominal, intervals).map((past) => {
    const { turned, pairs, room } = past;
    const moved = intervals.filter((path) => !room.has(path));
    const found = run({ ...judging, only: pairs }, { ...WORST, turned, ends: room }, moved);
    const ends = [room, ...found.ends.map((worse) => new Map([...room, ...worse]))];
    return { ...past, ends };
  });
  const again = (choice: Choice, only: readonly number[]) =>
    judgeOnce({ ...judging, only }, design, choice, coreTo).pairs;
  return {
    nominal: own.nominal,
    pairs: lowestOf(judged[0]!, judged.slice(1), isEveryPlace(judging) ? again : null),
    overfull: own.outcomes.find((outcome) => outcome.overfull) ?? null,
    intervals,
    ends: own.ends,
    turns,
  };
}

/**
 * The same as far as it goes where every or any pair that asks for something falls short with the intervals at their nominal
 * values: at their ends the lowest holds, and is no better. Null where it does not, or where one may count by how far it
 * falls short.
 */
export function shortNominally(judging: Judging, design: Design, wanted: 'every' | 'any'): WorstCase | null {
  if (design.circuits.some(({ role }) => role === 'isolated')) return null;
  const nominal = judgeOnce({ ...judging, printed: false, reachOnly: true }, design, WORST);
  const asked = nominal.pairs.filter(({ needed }) => needed !== null);
  const short = asked.filter(({ needed, achieved }) => !reaches(achieved, needed));
  if (wanted === 'every' ? short.length < asked.length : short.length === 0) return null;
  const intervals = intervalsOf(design);
  const turns = pastOthers(design, nominal, intervals).map((past) => ({ ...past, ends: [] }));
  return { nominal, pairs: nominal.pairs, overfull: null, intervals, ends: [], turns };
}

/** All nominal, each interval alone at its points, all where they were found worse. */
function judgeMoved(
  at: (ends: Ends) => WorstCase['nominal'],
  intervals: readonly string[],
  pointsAt: (path: string, pairs: readonly PairOutcome[]) => readonly IntervalPoint[],
) {
  const nominal = at(new Map());
  const alone = intervals.map((path) =>
    pointsAt(path, nominal.pairs).map((point): Tried => ({
      ...point,
      path,
      outcome: at(new Map([[path, point.end]])),
    })),
  );
  const ends = intervals.length === 0 ? [] : allWorse(nominal, alone);
  const tried = alone.flat().map(({ outcome }) => outcome);
  return { nominal, ends, outcomes: [nominal, ...tried, ...(intervals.length > 1 ? ends.map(at) : [])] };
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
 * Which of these pairs reach what is needed with some unknowns known, the intervals nominal and at the ends that were found
 * worse. What is known of a third circuit may be either of its ends; of the others it is the best.
 */
export function reachedAtWorst(
  judging: Judging,
  design: Design,
  known: ReadonlySet<string>,
  worst: WorstCase,
  pairs: ReadonlySet<number>,
): ReadonlySet<number> {
  const reachedIn = (choice: Choice, among: ReadonlySet<number>): ReadonlySet<number> => {
    if (among.size === 0) return among;
    const only = [...among];
    const outcome = judgeOnce({ ...judging, only }, design, { ...choice, held: known });
    return new Set(only.filter((_, k) => reaches(outcome.pairs[k]!.achieved, outcome.pairs[k]!.needed)));
  };
  const all = (best: ReadonlySet<string>, turn: Turn | null, among: ReadonlySet<number>) => {
    const own = [new Map<string, number>(), ...worst.ends].map((ends) => ({ ...WORST, best, ends }));
    const past = turn ? turn.ends.map((ends) => ({ ...WORST, best, ends, turned: turn.turned })) : [];
    return [...own, ...past].reduce((reached, choice) => reachedIn(choice, reached), among);
  };
  const turned = new Set(worst.turns.flatMap((turn) => turn.pairs));
  const free = new Set([...pairs].filter((pair) => !turned.has(pair)));
  const reached = worst.turns.flatMap((turn) => {
    const among = new Set(turn.pairs.filter((pair) => pairs.has(pair)));
    const roomy = all(known, turn, among);
    const isThird = (field: string) => turn.turned.has(worst.nominal.filled.rooms.get(field) ?? '');
    const others = new Set([...known].filter((field) => !isThird(field)));
    if (others.size === known.size) return [...roomy];
    const left = new Set([...among].filter((pair) => !roomy.has(pair)));
    return [...roomy, ...all(others, turn, left)];
  });
  return new Set([...all(known, null, free), ...reached]);
}
