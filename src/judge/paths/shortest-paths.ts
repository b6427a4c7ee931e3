// The paths that a verdict prints: per pair and metric the shortest that punctures at most k plies.

import { countAll } from '#solver/paths/ply-count.ts';
import type { Metric } from '#units/terms.ts';
import type { Nm } from '#units/quantity.ts';
import type { PairQuestion } from '#judge/grade/path-requirement.ts';
import { chainLength, chainPlies, type ChainPiece } from '#judge/grade/chain.ts';
import { onlyTakesAway } from './bound-core.ts';
import { gradedPath, METRICS, pathsFrom, sectionsFor, type Site } from './graded-paths.ts';
import { atLeast, longestOf } from './known-lengths.ts';
import type { FoundPath } from './case-result.ts';
import type { KeyedLimits } from './path-cache.ts';

export const PRINTED_PLIES = [0, 1, 2, 3] as const;

export const noPaths = (): Record<Metric, (FoundPath | null)[]> => ({
  creepage: PRINTED_PLIES.map(() => null),
  clearance: PRINTED_PLIES.map(() => null),
});

export type Shortest = Readonly<Record<Metric, readonly (FoundPath | null)[]>>;

/** For every number of plies the shorter of two. */
export function shorterOf(a: Shortest, b: Shortest): Record<Metric, (FoundPath | null)[]> {
  const shorter = (metric: Metric) =>
    a[metric].map((mine, k) => {
      const other = b[metric][k] ?? null;
      return other && (!mine || other.length < mine.length) ? other : mine;
    });
  return { creepage: shorter('creepage'), clearance: shorter('clearance') };
}

/** Per pair the shortest paths that puncture at most k plies, over all sections of one build; `than`: found elsewhere. */
export function shortestOfPairs(
  site: Site,
  questions: readonly PairQuestion[],
  than: readonly Shortest[] = questions.map(noPaths),
): readonly Shortest[] {
  const shortest = than.map(({ creepage, clearance }) => ({
    creepage: [...creepage],
    clearance: [...clearance],
  }));
  const { search, ties } = site;
  const pairs = questions.map(({ between }) => between);
  // with the core floating all of these were looked at
  const sections = questions.map(
    (question) => new Set(onlyTakesAway(site, question) ? [] : sectionsFor(site, question)),
  );
  for (const section of new Set(sections.flatMap((all) => [...all]))) {
    const knownOf = (metric: Metric) =>
      // only what is shorter than what the pairs have already is looked for
      questions.map((_, i) => PRINTED_PLIES.map((k) => (shortest[i]![metric][k]?.length ?? Infinity) - 1));
    const sightsUpTo = Math.max(search.plan.longest.clearance, ...knownOf('clearance').flat());
    for (const metric of METRICS) {
      const known = knownOf(metric);
      const limitsAt = limitsByX((x) => {
        const lengths = { x, pairs, lengths: known, names: ties.names };
        const length = atLeast(x, longestOf(known));
        return { metric, x, length, window: null, known: lengths, sightsUpTo };
      });
      questions.forEach((question, i) => {
        if (!sections[i]!.has(section) || isTouching(shortest[i]![metric])) return;
        const x = question.asked[metric].x;
        const from = { section, question, metric, counting: COUNT_PRINTED, limits: limitsAt(x), weigh };
        for (const chain of pathsFrom(site, from)) {
          const measured = { length: chainLength(chain, x), plies: chainPlies(chain) };
          const better = PRINTED_PLIES.filter((k) => isShorter(measured, k, shortest[i]![metric][k] ?? null));
          if (better.length === 0) continue;
          const path = gradedPath(site, from, chain);
          for (const k of better) shortest[i]![metric][k] = path;
        }
      });
    }
  }
  return shortest;
}

/** Nothing is shorter. */
const isTouching = (paths: readonly (FoundPath | null)[]): boolean =>
  paths.every((path) => path !== null && path.length === 0);

/** The same object for every pair with the same X, so that the cache tells it once. */
function limitsByX(make: (x: Nm) => KeyedLimits): (x: Nm) => KeyedLimits {
  const made = new Map<Nm, KeyedLimits>();
  return (x) => {
    const limits = made.get(x) ?? make(x);
    made.set(x, limits);
    return limits;
  };
}

/** Only plies count beside the length. */
const weigh = ({ plies }: ChainPiece): readonly number[] => [plies];

const COUNT_PRINTED = countAll(PRINTED_PLIES.length - 1);

type Measured = Pick<FoundPath, 'length' | 'plies'>;

/** It is the one to print for at most k plies: the shorter, then the one through fewer. */
function isShorter(path: Measured, k: number, than: Measured | null): boolean {
  if (path.plies > k) return false;
  if (than === null || path.length !== than.length) return than === null || path.length < than.length;
  return path.plies < than.plies;
}
