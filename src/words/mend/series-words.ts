// A series of variants in words: one line each, and what is best and worst of them.

import type { BadInput } from '#model/faults/bad-input.ts';
import { lengthUnit } from '#words/text/length-unit.ts';
import type { LimitingDistance } from '#judge/compare/limiting-distance.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { lengthDown, lengthTaken, lengthUp } from '#words/text/number-words.ts';
import { answerWords } from '#words/text/answer-words.ts';

export interface SeriesRow {
  readonly name: string;
  /** As typed, a column a field. */
  readonly cells: readonly string[];
  /** Null where such a file is refused. */
  readonly verdict: Answer | null;
  /** What is wrong with it then. */
  readonly fault: BadInput | null;
  readonly limiting: LimitingDistance | null;
  /** Of the stack, mm. */
  readonly height: number | null;
}

export function seriesLines(fields: readonly string[], rows: readonly SeriesRow[]): readonly string[] {
  const meets = rows.filter(({ verdict }) => verdict === 'meets').length;
  return [
    `${meets} of ${rows.length} variants meet; varied: ${fields.join(', ')}.`,
    ...rows.map((row) => `${row.name}: ${row.cells.join(', ')}: ${rowWords(row)}`),
  ];
}

export function rowWords({ verdict, fault, limiting, height }: SeriesRow): string {
  if (verdict === null) return fault === null ? 'cannot be judged' : `cannot be read: ${fault.says}`;
  const figure =
    limiting === null
      ? 'no path limits'
      : `${limiting.metric} ${lengthDown(limiting.length)} of ${lengthUp(limiting.required)} ${lengthUnit()}, ${limiting.between.join(' to ')}`;
  return `${answerWords(verdict)}, ${figure}${height === null ? '' : `, stack ${lengthTaken(height)} ${lengthUnit()}`}`;
}
