// Which rule books there are. A new one is a folder of tables, a folder of code, and a line here.

import type { OwnCell } from '#standards/tables/own-cell.ts';
import { AS_FILED, type Reader, readerWith } from '#standards/tables/reader.ts';
import type { Book } from '#books/questions/book.ts';
import { iec603351 } from './iec-60335-1/iec-60335-1.ts';
import { iec606011 } from './iec-60601-1/iec-60601-1.ts';
import { iec606641 } from './iec-60664-1/iec-60664-1.ts';
import { iec609501 } from './iec-60950-1/iec-60950-1.ts';
import { iec61558216 } from './iec-61558-2-16/iec-61558-2-16.ts';
import { iec623681 } from './iec-62368-1/iec-62368-1.ts';
import { tablesOf } from './iec-62368-1/tables.ts';
import type { DefaultAnswers } from '#books/shared/default-answers.ts';

const MAKERS: readonly ((read: Reader, byDefault: DefaultAnswers) => Book)[] = [
  iec623681,
  iec606641,
  iec61558216,
  iec603351,
  iec606011,
  iec609501,
];

const DEFAULT = tablesOf(AS_FILED);
const BOOKS: readonly Book[] = MAKERS.map((make) => make(AS_FILED, DEFAULT));

export const ruleBookIds: readonly string[] = BOOKS.map(({ id }) => id);

/** As filed, or with cells that a user confirmed from a copy of their own laid over; null: there is none of that id. */
export function ruleBook(id: string, own: readonly OwnCell[] = []): Book | null {
  const i = ruleBookIds.indexOf(id);
  if (own.length === 0) return BOOKS[i] ?? null;
  const read = readerWith(own);
  return MAKERS[i]?.(read, tablesOf(read)) ?? null;
}
