// Several rule books on one build as lines of plain text: a block for every pair that asks for something, a row a book,
// where each figure comes from, and where the books part.

import { lengthUnit } from '#words/text/length-unit.ts';
import { remarkSays } from '#words/verdict/remark-words.ts';
import type { BookColumn, BookPair, SideBySide } from '#judge/study/side-by-side.ts';
import type { Design } from '#model/design.ts';
import { circuitLooks, type CircuitLook } from '#words/design/circuit-look.ts';
import { askedLength, kilovoltsUp, lengthDown, volts } from '#words/text/number-words.ts';
import { printable } from '#words/text/printable.ts';
import { answerWords, CAUTION } from '#words/text/answer-words.ts';
import { pairNames } from '#words/verdict/pair-words.ts';
import { partingWords } from './parting-words.ts';
import { booksHeadline } from './books-headline.ts';
import { sourceWords } from './source-words.ts';

export function sideBySideText(design: Design, found: SideBySide): string {
  const looks = circuitLooks(design.circuits);
  const [first] = found.books;
  const pairs = (first?.pairs ?? []).flatMap(({ between }, i) => pairBlock(found.books, i, between, looks));
  const parts = found.parting.map((parting) => `  ${partingWords(parting, found.books, looks)}`);
  const remarks = found.books.flatMap(({ remarks: said }) => said.map((remark) => `  ${remarkSays(remark)}`));
  const blocks = [
    [found.title, booksHeadline(found.books)],
    ...pairs,
    parts.length === 0 ? [] : ['Where they part', ...parts],
    remarks.length === 0 ? [] : ['How they are read', ...remarks],
    known(found.books),
    [`Caution: ${CAUTION}`],
  ];
  return `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.map(printable).join('\n'))
    .join('\n\n')}\n`;
}

function pairBlock(
  books: readonly BookColumn[],
  i: number,
  between: readonly [string, string],
  looks: readonly CircuitLook[],
): readonly (readonly string[])[] {
  const rows = books.flatMap((book) => {
    const pair = book.pairs[i];
    return pair === undefined || pair.asked === null ? [] : [{ book, pair }];
  });
  const [some] = rows;
  if (some === undefined) return [];
  const { rms, peak } = some.pair.stress;
  const title = `${pairNames(between, looks)}: ${volts(rms)} rms, ${volts(peak)} peak`;
  return [[title, ...columns([HEAD, ...rows.flatMap(({ book, pair }) => rowOf(book, pair))])]];
}

const HEAD = ['book', 'needed', 'creepage', 'clearance', 'test, peak', 'achieved', 'verdict'] as const;

function rowOf({ name }: BookColumn, pair: BookPair): readonly (readonly string[])[] {
  const { asked } = pair;
  if (asked === null) return [];
  const source = sourceWords(asked.creepageFrom);
  return [
    [
      name,
      pair.neededWords,
      askedLength(asked.creepage),
      askedLength(asked.clearance),
      asked.testPeak === null ? 'no figure' : kilovoltsUp(asked.testPeak),
      pair.achievedWords,
      verdictOf(pair),
    ],
    ...(source === '' ? [] : [['', `creepage: ${source}`]]),
  ];
}

/** With the distance that is missing, where one is. */
function verdictOf({ verdict, limiting, beyond }: BookPair): string {
  const words = answerWords(verdict);
  if (verdict === 'not-shown' && beyond.length > 0) return `${words}: no figure for ${beyond.join(', ')}`;
  if (limiting?.length == null || limiting.required === null) return words;
  const missing = limiting.required - limiting.length;
  return missing > 0 && verdict === 'falls-short'
    ? `${words}: ${lengthDown(limiting.length)} ${lengthUnit()} of ${askedLength(limiting.required)}`
    : words;
}

/** Rows of more than two cells in columns; a row of two is a sentence under the one before. */
function columns(rows: readonly (readonly string[])[]): readonly string[] {
  const full = rows.filter(({ length }) => length > 2);
  const widths = HEAD.map((_, c) => Math.max(...full.map((row) => (row[c] ?? '').length)));
  return rows.map((row) =>
    row.length === 2
      ? `    ${row[1]}`
      : `  ${row.map((cell, c) => cell.padEnd(widths[c] ?? 0)).join('  ')}`.trimEnd(),
  );
}

function known(books: readonly BookColumn[]): readonly string[] {
  const names = books.filter(({ restsOn }) => restsOn === 'memory').map(({ name }) => name);
  return names.length === 0
    ? []
    : [`Resting on a figure marked memory, not checked against its source: ${names.join(', ')}.`];
}
