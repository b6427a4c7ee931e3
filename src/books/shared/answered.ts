// A table's answer as what is asked of it: a length, a peak, a test level. What is out of its range stays so.

import type { Answered } from '#books/questions/required.ts';
import { because, judged } from '#standards/because.ts';
import type { Column } from '#units/terms.ts';
import type { Found } from '#standards/tables/look-up.ts';
import type { OutOfRange } from '#standards/tables/out-of-range.ts';
import { nm, peakOfSine, voltsPeak, voltsRms, type Nm, type VoltsPeak } from '#units/quantity.ts';

type LookedUp = Found | OutOfRange;

export const lengthOf = (found: LookedUp): Answered<Nm> =>
  found.kind === 'found' ? judged(nm(found.value), found.because) : found;

export const peakOf = (found: LookedUp): Answered<VoltsPeak> =>
  found.kind === 'found' ? judged(voltsPeak(found.value), found.because) : found;

/** Of a table that holds its levels in V rms. */
export function testOf(found: LookedUp, column: Column | 'supplementary'): Answered<VoltsPeak> {
  if (found.kind === 'out-of-range') return found;
  const value = peakOfSine(voltsRms(found.value));
  return judged(value, because('test-level', { column, value }, [], [found.because]));
}
