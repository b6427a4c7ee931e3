// Grades of one insulation and of several in series.
// An insulation answers three questions: is it basic, is it supplementary, is it reinforced.

import type { Grade } from '#standards/grade.ts';
import { heightOf } from '#standards/ladder.ts';
import type { Nm } from '#units/quantity.ts';

export interface Insulation {
  readonly basic: boolean;
  readonly supplementary: boolean;
  readonly reinforced: boolean;
}

export const FUNCTIONAL: Insulation = { basic: false, supplementary: false, reinforced: false };
export const BASIC_ONLY: Insulation = { basic: true, supplementary: false, reinforced: false };
export const BASIC_AND_SUPPLEMENTARY: Insulation = { basic: true, supplementary: true, reinforced: false };
export const REINFORCED: Insulation = { basic: true, supplementary: true, reinforced: true };

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
