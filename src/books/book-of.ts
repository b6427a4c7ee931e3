// The rule book that a design is judged by, with the cells that its user confirmed laid over.

import type { Design } from '#model/design.ts';
import type { Book } from '#books/questions/book.ts';
import { ruleBook } from './shelf.ts';

/** Throws where there is none of that id: reading the file has refused it. */
export function bookOf({ rules, confirmed }: Pick<Design, 'rules' | 'confirmed'>): Book {
  const book = ruleBook(rules, confirmed);
  if (book === null) throw new Error(`no rule book ${rules}`);
  return book;
}
