// Which rule books there are. A new one is a folder of tables, a folder of code, and a line here.

import type { Book } from './book.ts';
import { iec623681 } from './iec-62368-1/iec-62368-1.ts';

const BOOKS: readonly Book[] = [iec623681];

export const ruleBookIds: readonly string[] = BOOKS.map(({ id }) => id);

export const ruleBook = (id: string): Book | null => BOOKS.find((book) => book.id === id) ?? null;
