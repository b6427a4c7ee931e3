// What a measurement's entry in `evidence` says: free words, then in brackets what was measured on which photograph and
// where. Words for people and for the page alike: the report prints them, and the page reads them back.

import { NUMBER, POINT, notePoint, plainNumber, pointOf, type NotePoint } from './note-text.ts';

export const MEASURES = ['distance', 'wire diameter', 'tape width', 'angle'] as const;
export type Measure = (typeof MEASURES)[number];

export interface MeasurementNote {
  readonly words: string;
  readonly measure: Measure;
  /** Id of the photograph. */
  readonly photo: string;
  readonly points: readonly NotePoint[];
  /** Half-width of the picking, pixels. */
  readonly half: number;
  /** Millimetres, or degrees of an angle; null where the photograph has no scale yet. */
  readonly found: { readonly value: number; readonly plusMinus: number } | null;
}

/** Points that each measure takes. */
export const pointsOf = (measure: Measure): number =>
  measure === 'distance' ? 2 : measure === 'angle' ? 3 : 4;

export function measurementNoteText(note: MeasurementNote): string {
  const unit = note.measure === 'angle' ? 'degrees' : 'mm';
  const figure =
    note.found === null
      ? 'without a scale'
      : `${plainNumber(note.found.value)} ${unit} ± ${plainNumber(note.found.plusMinus)} ${unit}`;
  const points = note.points.map(notePoint).join(' ');
  return `${note.words.trim()} [${note.measure} ${figure} on ${note.photo} at ${points}, picked to ${plainNumber(note.half)} px]`.trimStart();
}

const FORM = new RegExp(
  String.raw`^([^]*?) ?\[(${MEASURES.join('|')}) (?:without a scale|(${NUMBER}) (?:mm|degrees) ± (${NUMBER}) (?:mm|degrees)) on (.{1,64}?) at ((?:${POINT} ?)+), picked to (${NUMBER}) px\]$`,
);

/** Null where the words are someone's own. */
export function readMeasurementNote(says: string): MeasurementNote | null {
  const found = FORM.exec(says);
  if (found === null) return null;
  const [, words = '', named, value, plusMinus, photo = '', at = '', half] = found;
  const measure = MEASURES.find((each) => each === named);
  const points = at.trim().split(' ').map(pointOf);
  if (measure === undefined || points.length !== pointsOf(measure)) return null;
  const figure = value === undefined ? null : { value: Number(value), plusMinus: Number(plusMinus) };
  return { words, measure, photo, points, half: Number(half), found: figure };
}
