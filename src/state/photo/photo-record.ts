// Photographs and what was measured on them as entries of `evidence`: read out of a design file, written into it.
// Documents in, documents out; each change is one step of the history for whoever makes it.

import { photoScale, scaled } from '#geometry/photo-scale.ts';
import { angleSpan, distanceSpan, widthSpan, type PicturePoint, type Span } from '#geometry/photo-span.ts';
import { editDesign, fieldAt } from '#model/edit/edit-design.ts';
import { insertAt, removeAt } from '#model/edit/edit-list.ts';
import { measurementFields, readMeasurement, type MeasurementNote } from '#model/measure/measurement-note.ts';
import { plainNumber } from '#model/measure/note-text.ts';
import { photoFields, readPhoto, type PhotoNote } from '#model/measure/photo-note.ts';
import { figuresOf } from '#model/read/build-evidence.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export interface Photo {
  /** Place in `evidence`. */
  readonly index: number;
  readonly id: string;
  /** Data address. */
  readonly file: string;
  readonly note: PhotoNote;
}

export interface Measurement {
  readonly index: number;
  readonly id: string;
  readonly note: MeasurementNote;
  /** Paths of the fields that it was sent to. */
  readonly fields: readonly string[];
}

const evidenceOf = (doc: DesignFile): NonNullable<DesignFile['evidence']> => doc.evidence ?? [];

/** Only plain bitmaps inside the file are photographs here. */
const PICTURE = /^data:image\/(?:png|jpeg|webp);base64,/;

export const photosOf = (doc: DesignFile): readonly Photo[] =>
  evidenceOf(doc).flatMap((entry, index) => {
    const { id, kind, says = '', file } = entry;
    if (kind !== 'photo' || file === undefined || !PICTURE.test(file)) return [];
    const note = readPhoto({ says, picture: figuresOf(entry).picture });
    return note === null ? [] : [{ index, id, file, note }];
  });

export const measurementsOf = (doc: DesignFile): readonly Measurement[] =>
  evidenceOf(doc).flatMap((entry, index) => {
    const { id, kind, says = '', fields = [] } = entry;
    const note =
      kind === 'measurement' ? readMeasurement({ says, measured: figuresOf(entry).measured }) : null;
    // a file with a wrong entry is shown as well
    return note === null ? [] : [{ index, id, note, fields: Array.isArray(fields) ? fields : [] }];
  });

export function addPhoto(
  doc: DesignFile,
  file: string,
  note: PhotoNote,
  fields: readonly string[] = [],
): readonly [DesignFile, string] {
  const id = freeId(doc, 'photo');
  return [add(doc, { id, kind: 'photo', ...photoFields(note), fields: [...fields], file }), id];
}

/** Marks that an entry keeps; a figure of more turns is kept all the same. */
const MOST_MARKS = 64;

/** Turns counted by marks on a photograph: the field takes the number, the entry stands behind it. */
export function addCount(
  doc: DesignFile,
  {
    photo,
    points,
    path,
  }: { readonly photo: string; readonly points: readonly PicturePoint[]; readonly path: string },
): DesignFile {
  const id = freeId(doc, 'count');
  const entry = add(doc, {
    id,
    kind: 'measurement',
    says: `${points.length} turns counted one by one on ${photo}`,
    fields: [path],
    measured: {
      photo,
      kind: 'count',
      points: points.slice(0, MOST_MARKS).map(({ x, y }): [number, number] => [x, y]),
      value: points.length,
    },
  });
  return editDesign(entry, path, points.length);
}

/** Photographs that belong to what stands at a path. */
export const photosAt = (doc: DesignFile, path: string): readonly Photo[] =>
  photosOf(doc).filter(({ index }) => evidenceOf(doc)[index]?.fields?.includes(path) === true);

export function addMeasurement(doc: DesignFile, note: MeasurementNote): readonly [DesignFile, string] {
  const id = freeId(doc, 'measure');
  return [add(doc, { id, kind: 'measurement', ...measurementFields(note), fields: [] }), id];
}

/** What is measured anew by this photograph's scale follows, and so do the fields that it was sent to. */
export function changePhoto(doc: DesignFile, photo: Photo, note: PhotoNote): DesignFile {
  const after = keep(doc, photo.index, photoFields(note));
  return measurementsOf(after)
    .filter((measurement) => measurement.note.photo === photo.id)
    .reduce(
      (edited, each) => remeasured(edited, each, { ...each.note, ...measuredBy(each.note, note) }),
      after,
    );
}

/** A point put to another place; what was found follows, and so do the fields that it was sent to. */
export const changePoints = (
  doc: DesignFile,
  measurement: Measurement,
  photo: Photo,
  { points, half }: Pick<MeasurementNote, 'points' | 'half'>,
): DesignFile => {
  const note = { ...measurement.note, points, half };
  return remeasured(doc, measurement, { ...note, ...measuredBy(note, photo.note) });
};

function remeasured(
  doc: DesignFile,
  { index, note, fields }: Measurement,
  renewed: MeasurementNote,
): DesignFile {
  const said = keep(doc, index, measurementFields(renewed));
  const figure = sendable(renewed);
  const held = figure === null ? [] : fields.filter((path) => holds(doc, path, note));
  return held.reduce((sent, path) => editDesign(sent, path, figure), said);
}

