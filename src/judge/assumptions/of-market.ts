// What a field that the file leaves out is counted as because of the market that the build is sold in, with where it was seen.

import type { National } from '#books/questions/national.ts';
import { ALTITUDE, CATEGORY } from '#judge/assume/sold-in.ts';
import type { CountedAs } from '#judge/verdict/assumed.ts';
import { citesOf, type Judged } from '#standards/because.ts';

/** Null: no market is named, or it lays nothing down for this field. */
export function ofMarket(national: National | null, field: string): CountedAs | null {
  if (national === null) return null;
  const { name: market, altitude, category } = national;
  const counted = (quantity: 'altitude' | 'category', found: Judged<number> | null): CountedAs | null => {
    const cite = found && citesOf(found.because)[0];
    return cite ? { as: 'market', market, quantity, value: found.value, cite } : null;
  };
  if (field === ALTITUDE) return counted('altitude', altitude);
  return field === CATEGORY ? counted('category', category) : null;
}
