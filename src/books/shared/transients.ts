// The transient that a pair of circuits has to withstand, and the temporary overvoltage. What comes in from the mains
// stands between mains and anything else, and between isolated and touchable, which finish a double barrier; behind
// the barrier nothing of it is counted.

import type { Circuit } from '#model/design.ts';
import type { Supply } from '#model/design/supply.ts';
import { because, judged, type Because, type Judged } from '#standards/because.ts';
import type { Answered, Transients } from '#books/questions/required.ts';
import type { OvervoltageCategory } from '#units/terms.ts';
import { lookUp } from '#standards/tables/look-up.ts';
import type { Rules } from '#standards/tables/rules-in-words.ts';
import type { Table } from '#standards/tables/table.ts';
import { mainsOf } from './mains.ts';
import { peakOf } from './answered.ts';
import { nationalOf } from './national.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import { voltsPeak, voltsRms, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

/** The tables of a book that say what the mains brings. */
export interface MainsTables {
  /** `mains` is line to neutral. */
  readonly mainsTransient: (mains: VoltsRms, category: OvervoltageCategory) => Answered<VoltsPeak>;
  readonly temporaryOvervoltage: (mains: VoltsRms) => Answered<VoltsPeak>;
  readonly markets: Table;
}

/** Of a book that reads its transients in a table and has no temporary overvoltage. */
export const plainMains = (
  { mainsTransient, markets }: { readonly mainsTransient: Table; readonly markets: Table },
  rules: Rules,
): MainsTables => ({
  mainsTransient: transientIn(mainsTransient),
  temporaryOvervoltage: () => judged(voltsPeak(0), rules('no-temporary-overvoltage').because()),
  markets,
});

/** No interpolation: the next row up. */
export const transientIn =
  (table: Table): MainsTables['mainsTransient'] =>
  (mains, category) =>
    peakOf(lookUp(table, mains, `category ${category}`));

export function transientsOf(tables: MainsTables, supply: Supply, a: Circuit, b: Circuit): Transients {
  if (!isReached(a, b)) {
    const none = judged(voltsPeak(0), because('no-transient', { a: a.id, b: b.id }));
    return { withstand: none, temporaryOvervoltage: none, mains: mainsOf(supply).value };
  }
  const mains = enteredWith(tables.markets, supply);
  const none = judged(voltsPeak(0), because('no-temporary-overvoltage', { supply: supply.kind }));
  return {
    withstand:
      statedTransient(supply) ??
      under(tables.mainsTransient(mains.value, supply.overvoltageCategory), mains.because, a, b),
    // it comes with a fault of the public mains: a direct supply has none
    temporaryOvervoltage:
      supply.kind === 'dc' ? none : under(tables.temporaryOvervoltage(mains.value), mains.because, a, b),
    mains: mains.value,
  };
}

/** The supply, or the mains of its market where that is more; with the market's category where the file names none. */
function enteredWith(markets: Table, supply: Supply): Judged<VoltsRms> {
  const own = mainsOf(supply);
  const national = nationalOf(markets, null, supply.market);
  if (national === null) return own;
  const { entered, category } = national;
  const from = [
    ...(entered.value > own.value ? [entered.because] : []),
    ...(supply.categoryStated ? [] : [category.because]),
  ];
  return judged(voltsRms(Math.max(own.value, entered.value)), {
    ...own.because,
    from: [...own.because.from, ...from],
  });
}

/** A required withstand voltage that the file states wins over the table's. */
function statedTransient({ transient }: Supply): Answered<VoltsPeak> | null {
  if (transient === null) return null;
  const { value } = transient;
  return judged(value, because('stated-transient', { value }));
}

function isReached(a: Circuit, b: Circuit): boolean {
  const roles = [a.role, b.role];
  return roles.includes('mains') || (roles.includes('isolated') && roles.includes('touchable'));
}

function under(found: Answered<VoltsPeak>, mains: Because, a: Circuit, b: Circuit): Answered<VoltsPeak> {
  if (isOutOfRange(found)) return found;
  const values = { a: a.id, b: b.id, value: found.value };
  return judged(found.value, because('withstand', values, [], [found.because, mains]));
}
