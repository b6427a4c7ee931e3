// A photograph in the report: the picture that the file holds, turned as it was looked at, with the length of its scale and
// each measurement drawn and numbered on it; below it what was found and which field it stands behind.

import type { Design } from '#model/design.ts';
import type { Evidence } from '#model/design/evidence.ts';
import { readMeasurement, type MeasurementNote } from '#model/measure/measurement-note.ts';
import { plainNumber } from '#model/measure/note-text.ts';
import { readPhoto, type PhotoNote } from '#model/measure/photo-note.ts';
import { fieldWords } from '#words/design/field-words.ts';
import { tag, type Content, type Markup } from '#papers/html/page/markup.ts';

export interface Measured {
  readonly id: string;
  readonly fields: readonly string[];
  readonly note: MeasurementNote;
}

/** What was measured on the photograph of this id. */
export const measuredOn = (design: Design, photo: string): readonly Measured[] =>
  design.evidence.flatMap((each) => {
    const { id, kind, fields } = each;
    const note = kind === 'measurement' ? readMeasurement(each) : null;
    return note?.photo === photo ? [{ id, fields, note }] : [];
  });

/** Null where nothing is known of its size. */
export function photoFigure(design: Design, entry: Evidence): Markup | null {
  const { id, file } = entry;
  const note = readPhoto(entry);
  if (note === null || file === null) return null;
  const measured = measuredOn(design, id);
  const caption = [
    tag('p', {}, tag('b', {}, id), `: ${note.words}; ${scaleWords(note)}`),
    tag(
      'ol',
      {},
      measured.map((each) => tag('li', {}, measuredWords(design, each))),
    ),
  ];
  return tag('figure', {}, picture(note, file, measured), tag('figcaption', {}, caption));
}

function scaleWords({ scale }: PhotoNote): string {
  if (scale === null) return 'no scale';
  return `scale ${plainNumber(scale.length)} ± ${plainNumber(scale.plusMinus)} mm between the ends marked 0, picked to ${plainNumber(scale.half)} px`;
}

export function foundWords({ measure, found }: MeasurementNote): string {
  const unit = measure === 'angle' ? 'degrees' : 'mm';
  if (found === null) return `${measure} no figure`;
  return `${measure} ${plainNumber(found.value)} ± ${plainNumber(found.plusMinus)} ${unit}`;
}

function measuredWords(design: Design, { fields, note }: Measured): string {
  const { words, half } = note;
  const behind = fields.map((field) => fieldWords(design, field)).join(', ');
  return [
    foundWords(note),
    ...(words === '' ? [] : [words]),
    `picked to ${plainNumber(half)} px`,
    ...(behind === '' ? [] : [`stands behind ${behind}`]),
  ].join('; ');
}

/** Widest that the picture is printed, pixels; it keeps its shape. */
const PRINTED = 560;

function picture(note: PhotoNote, file: string, measured: readonly Measured[]): Markup {
  const { width, height, turned, scale } = note;
  const middle = `${width / 2} ${height / 2}`;
  const angle = (turned * Math.PI) / 180;
  const wide = width * Math.abs(Math.cos(angle)) + height * Math.abs(Math.sin(angle));
  const high = width * Math.abs(Math.sin(angle)) + height * Math.abs(Math.cos(angle));
  const box = [(width - wide) / 2, (height - high) / 2, wide, high].map((value) => value.toFixed(1));
  // a mark has the same size on paper whatever the picture's own
  const unit = Math.max(width, height) / PRINTED;
  const scaleMark = scale === null ? null : mark('0', [[scale.from, scale.to]], unit, turned);
  const marks = measured.map((each, i) => mark(String(i + 1), runsOf(each.note), unit, turned));
  return tag(
    'svg',
    { viewBox: box.join(' '), role: 'img', 'aria-label': `photograph, ${note.words}` },
    tag(
      'g',
      { transform: turned === 0 ? null : `rotate(${turned} ${middle})` },
      tag('image', { href: file, width: String(width), height: String(height) }),
      scaleMark,
      marks,
    ),
  );
}

type Point = MeasurementNote['points'][number];

/** Two edges are two lines; everything else is one. */
const runsOf = ({ measure, points }: MeasurementNote): readonly (readonly Point[])[] =>
  measure === 'wire diameter' || measure === 'tape width' ? [points.slice(0, 2), points.slice(2)] : [points];

function mark(name: string, runs: readonly (readonly Point[])[], unit: number, turned: number): Content {
  const d = runs.map((run) => `M${run.map(({ x, y }) => `${x} ${y}`).join('L')}`).join('');
  const line = (stroke: string, wide: number): Markup =>
    tag('path', { d, fill: 'none', stroke, 'stroke-width': String(wide * unit) });
  const at = runs.at(-1)?.at(-1) ?? { x: 0, y: 0 };
  const place = `translate(${at.x} ${at.y}) rotate(${-turned}) scale(${unit})`;
  const letter = { x: '6', y: '-5', 'font-size': '14', 'font-weight': '700' };
  return [
    line('#fff', 3.6),
    line('#000', 1.3),
    tag(
      'g',
      { transform: place },
      tag('text', { ...letter, stroke: '#fff', 'stroke-width': '3.5' }, name),
      tag('text', { ...letter, fill: '#000' }, name),
    ),
  ];
}
