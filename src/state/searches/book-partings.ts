// What the page of books asks beside its columns: on which figures they part, and what a book is called.

import { ruleBook } from '#books/shelf.ts';
import { besides, type BookColumn, type Parting } from '#judge/study/side-by-side.ts';

export const partings = (columns: readonly BookColumn[]): readonly Parting[] => besides('', columns).parting;

export function bookName(id: string): { readonly title: string; readonly edition: string } {
  const book = ruleBook(id);
  return { title: book?.title ?? id, edition: book?.edition ?? '' };
}
