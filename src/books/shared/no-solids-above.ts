// A book whose rule for solids ends at a working voltage: above it none counts.

import type { Question } from '#books/questions/required.ts';
import { because } from '#standards/because.ts';
import { outOfRange, type OutOfRange } from '#standards/tables/out-of-range.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';

/** `ends` says where, of its figure `workingMost`. Null: the rule holds here. */
export function noSolidsAbove(
  rule: Rule,
  { rms }: Question,
  ends: (most: number) => string,
): OutOfRange | null {
  const most = rule.figure('workingMost');
  if (rms <= most) return null;
  const place = `solids at ${Math.round(rms)} V rms`;
  return outOfRange(
    ends(most),
    because('out-of-range', { quantity: 'solid insulation', place }, rule.because(['workingMost']).cites),
  );
}
