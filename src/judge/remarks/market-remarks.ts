// What the market that the file names changes in a verdict of this book, each once: altitude, mains, overvoltage category.

import type { Book } from '#books/questions/book.ts';
import type { Design } from '#model/design.ts';
import { mainsOf } from '#books/shared/mains.ts';
import { ALTITUDE } from '#judge/assume/sold-in.ts';
import type { BookRemark, MarketNote } from '#judge/verdict/remark.ts';
import { citesOf, type Confirmed, type Judged } from '#standards/because.ts';

/** `design` as it counts in its market. */
export function marketRemarks(book: Book, design: Design): readonly BookRemark[] {
  const { supply, surroundings, defaulted } = design;
  const national = book.national(supply.market);
  if (national === null) return [];
  const { name: market, entered, category, altitude } = national;
  const site = surroundings.altitude.value;
  const notes: readonly MarketNote[] = [
    ...(altitude === null
      ? [{ what: 'no-altitude', altitude: site } as const]
      : [
          {
            what: 'altitude',
            altitude: altitude.value,
            // what the file states wins, also where it is less
            stated: defaulted.includes(ALTITUDE) ? null : site,
            known: knownOf(altitude),
          } as const,
        ]),
    ...(entered.value > mainsOf(supply).value
      ? [{ what: 'mains', volts: entered.value, known: knownOf(entered) } as const]
      : []),
    ...(supply.categoryStated
      ? []
      : [{ what: 'category', category: category.value, known: knownOf(category) } as const]),
  ];
  return notes.map((note) => ({
    kind: `book-market-${note.what}`,
    book: book.title,
    note: { as: 'market', market, ...note },
  }));
}

const knownOf = <T>({ because }: Judged<T>): Confirmed => citesOf(because)[0]?.confirmed ?? 'memory';
