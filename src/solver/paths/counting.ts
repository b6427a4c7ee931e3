// What a search tells apart of the plies that a path punctures. Printing counts plies of any kind together; grading
// counts only what is worth something, each stuff by itself, and gives up a path that has enough of one.

import { CLASSES, plyOf, withPlies } from './code.ts';
import type { StuffId } from '#solver/section/build.ts';
import type { Punctured } from './pieces.ts';

export interface Counting {
  /** Class of a stuff, below `CLASSES`; null: crossing it counts as nothing. */
  readonly classOf: (stuff: StuffId) => number | null;
  /** By class: paths that puncture so many are not followed; left out: all are. */
  readonly enough: readonly (number | undefined)[];
  /** Tells paths apart by the tracking rank of the solids that they run along. */
  readonly byRank: boolean;
  /** Names it in a cache: equal names count alike. */
  readonly name: string;
}

/** All plies together, as paths are printed: up to `most` of them. */
export const countAll = (most: number): Counting => ({
  classOf: () => 0,
  enough: [most + 1],
  byRank: false,
  name: `all ${most}`,
});

/** Punctured plies packed as in code.ts. */
export function packed(punctured: readonly Punctured[] | null, counting: Counting): number {
  let plies = 0;
  for (const { stuff, count } of punctured ?? []) {
    const cls = counting.classOf(stuff);
    if (cls !== null) plies = withPlies(plies, plyOf(Math.min(cls, CLASSES - 1), count));
  }
  return plies;
}
