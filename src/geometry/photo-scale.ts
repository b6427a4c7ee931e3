// From pixels to millimetres: the scale that a known length gives a photograph, and what it makes of a picked length.
// It holds in the plane of the known length, seen square on; nothing here can know whether that was so.

import { distanceSpan, type PicturePoint, type Span } from './photo-span.ts';

/** Millimetres to a pixel: as read, and its least and most. */
export interface PhotoScale {
  readonly middle: number;
  readonly least: number;
  readonly most: number;
}

/** Null where the two points lie too near each other, or the length is not certain to be above 0. */
export function photoScale(
  known: Span,
  from: PicturePoint,
  to: PicturePoint,
  half: number,
): PhotoScale | null {
  const pixels = distanceSpan(from, to, half);
  if (pixels.value <= pixels.plusMinus || known.value <= known.plusMinus) return null;
  return {
    middle: known.value / pixels.value,
    least: (known.value - known.plusMinus) / (pixels.value + pixels.plusMinus),
    most: (known.value + known.plusMinus) / (pixels.value - pixels.plusMinus),
  };
}

/** A picked length in millimetres; the half-width reaches to the farther end, from pixels and scale together. */
export function scaled(pixels: Span, scale: PhotoScale): Span {
  const value = pixels.value * scale.middle;
  const low = Math.max(0, pixels.value - pixels.plusMinus) * scale.least;
  const high = (pixels.value + pixels.plusMinus) * scale.most;
  return { value, plusMinus: Math.max(value - low, high - value) };
}
