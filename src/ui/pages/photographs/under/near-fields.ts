// Fields near what was measured on a photograph that lies under the section: each edge of the drawing that can be dragged has one.
// The nearest is the one whose figure begins where one end was picked and whose edge stands by the other; an edge that is drawn
// elsewhere than the picture shows it counts half, for the picture is there to put it right. Of edges
// that lie along what was measured none is meant.

import { placeOf, type Laying } from '#geometry/photo-laying.ts';
import type { MeasurementNote } from '#model/measure/measurement-note.ts';
import type { Handle } from '#ui/canvas/handles/handle.ts';
import { inMm, type Nm } from '#units/quantity.ts';

type Place = readonly [number, number];

/** Paths, the nearest first. */
export function nearFields(
  handles: readonly Handle[],
  laying: Laying,
  { points }: Pick<MeasurementNote, 'points'>,
): readonly string[] {
  const ends = endsOf(points.map((point) => placeOf(laying, point)));
  if (ends === null) return [];
  const [a, b] = ends;
  const axis = Math.abs(b[0] - a[0]) >= Math.abs(b[1] - a[1]) ? 'x' : 'y';
  return handles
    .filter((handle) => handle.axis === axis)
    .map((handle) => ({
      path: handle.path,
      apart: Math.min(apartFrom(handle, a, b), apartFrom(handle, b, a)),
    }))
    .sort((one, other) => one.apart - other.apart)
    .map(({ path }) => path);
}

/** Two points are the ends; of four two lie on each edge. */
function endsOf(places: readonly Place[]): readonly [Place, Place] | null {
  const [a, b, c, d] = places;
  if (a === undefined || b === undefined) return null;
  return c === undefined || d === undefined ? [a, b] : [between(a, b), between(c, d)];
}

const between = (a: Place, b: Place): Place => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

const apartFrom = (handle: Handle, from: Place, to: Place): number =>
  apartFromLine(handle, handle.origin, from) + apartFromLine(handle, handle.at, to) / 2;

/** Millimetres from a line across the handle's axis, as long as its edge. */
function apartFromLine({ axis, span }: Handle, at: Nm, [x, y]: Place): number {
  const [along, across] = axis === 'x' ? [x, y] : [y, x];
  const [least, most] = [inMm(span[0]), inMm(span[1])];
  return Math.hypot(along - inMm(at), Math.max(0, least - across, across - most));
}
