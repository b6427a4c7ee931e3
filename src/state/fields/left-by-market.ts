// What stands for altitude and overvoltage category where the file leaves them out: the market's, else the common ones.

import { ruleBook } from '#books/shelf.ts';
import { marketNames } from '#books/shared/national.ts';
import { plain } from '#words/text/number-words.ts';

export interface LeftOut {
  readonly altitude: string;
  readonly category: string;
}

const COMMON: LeftOut = { altitude: '2000 m', category: '2' };

/** What the file says, as it is typed: a market or a rule book that no table has changes nothing. */
export function leftByMarket(rules: unknown, market: unknown): LeftOut {
  if (typeof rules !== 'string' || typeof market !== 'string' || !marketNames.has(market)) return COMMON;
  const national = ruleBook(rules)?.national(market) ?? null;
  if (national === null) return COMMON;
  const { name, altitude, category } = national;
  return {
    altitude: altitude === null ? COMMON.altitude : `${plain(altitude.value)} m, as for ${name}`,
    category: `${category.value}, as for ${name}`,
  };
}
