// The paths that a verdict prints: per pair and metric the shortest that punctures at most k plies.

import { countAll } from '#solver/counting.ts';
import type { Metric } from '#solver/pieces.ts';
import type { PairQuestion } from './asked.ts';
import type { ChainPiece } from './chain.ts';
import { gradedPaths, METRICS, type PathSearch, type Place } from './graded-paths.ts';
import { metalTies } from './metal-ties.ts';
import type { FoundPath } from './outcome.ts';

export const PRINTED_PLIES = [0, 1, 2, 3] as const;

export const noPaths = (): Record<Metric, (FoundPath | null)[]> => ({
  creepage: PRINTED_PLIES.map(() => null),
  clearance: PRINTED_PLIES.map(() => null),
});

/** Per pair the shortest paths that puncture at most k plies, over all sections of one build. */
export function shortestOfPairs(
  search: PathSearch,
  place: Place,
  coreTo: string | null,
  questions: readonly PairQuestion[],
): readonly Record<Metric, (FoundPath | null)[]>[] {
  const shortest = questions.map(noPaths);
  const tied = metalTies(search.design, coreTo).nameOf;
  for (const section of [...place.sections, null]) {
    const knownOf = (metric: Metric) =>
      // longer than what the pairs have already is not looked for
      questions.map(({ asked }, i) =>
        PRINTED_PLIES.map((k) => Math.max(shortest[i]![metric][k]?.length ?? Infinity, asked[metric].x)),
      );
    const sightsUpTo = Math.max(search.plan.longest.clearance, ...knownOf('clearance').flat());
    for (const metric of METRICS) {
      const known = knownOf(metric);
      const length = longestOf(known);
      const between = knownBetween(questions, known, tied);
      const name = known.flat().join(',');
      questions.forEach((question, i) => {
        const x = question.asked[metric].x;
        const limits = { metric, x, length, window: null, between, name, sightsUpTo };
        const counting = COUNT_PRINTED;
        const from = { search, place, section, coreTo, question, metric, counting, limits, weigh };
        for (const path of gradedPaths(from)) note(shortest[i]![metric], path);
      });
    }
  }
  return shortest;
}

const longestOf = (known: readonly (readonly number[])[]): readonly number[] =>
  PRINTED_PLIES.map((k) => Math.max(...known.map((lengths) => lengths[k]!)));

/** What is known for two conductors: that of their pair; over a floating one that of all pairs with the other end. */
function knownBetween(
  questions: readonly PairQuestion[],
  known: readonly (readonly number[])[],
  tied: (conductor: string) => string,
): (a: string, b: string) => readonly number[] {
  const circuits = new Set(questions.flatMap(({ between }) => between));
  return (a, b) => {
    const ends = [tied(a), tied(b)].filter((end) => circuits.has(end));
    return longestOf(known.filter((_, i) => ends.every((end) => questions[i]!.between.includes(end))));
  };
}

/** Only plies count beside the length. */
const weigh = ({ plies }: ChainPiece): readonly number[] => [plies];

const COUNT_PRINTED = countAll(PRINTED_PLIES.length - 1);

function note(shortest: (FoundPath | null)[], path: FoundPath): void {
  for (const k of PRINTED_PLIES) {
    const known = shortest[k];
    if (path.plies > k) continue;
    if (!known || path.length < known.length || (path.length === known.length && path.plies < known.plies)) {
      shortest[k] = path;
    }
  }
}
