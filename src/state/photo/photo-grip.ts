// A point that lies on a photograph already and can be taken up: of what is being picked, of the scale, of a measurement.

import type { PicturePoint } from '#geometry/photo-span.ts';
import type { Measurement, Photo } from './photo-record.ts';

export interface Grip {
  /** The id of the measurement that the point belongs to, or what else it is part of. */
  readonly of: 'hand' | 'scale' | { readonly measurement: string };
  /** Which of its points. */
  readonly at: number;
}

interface Lying {
  readonly hand: readonly PicturePoint[];
  readonly photo: Photo;
  readonly measurements: readonly Measurement[];
}

/** The point nearest to a place, no farther than `reach` pixels of the picture; null where there is none. */
export function gripAt(
  place: PicturePoint,
  reach: number,
  { hand, photo, measurements }: Lying,
): Grip | null {
  const { scale } = photo.note;
  const groups: readonly (readonly [Grip['of'], readonly PicturePoint[]])[] = [
    ['hand', hand],
    ...measurements.map(({ id, note }) => [{ measurement: id }, note.points] as const),
    ['scale', scale === null ? [] : [scale.from, scale.to]],
  ];
  let nearest: Grip | null = null;
  let least = reach;
  for (const [of, points] of groups)
    points.forEach(({ x, y }, at) => {
      const distance = Math.hypot(x - place.x, y - place.y);
      if (distance > least || (nearest !== null && distance === least)) return;
      least = distance;
      nearest = { of, at };
    });
  return nearest;
}

/** The points of one thing, one of them carried elsewhere. */
export const carried = (
  points: readonly PicturePoint[],
  of: Grip['of'],
  carry: { readonly grip: Grip; readonly to: PicturePoint } | null,
): readonly PicturePoint[] =>
  carry === null || !isSame(of, carry.grip.of)
    ? points
    : points.map((point, i) => (i === carry.grip.at ? carry.to : point));

const isSame = (a: Grip['of'], b: Grip['of']): boolean =>
  typeof a === 'object' && typeof b === 'object' ? a.measurement === b.measurement : a === b;
