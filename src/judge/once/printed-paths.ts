// The paths that a verdict prints, by choice of place: worked out where a pair asks for those of that choice.

import type { PairQuestion } from '#judge/grade/path-requirement.ts';
import type { Site } from '#judge/paths/graded-paths.ts';
import { noPaths, type Shortest, shortestOfPairs } from '#judge/paths/shortest-paths.ts';
import type { Judging } from './judging.ts';

/** Of every pair asked, in their order. */
export type ShortestIn = (choice: number) => readonly Shortest[];

/** `sites`: by choice. Where nothing is to be printed there are no paths. */
export function printedPaths(
  { printed }: Judging,
  sites: readonly (readonly Site[])[],
  questions: readonly PairQuestion[],
): ShortestIn {
  const none = questions.map(noPaths);
  if (!printed) return () => none;
  const made = new Map<number, readonly Shortest[]>();
  const shortestIn: ShortestIn = (choice) => {
    const known =
      made.get(choice) ??
      sites[choice]!.reduce<readonly Shortest[]>(
        (shortest, site) => shortestOfPairs(site, questions, shortest),
        none,
      );
    made.set(choice, known);
    return known;
  };
  // first where there is no choice: sight lines longer than any that grading wants are then collected once for both
  if (sites.length === 1) shortestIn(0);
  return shortestIn;
}
