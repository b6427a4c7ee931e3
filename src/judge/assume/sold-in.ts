// A design as it counts in the market that it is sold in: what the file leaves out and the market lays down is the market's.

import type { Book } from '#books/questions/book.ts';
import type { Design } from '#model/design.ts';
import { known } from '#model/quantity/reading.ts';

export const CATEGORY = 'supply.overvoltageCategory';
export const ALTITUDE = 'surroundings.altitude';

/** The same design where the file names no market. What is so filled in stays listed as left out. */
export function soldIn(design: Design, book: Book): Design {
  const national = book.national(design.supply.market);
  if (national === null) return design;
  const { supply, surroundings, defaulted } = design;
  const { category, altitude } = national;
  return {
    ...design,
    supply: defaulted.includes(CATEGORY) ? { ...supply, overvoltageCategory: category.value } : supply,
    surroundings:
      defaulted.includes(ALTITUDE) && altitude !== null
        ? { ...surroundings, altitude: known(altitude.value) }
        : surroundings,
  };
}
