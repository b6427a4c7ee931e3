// What was measured on a photograph, as the desk holds it, and as an entry of `evidence` keeps it: words for people, figures
// in fields of their own. Older files wrote the figures into the words, in brackets; those are still read.

import type { Evidence } from '#model/design/evidence.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { NUMBER, POINT, pointOf, type NotePoint } from './note-text.ts';

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
  /** Millimetres a pixel; null where the photograph has no scale yet, and for an angle. */
  readonly scale: number | null;
  /** Millimetres, or degrees of an angle; null where the photograph has no scale yet. */
  readonly found: { readonly value: number; readonly plusMinus: number } | null;
}

/** Points that each measure takes. */
export const pointsOf = (measure: Measure): number =>
  measure === 'distance' ? 2 : measure === 'angle' ? 3 : 4;

type Entry = NonNullable<DesignFile['evidence']>[number];

/** An entry must say what it shows: where nobody does, what was measured. */
export function measurementFields(note: MeasurementNote): {
  readonly says: string;
  readonly measured: NonNullable<Entry['measured']>;
} {
  const { words, measure, photo, points, half, scale, found } = note;
  return {
    says: words.trim() || measure,
    measured: {
      photo,
      kind: KINDS[measure],
      points: points.map(({ x, y }) => [x, y]),
      picked: half,
      ...(scale === null ? {} : { scale }),
      ...found,
    },
  };
}

/** Null where nothing was measured on a photograph, or not by this desk. */
export function readMeasurement({
  says,
  measured,
}: Pick<Evidence, 'says' | 'measured'>): MeasurementNote | null {
  if (measured === null) return readMeasurementText(says);
  const { photo, kind, picked, scale, found } = measured;
  const points = measured.points.map(([x, y]) => ({ x, y }));
  const measure = MEASURES.find((each) => KINDS[each] === kind && pointsOf(each) === points.length);
  if (measure === undefined || photo === null) return null;
  return { words: says === measure ? '' : says, measure, photo, points, half: picked ?? 0, scale, found };
}

const KINDS: Readonly<Record<Measure, NonNullable<Evidence['measured']>['kind']>> = {
  distance: 'distance',
  'wire diameter': 'diameter',
  'tape width': 'distance',
  angle: 'angle',
};

const FORM = new RegExp(
  String.raw`^([^]*?) ?\[(${MEASURES.join('|')}) (?:without a scale|(${NUMBER}) (?:mm|degrees) ± (${NUMBER}) (?:mm|degrees)) on (.{1,64}?) at ((?:${POINT} ?)+), picked to (${NUMBER}) px\]$`,
);

function readMeasurementText(says: string): MeasurementNote | null {
  const found = FORM.exec(says);
  if (found === null) return null;
  const [, words = '', named, value, plusMinus, photo = '', at = '', half] = found;
  const measure = MEASURES.find((each) => each === named);
  const points = at.trim().split(' ').map(pointOf);
  if (measure === undefined || points.length !== pointsOf(measure)) return null;
  const figure = value === undefined ? null : { value: Number(value), plusMinus: Number(plusMinus) };
  return { words, measure, photo, points, half: Number(half), scale: null, found: figure };
}
