// One build judged by several rule books: what each needs, asks, finds and says, and where they part.
// Lengths in mm, voltages in V. A book's answer is the judge's own; nothing is judged here.

import type { SheetRule } from '#books/questions/book.ts';
import { bookOf } from '#books/book-of.ts';
import type { Design } from '#model/design.ts';
import { judgePlain } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import type { Grade } from '#units/terms.ts';
import { type FigureSource, figureSource } from './figure-source.ts';

export interface SideBySide {
  readonly title: string;
  readonly books: readonly BookColumn[];
  readonly parting: readonly Parting[];
}

export interface BookColumn {
  readonly rules: Verdict['rules'];
  readonly name: string;
  /** What its verdicts are about where that is not all. */
  readonly scope: string | null;
  readonly verdict: Answer;
  readonly restsOn: Verdict['restsOn'];
  readonly pairs: readonly BookPair[];
  readonly remarks: Verdict['remarks'];
}

export interface BookPair {
  readonly between: readonly [string, string];
  readonly needed: Grade;
  /** In the book's own words. */
  readonly neededWords: string;
  readonly achieved: Grade;
  readonly achievedWords: string;
  readonly verdict: Answer;
  readonly beyond: PairVerdict['beyond'];
  readonly stress: Pick<PairVerdict['stress'], 'rms' | 'peak' | 'frequency'>;
  /** Shortest ways that go through no solid, mm; null where there is none. */
  readonly built: { readonly creepage: number | null; readonly clearance: number | null };
  /** Null where nothing is asked. */
  readonly asked: AskedFigures | null;
  /** What limits it: the way that holds it, and what that asks. */
  readonly limiting: {
    readonly metric: string;
    readonly length: number | null;
    readonly required: number | null;
  } | null;
}

/** Of the grade that is needed; `basic` beside it. Null: the book has no figure. */
export interface AskedFigures {
  readonly creepage: number | null;
  readonly creepageBasic: number | null;
  readonly clearance: number | null;
  readonly testPeak: number | null;
  readonly testRms: number | null;
  readonly seconds: number;
  readonly plies: SheetRule;
  readonly leastThickness: number;
  readonly creepageFrom: FigureSource | null;
  readonly clearanceFrom: FigureSource | null;
}

/** A figure of one pair on which the books do not agree: each value with the books that say so, rising. */
export interface Parting {
  readonly between: readonly [string, string];
  readonly figure: 'needed' | 'creepage' | 'clearance' | 'test' | 'achieved' | 'verdict';
  readonly values: readonly { readonly value: string | number | null; readonly books: readonly string[] }[];
}

/** One book after another, so that whoever asks can breathe between them and tell what is there. */
export function* bookColumns(
  design: Design,
  ids: readonly string[],
  cache: PathCache = new PathCache(),
): Generator<BookColumn, void, void> {
  for (const id of ids) {
    const by = { ...design, rules: id };
    yield columnOf(by, judgePlain(by, cache).verdict);
  }
}

export const sideBySide = (design: Design, ids: readonly string[]): SideBySide =>
  besides(design.title, [...bookColumns(design, ids)]);

export const besides = (title: string, books: readonly BookColumn[]): SideBySide => ({
  title,
  books,
  parting: partings(books),
});

export function columnOf(design: Design, verdict: Verdict): BookColumn {
  const book = bookOf(design);
  const words = (grade: Grade): string => book.gradeWords[grade] ?? grade;
  return {
    rules: verdict.rules,
    name: book.title,
    scope: book.scope,
    verdict: verdict.verdict,
    restsOn: verdict.restsOn,
    pairs: verdict.pairs.map((pair) => pairOf(pair, words)),
    remarks: verdict.remarks.filter(({ kind }) => kind.startsWith('book-')),
  };
}

function pairOf(pair: PairVerdict, words: (grade: Grade) => string): BookPair {
  const { between, needed, achieved, verdict, beyond, stress, limiting } = pair;
  const { rms, peak, frequency } = stress;
  return {
    between,
    needed,
    neededWords: words(needed),
    achieved,
    achievedWords: words(achieved),
    verdict,
    beyond,
    stress: { rms, peak, frequency },
    built: { creepage: builtOf(pair, 'creepage'), clearance: builtOf(pair, 'clearance') },
    asked: askedOf(pair),
    limiting: limiting && {
      metric: limiting.metric,
      length: limiting.length,
      required: limiting.required,
    },
  };
}

const builtOf = ({ paths }: PairVerdict, metric: 'creepage' | 'clearance'): number | null =>
  paths.find((path) => path.metric === metric && path.plies === 0)?.length ?? null;

function askedOf({ needed, required }: PairVerdict): AskedFigures | null {
  if (required === null) return null;
  const column = needed === 'reinforced' || needed === 'double' ? 'reinforced' : 'basic';
  const { creepage, clearance, test, throughInsulation } = required;
  return {
    creepage: creepage[column],
    creepageBasic: creepage.basic,
    clearance: clearance[column],
    testPeak: test.peak,
    testRms: test.rms,
    seconds: test.seconds,
    plies: throughInsulation.plies,
    leastThickness: throughInsulation.leastThickness,
    creepageFrom: figureSource(creepage.because, column),
    clearanceFrom: figureSource(clearance.because, column),
  };
}

const FIGURES: readonly (readonly [Parting['figure'], (pair: BookPair) => string | number | null])[] = [
  ['needed', ({ needed }) => needed],
  ['creepage', ({ asked }) => asked?.creepage ?? null],
  ['clearance', ({ asked }) => asked?.clearance ?? null],
  ['test', ({ asked }) => (asked?.testPeak == null ? null : Math.ceil(asked.testPeak))],
  ['achieved', ({ achieved }) => achieved],
  ['verdict', ({ verdict }) => verdict],
];

/** Of the pairs of which some book asks something. */
function partings(books: readonly BookColumn[]): readonly Parting[] {
  const [first] = books;
  if (first === undefined) return [];
  return first.pairs.flatMap(({ between }, i) => {
    if (books.every(({ pairs }) => pairs[i]?.asked === null)) return [];
    return FIGURES.flatMap(([figure, read]): readonly Parting[] => {
      const by = new Map<string | number | null, string[]>();
      for (const { rules, pairs } of books) {
        const pair = pairs[i];
        if (pair === undefined) continue;
        const value = read(pair);
        by.set(value, [...(by.get(value) ?? []), rules.id]);
      }
      if (by.size < 2) return [];
      const values = [...by].map(([value, ids]) => ({ value, books: ids })).sort(byValue);
      return [{ between, figure, values }];
    });
  });
}

/** Numbers rise, words keep their order, what there is no figure of comes last. */
function byValue(a: { value: string | number | null }, b: { value: string | number | null }): number {
  if (typeof a.value === 'number' && typeof b.value === 'number') return a.value - b.value;
  return Number(a.value === null) - Number(b.value === null);
}
