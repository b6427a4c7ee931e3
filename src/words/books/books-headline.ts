// What several rule books say of one build, counted in one sentence: `By two books it meets, by one it falls short.`

import type { BookColumn } from '#judge/study/side-by-side.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { capitalised } from '#words/text/answer-words.ts';

export function booksHeadline(books: readonly Pick<BookColumn, 'verdict'>[]): string {
  const count = (answer: Answer): number => books.filter(({ verdict }) => verdict === answer).length;
  const [meets, short, open] = [count('meets'), count('falls-short'), count('not-shown')];
  const parts = [
    ...(meets > 0 ? [`by ${booksOf(meets)} it meets`] : []),
    ...(short > 0 ? [`by ${booksOf(short)} it falls short`] : []),
    ...(open > 0 ? [`by ${booksOf(open)} it is not shown`] : []),
  ];
  return parts.length === 0 ? 'No book was asked.' : `${capitalised(parts.join(', '))}.`;
}

const booksOf = (count: number): string =>
  `${NUMBERS[count] ?? String(count)} ${count === 1 ? 'book' : 'books'}`;

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six'];
