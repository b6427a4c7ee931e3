// What a search tells apart of the plies that a path punctures. Printing counts plies of any kind together; grading
// counts only what is worth something, each stuff by itself, and gives up a path that has enough of one.

import { CLASSES, plyOf, withPlies } from './path-label.ts';
import type { StuffId } from '#solver/section/build.ts';
import type { Punctured } from '#solver/network/pieces.ts';

export interface Counting {
  /** Class of each stuff, below `CLASSES`; null: crossing it counts as nothing. `one`: all are of the first. */
  readonly classes: readonly (number | null)[] | 'one';
  /** By class: paths that puncture so many are not followed; left out: all are. */
  readonly enough: readonly (number | undefined)[];
  /** Tells paths apart by the tracking rank of the solids that they run along. */
  readonly byRank: boolean;
}

/** All plies together, as paths are printed: up to `most` of them. */
export const countAll = (most: number): Counting => ({
  classes: 'one',
  enough: [most + 1],
  byRank: false,
});

const classOf = ({ classes }: Counting, stuff: StuffId): number | null =>
  classes === 'one' ? 0 : (classes[stuff] ?? null);

/** Punctured plies packed as in code.ts. */
export function packed(punctured: readonly Punctured[] | null, counting: Counting): number {
  let plies = 0;
  for (const { stuff, count } of punctured ?? []) {
    const cls = classOf(counting, stuff);
    if (cls !== null) plies = withPlies(plies, plyOf(Math.min(cls, CLASSES - 1), count));
  }
  return plies;
}
