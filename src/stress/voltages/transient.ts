// The transient that a pair of circuits has to withstand, and the temporary overvoltage. What comes in from the mains
// stands between mains and anything else, and between isolated and touchable, which finish a double barrier; behind
// the barrier nothing of it is counted. A direct supply counts as the mains of the same peak that it may come from.
//
// Steps: withstand {a, b, value}, no-transient {a, b}; supply-as-mains {supply, voltage, mains}.

import type { Circuit, Supply } from '#model/design.ts';
import { because, judged, type Because, type Judged } from '#standards/because.ts';
import type { Book } from '#books/book.ts';
import { isOutOfRange, type OutOfRange } from '#standards/out-of-range.ts';
import { voltsPeak, voltsRms, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

export interface Transients {
  /** Required withstand voltage; 0 where no transient is counted. */
  readonly withstand: Judged<VoltsPeak> | OutOfRange;
  readonly temporaryOvervoltage: Judged<VoltsPeak> | OutOfRange;
}

export function transients(book: Book, supply: Supply, a: Circuit, b: Circuit): Transients {
  if (!isReached(a, b)) {
    const none = judged(voltsPeak(0), because('no-transient', { a: a.id, b: b.id }));
    return { withstand: none, temporaryOvervoltage: none };
  }
  const mains = mainsOf(supply);
  return {
    withstand: under(book.mainsTransient(mains.value, supply.overvoltageCategory), mains.because, a, b),
    temporaryOvervoltage: under(book.temporaryOvervoltage(mains.value), mains.because, a, b),
  };
}

/** Voltage with which the tables of the mains are entered. */
export function mainsOf(supply: Supply): Judged<VoltsRms> {
  const { kind } = supply;
  const voltage = supply.voltage.value;
  const mains = kind === 'dc' ? voltsRms(voltage / Math.SQRT2) : voltage;
  return judged(mains, because('supply-as-mains', { supply: kind, voltage, mains }));
}

function isReached(a: Circuit, b: Circuit): boolean {
  const roles = [a.role, b.role];
  return roles.includes('mains') || (roles.includes('isolated') && roles.includes('touchable'));
}

function under(
  found: Judged<VoltsPeak> | OutOfRange,
  mains: Because,
  a: Circuit,
  b: Circuit,
): Judged<VoltsPeak> | OutOfRange {
  if (isOutOfRange(found)) return found;
  const values = { a: a.id, b: b.id, value: found.value };
  return judged(found.value, because('withstand', values, [], [found.because, mains]));
}
