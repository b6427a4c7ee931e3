// What one judging is asked for.

import type { Book } from '#books/questions/book.ts';
import type { PathCache } from '#judge/paths/path-cache.ts';
import type { Design } from '#model/design.ts';

export interface Judging {
  readonly book: Book;
  readonly cache: PathCache;
  /** Shortest paths by plies and every weak place are wanted, not only the grades. */
  readonly printed: boolean;
  /** Every weak place is wanted; left out: where paths are printed. */
  readonly places?: boolean;
  /** Only whether each pair reaches what is needed. */
  readonly reachOnly: boolean;
  /** Places of the pairs that are asked for, in their order; left out: all. */
  readonly only?: readonly number[];
}

/** An isolated circuit may count as mains by what is between two others: then all pairs are judged. */
export const isEveryPairJudged = ({ only }: Judging, { circuits }: Design): boolean =>
  only === undefined || circuits.some(({ role }) => role === 'isolated');

/** Whether every weak place is wanted. */
export const isEveryPlace = ({ places, printed }: Judging): boolean => places ?? printed;