/** Whether the field still says what was measured; a figure put in by hand since then is someone's own. */
export function holds(doc: DesignFile, path: string, note: MeasurementNote): boolean {
  const figure = sendable(note);
  const held = fieldAt(doc, path);
  return figure !== null && JSON.stringify(held) === JSON.stringify(figure);
}

export const changeWords = (doc: DesignFile, { index, note }: Measurement, words: string): DesignFile =>
  keep(doc, index, measurementFields({ ...note, words }));

/** The field takes the figure over; one that was measured there before stands behind it no longer. */
export function sendTo(doc: DesignFile, { index, note }: Measurement, path: string): DesignFile {
  const figure = sendable(note);
  if (figure === null) return doc;
  const others = measurementsOf(doc).reduce(
    (edited, other) => (other.index === index ? edited : unlinked(edited, other, path)),
    doc,
  );
  const fields = evidenceOf(others)[index]?.fields ?? [];
  const linked = fields.includes(path)
    ? others
    : editDesign(others, `evidence[${index}].fields`, [...fields, path]);
  return editDesign(linked, path, figure);
}

const unlinked = (doc: DesignFile, { index, fields }: Measurement, path: string): DesignFile =>
  fields.includes(path)
    ? editDesign(
        doc,
        `evidence[${index}].fields`,
        fields.filter((each) => each !== path),
      )
    : doc;

/** With it goes what was measured on it; the fields keep their figures. */
export function removePhoto(doc: DesignFile, { id, index }: Photo): DesignFile {
  const gone = measurementsOf(doc).filter(({ note }) => note.photo === id);
  const indices = [index, ...gone.map((measurement) => measurement.index)].sort((a, b) => b - a);
  return indices.reduce((edited, each) => removeAt(edited, 'evidence', each), doc);
}

/** For a link, which must stay short: the photographs' words and what was measured on them remain. */
export const withoutPictures = (doc: DesignFile): DesignFile =>
  photosOf(doc).reduce((bare, { index }) => editDesign(bare, `evidence[${index}].file`, undefined), doc);

export const removeMeasurement = (doc: DesignFile, { index }: Measurement): DesignFile =>
  removeAt(doc, 'evidence', index);

/** Nothing is found where edges lean or are too short, or where there is no scale yet. */
export function measuredBy(
  measured: Pick<MeasurementNote, 'measure' | 'points' | 'half'>,
  { scale }: PhotoNote,
): Pick<MeasurementNote, 'found' | 'scale'> {
  const pixels = pickedSpan(measured);
  if (measured.measure === 'angle') return { scale: null, found: pixels && outward(pixels, 100) };
  const known = scale && { value: scale.length, plusMinus: scale.plusMinus };
  const perPixel = scale && known && photoScale(known, scale.from, scale.to, scale.half);
  if (pixels === null || perPixel === null) return { scale: null, found: null };
  return {
    scale: Number(perPixel.middle.toPrecision(6)),
    found: outward(scaled(pixels, perPixel), 1000),
  };
}

/** In pixels, or degrees of an angle. */
export function pickedSpan({
  measure,
  points,
  half,
}: Pick<MeasurementNote, 'measure' | 'points' | 'half'>): Span | null {
  const [a, b, c, d] = points;
  if (a === undefined || b === undefined) return null;
  if (measure === 'distance') return distanceSpan(a, b, half);
  if (c === undefined) return null;
  if (measure === 'angle') return angleSpan(a, b, c, half);
  return d === undefined ? null : widthSpan([a, b], [c, d], half);
}

/** Rounded to its uncertainty, at the finest to parts of a unit; the half-width widened by what rounding took away. */
function outward({ value, plusMinus }: Span, finest: number): Span {
  const parts = Math.min(finest, partsFor(plusMinus));
  const kept = Math.round(value * parts) / parts;
  // a float's last digits must not cost another step
  const needed = Math.round((plusMinus + Math.abs(kept - value)) * parts * 1e6) / 1e6;
  return { value: kept, plusMinus: Math.ceil(needed) / parts };
}

/** One digit of a half-width says enough, two where it begins with 1 or 2: a step must stay small beside it. */
function partsFor(plusMinus: number): number {
  if (plusMinus <= 0) return Number.POSITIVE_INFINITY;
  const decade = Math.floor(Math.log10(plusMinus));
  const digits = plusMinus / 10 ** decade < 3 ? 1 : 0;
  return 10 ** Math.max(0, digits - decade);
}

/** As a field of the file takes it; null for what is no length or not certain to be above 0. */
export function sendable({
  measure,
  found,
}: MeasurementNote): { readonly value: string; readonly plusMinus: string } | null {
  if (measure === 'angle' || found === null || found.plusMinus >= found.value) return null;
  return { value: `${plainNumber(found.value)} mm`, plusMinus: `${plainNumber(found.plusMinus)} mm` };
}

/** Writes some fields of an entry anew. */
const keep = (doc: DesignFile, index: number, fields: object): DesignFile =>
  Object.entries(fields).reduce(
    (edited, [field, value]) => editDesign(edited, `evidence[${index}].${field}`, value),
    doc,
  );

const add = (doc: DesignFile, entry: NonNullable<DesignFile['evidence']>[number]): DesignFile =>
  insertAt(doc, 'evidence', evidenceOf(doc).length, entry);

function freeId(doc: DesignFile, wish: string): string {
  const taken = evidenceOf(doc).map(({ id }) => id);
  for (let n = 1; ; n++) if (!taken.includes(`${wish}-${n}`)) return `${wish}-${n}`;
}
