// Rounding of a distance by the rule printed with its table. Whole nanometres in and out, so nothing is rounded twice:
// 2.4 mm that is exactly 2.4 stays 2.4.

import { mm, nm, type Nm } from '#units/quantity.ts';

import type { Rounding, Table } from './table.ts';

/** Step in nanometres that holds at `value`. */
export function stepAt(value: Nm, rounding: Rounding): Nm {
  const step = rounding.steps.find(({ upTo }) => upTo === null || value <= mm(upTo));
  if (step === undefined) throw new Error('the last rounding step must have no bound');
  return mm(step.to);
}

export function roundUp(value: Nm, rounding: Rounding): Nm {
  const step = stepAt(value, rounding);
  return nm(Math.ceil(value / step) * step);
}

export function roundingOf(table: Table): Rounding {
  if (table.file.rounding === null) throw new Error(`${table.file.id} has no rounding`);
  return table.file.rounding;
}
