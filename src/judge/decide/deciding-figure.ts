// Which figure of one field would turn the verdict: the build is judged again with the field at this and that, everything
// else as it is, until each change is pinned to one step. A generator, so that who asks may pause or stop between judgings.

import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { PairAnswer } from '#judge/judging/pair-answers.ts';
import type { Assumption } from '#judge/verdict/verdict.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { type FigureUnit, openRange, type OpenRange } from './open-range.ts';

/** Null where the file would be refused with this figure. */
export type JudgeFile = (doc: DesignFile) => Answered | null;

/** All that is asked of a judgement. */
export interface Answered {
  readonly pairs: readonly PairAnswer[];
}

/** From this figure up to where the next band begins. */
export interface Band {
  readonly from: number;
  /** Worst of the pairs that the field can change. */
  readonly answer: Answer;
}

export type Deciding =
  | {
      readonly kind: 'figures';
      readonly unit: FigureUnit;
      readonly bands: readonly Band[];
      readonly pairs: readonly (readonly [string, string])[];
      /** The highest figure that was tried and taken. */
      readonly upTo: number;
    }
  | {
      readonly kind: 'answers';
      readonly answers: readonly { readonly value: string | number; readonly answer: Answer }[];
      readonly pairs: readonly (readonly [string, string])[];
    }
  /** No figure of this field alone changes any pair. */
  | { readonly kind: 'nothing-alone' }
  /** Finding it out is no single figure. */
  | { readonly kind: 'no-figure' };

export function* decidingFigure(
  doc: DesignFile,
  { field, between }: Pick<Assumption, 'field' | 'between'>,
  judge: JudgeFile,
): Generator<void, Deciding, void> {
  const range = openRange(doc, field, between);
  if (range === null) return { kind: 'no-figure' };
  const judged = (value: unknown): Answered | null => judge(editDesign(doc, field, value));
  return range.kind === 'answers' ? yield* ofAnswers(range, judged) : yield* ofFigures(range, judged);
}

type Judged = (value: unknown) => Answered | null;

function* ofAnswers(
  range: Extract<OpenRange, { readonly kind: 'answers' }>,
  judged: Judged,
): Generator<void, Deciding, void> {
  const found: { readonly value: string | number; readonly verdict: Answered }[] = [];
  for (const value of range.answers) {
    const verdict = judged(value);
    if (verdict !== null) found.push({ value, verdict });
    yield;
  }
  const open = changedPairs(found.map(({ verdict }) => verdict));
  if (open.length === 0) return { kind: 'nothing-alone' };
  const answers = found.map(({ value, verdict }) => ({ value, answer: worstOf(verdict, open) }));
  return { kind: 'answers', answers, pairs: pairsOf(found[0]!.verdict, open) };
}

/** So many figures are tried before those between are looked at. */
const SAMPLES = 12;

function* ofFigures(
  range: Extract<OpenRange, { readonly kind: 'figures' }>,
  judged: Judged,
): Generator<void, Deciding, void> {
  const { unit, step, write } = range;
  const known = new Map<number, Answered | null>();
  const figure = (n: number): number => Number((n * step).toFixed(6));
  function* at(n: number): Generator<void, string, void> {
    if (!known.has(n)) {
      known.set(n, judged(write(figure(n))));
      yield;
    }
    const verdict = known.get(n) ?? null;
    return verdict === null ? '' : verdict.pairs.map((pair) => pair.verdict).join();
  }
  const sampled = samples(range.from, range.to);
  const starts = [range.from];
  for (const [i, n] of sampled.entries()) if (i > 0) starts.push(...(yield* changes(sampled[i - 1]!, n, at)));
  const taken = starts.flatMap((n) => known.get(n) ?? []);
  const open = changedPairs(taken);
  if (open.length === 0) return { kind: 'nothing-alone' };
  const bands = starts.flatMap((n): readonly Band[] => {
    const verdict = known.get(n);
    return verdict == null ? [] : [{ from: figure(n), answer: worstOf(verdict, open) }];
  });
  const upTo = Math.max(...[...known].flatMap(([n, verdict]) => (verdict === null ? [] : [n])));
  return { kind: 'figures', unit, bands: joined(bands), pairs: pairsOf(taken[0]!, open), upTo: figure(upTo) };
}

function samples(from: number, to: number): readonly number[] {
  const count = Math.min(SAMPLES, Math.max(1, to - from));
  const all = Array.from({ length: count + 1 }, (_, i) => Math.round(from + ((to - from) * i) / count));
  return [...new Set(all)];
}

/** Where, between two figures that are judged otherwise, each change comes; found by halving. */
function* changes(
  low: number,
  high: number,
  at: (n: number) => Generator<void, string, void>,
): Generator<void, readonly number[], void> {
  if ((yield* at(low)) === (yield* at(high))) return [];
  if (high - low <= 1) return [high];
  const middle = Math.floor((low + high) / 2);
  return [...(yield* changes(low, middle, at)), ...(yield* changes(middle, high, at))];
}

/** Places of the pairs that are not judged alike in all verdicts. */
function changedPairs(verdicts: readonly Answered[]): readonly number[] {
  const [first] = verdicts;
  if (first === undefined) return [];
  return first.pairs.flatMap((pair, i) =>
    verdicts.some(({ pairs }) => pairs[i]?.verdict !== pair.verdict) ? [i] : [],
  );
}

const ORDER: readonly Answer[] = ['falls-short', 'not-shown', 'meets'];

function worstOf({ pairs }: Answered, places: readonly number[]): Answer {
  const ranks = places.map((i) => ORDER.indexOf(pairs[i]?.verdict ?? 'not-shown'));
  return ORDER[Math.min(...ranks)] ?? 'not-shown';
}

const pairsOf = ({ pairs }: Answered, places: readonly number[]): readonly (readonly [string, string])[] =>
  places.flatMap((i) => (pairs[i] === undefined ? [] : [pairs[i].between]));

/** Neighbouring bands of one answer are one. */
const joined = (bands: readonly Band[]): readonly Band[] =>
  bands.filter((band, i) => band.answer !== bands[i - 1]?.answer);
