// A distance that is asked, as it is printed: millimetres for both columns, null where the book has no figure.

import type { Both } from '#books/questions/required.ts';
import { because, type Because, type Judged } from '#standards/because.ts';
import { isOutOfRange, type OutOfRange } from '#standards/tables/out-of-range.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import type { RequiredDistance } from '#judge/verdict/pair.ts';

interface PrintedFigure {
  readonly value: number | null;
  readonly because: Because;
}

const lengthOf = (found: Judged<Nm> | OutOfRange): PrintedFigure => ({
  value: isOutOfRange(found) ? null : inMm(found.value),
  because: found.because,
});

export function printDistance(both: Both<Judged<Nm> | OutOfRange>): RequiredDistance {
  const [basic, reinforced] = [lengthOf(both.basic), lengthOf(both.reinforced)];
  return {
    basic: basic.value,
    reinforced: reinforced.value,
    because: because('distance', {}, [], [basic.because, reinforced.because]),
  };
}
