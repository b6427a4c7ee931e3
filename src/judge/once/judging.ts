// What one judging is asked for.

import type { Book } from '#books/questions/book.ts';
import { SearchPlans } from '#judge/grade/search-plan.ts';
import { type SolidRules, solidRules } from '#judge/grade/solid-rules.ts';
import type { PathCache } from '#judge/paths/path-cache.ts';
import type { Design } from '#model/design.ts';
import { AskedPairs } from './asked-pairs.ts';

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
  /** What its pairs ask, over every way to count its unknowns. */
  readonly asked: AskedPairs;
  /** Called now and then while it lasts, for whoever waits beside. */
  readonly onWay: () => void;
  readonly rules: SolidRules;
  readonly plans: SearchPlans;
}

interface Wanted extends Pick<Judging, 'printed' | 'places' | 'reachOnly'> {
  readonly onWay?: Judging['onWay'];
}

/** Begins to judge a document. */
export function judgingOf(
  book: Book,
  cache: PathCache,
  { onWay = () => undefined, ...wanted }: Wanted,
): Judging {
  cache.nextGeneration();
  const rules = solidRules(book);
  return {
    book,
    cache,
    asked: new AskedPairs(book),
    rules,
    plans: new SearchPlans(rules, cache.stuffs),
    onWay,
    ...wanted,
  };
}

/** An isolated circuit may count as mains by what is between two others: then all pairs are judged. */
export const isEveryPairJudged = ({ only }: Judging, { circuits }: Design): boolean =>
  only === undefined || circuits.some(({ role }) => role === 'isolated');

/** Whether every weak place is wanted. */
export const isEveryPlace = ({ places, printed }: Judging): boolean => places ?? printed;
