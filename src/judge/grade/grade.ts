// Grades of several insulations in series, and of a distance.

import {
  BASIC_AND_SUPPLEMENTARY,
  FUNCTIONAL,
  type Insulation,
  REINFORCED,
} from '#books/questions/insulation.ts';
import type { Grade } from '#units/terms.ts';
import { heightOf } from '#standards/ladder.ts';
import type { Nm } from '#units/quantity.ts';

export const lowest = (a: Grade, b: Grade): Grade => (heightOf(a) <= heightOf(b) ? a : b);
export const highest = (a: Grade, b: Grade): Grade => (heightOf(a) >= heightOf(b) ? a : b);

/** Several insulations in series. `supplementary` here says: basic and supplementary both, in one insulation. */
export function inSeries(insulations: readonly Insulation[]): Grade {
  if (insulations.some((one) => one.reinforced)) return 'reinforced';
  const pairs = insulations.some((a, i) => a.basic && insulations.some((b, j) => i !== j && b.supplementary));
  if (pairs) return 'double';
  if (insulations.some((one) => one.supplementary)) return 'supplementary';
  return insulations.some((one) => one.basic) ? 'basic' : 'functional';
}

/** A distance that reaches the basic value is both basic and supplementary. */
export function distanceInsulation(length: number, basic: Nm | null, reinforced: Nm | null): Insulation {
  if (reinforced !== null && length >= reinforced) return REINFORCED;
  return basic !== null && length >= basic ? BASIC_AND_SUPPLEMENTARY : FUNCTIONAL;
}

/** As printed: what is basic and supplementary is told as the one that was asked for. */
export const printed = (grade: Grade, needed: Grade | null): Grade =>
  grade === 'supplementary' && needed !== 'supplementary' ? 'basic' : grade;
