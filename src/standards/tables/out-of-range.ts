// The answer of a table that has no row for what was asked: never an extrapolated figure.

import type { Because } from '#standards/because.ts';

export interface OutOfRange {
  readonly kind: 'out-of-range';
  /** In short words, e.g. `clearance-high-frequency ends at 2000 V peak, asked 2100`. */
  readonly says: string;
  readonly because: Because;
}

export const outOfRange = (says: string, because: Because): OutOfRange => ({
  kind: 'out-of-range',
  says,
  because,
});

export const isOutOfRange = (answer: object): answer is OutOfRange =>
  'kind' in answer && answer.kind === 'out-of-range';
