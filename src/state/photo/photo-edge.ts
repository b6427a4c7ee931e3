// An edge of the section that was dragged onto a photograph under it: a distance measured there, from where its figure counts from,
// which stands behind the edge's field.

import type { PicturePoint } from '#geometry/photo-span.ts';
import { keptPoint } from '#model/measure/note-text.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import * as record from './photo-record.ts';

/** In pixels of the picture. */
export interface DraggedEdge {
  readonly path: string;
  /** What the edge is: `left margin of layer 3`. */
  readonly label: string;
  /** Where its figure counts from, and where it was put. */
  readonly from: PicturePoint;
  readonly to: PicturePoint;
  /** What one could just tell apart. */
  readonly seen: number;
}

/** Null where the picture does not show it, has no scale, or shows it too small to tell; each end is picked to `best` or what was seen. */
export function edgeSent(
  doc: DesignFile,
  photo: record.Photo,
  { path, label, from, to, seen }: DraggedEdge,
  best: number,
): { readonly doc: DesignFile; readonly id: string } | null {
  const isShown = ({ x, y }: PicturePoint): boolean =>
    x >= 0 && y >= 0 && x <= photo.note.width && y <= photo.note.height;
  if (!isShown(from) || !isShown(to)) return null;
  const half = Math.max(best, Math.ceil(seen * 10) / 10);
  const picked = { measure: 'distance' as const, points: [from, to].map(keptPoint), half };
  const words = `${label}, dragged`;
  const note = { words, photo: photo.id, ...picked, ...record.measuredBy(picked, photo.note) };
  if (record.sendable(note) === null) return null;
  // an edge that is dragged again is measured anew
  const before = record
    .measurementsOf(doc)
    .find((each) => each.note.photo === photo.id && each.note.words === words && each.fields.includes(path));
  const bare = before === undefined ? doc : record.removeMeasurement(doc, before);
  const [added, id] = record.addMeasurement(bare, note);
  const measurement = record.measurementsOf(added).find((each) => each.id === id);
  return measurement === undefined ? null : { doc: record.sendTo(added, measurement, path), id };
}
