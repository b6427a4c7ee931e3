// How far a figure measured on a photograph is to be trusted, part by part: how well its edges were picked, and the scale.

import type { MeasurementNote } from '#model/measure/measurement-note.ts';
import { pickedSpan } from './photo-record.ts';

export interface TrustParts {
  /** Half-width of the picked span, and the pixels that a millimetre has there. */
  readonly pixels: number;
  readonly perMm: number;
  /** Millimetres that the edges bring, that scale and rounding add, and both together. */
  readonly edges: number;
  readonly scale: number;
  readonly whole: number;
}

/** Null for an angle, and where nothing is found yet. */
export function trustParts(note: MeasurementNote): TrustParts | null {
  const { found, scale: mmPerPixel } = note;
  const span = pickedSpan(note);
  if (note.measure === 'angle' || found === null || span === null || mmPerPixel === null) return null;
  const edges = Math.min(found.plusMinus, span.plusMinus * mmPerPixel);
  return {
    pixels: span.plusMinus,
    perMm: 1 / mmPerPixel,
    edges,
    scale: found.plusMinus - edges,
    whole: found.plusMinus,
  };
}
