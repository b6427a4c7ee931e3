// How far the bulk voltage sinks between two charges at the lowest mains: the energy that the outputs take while the
// rectifier does not conduct comes out of the capacitor.

import type { Converter } from '#model/design/voltages.ts';
import type { Supply } from '#model/design/supply.ts';
import { type VoltsDc, voltsDc } from '#units/quantity.ts';

/**
 * Null where the file does not give the capacitor, or where it would be empty before the next charge.
 * Source: flyback transformer design note AN-17, page 8: formula and worked case.
 */
export function bulkValley({ bulk }: Pick<Converter, 'bulk'>, supply: Supply): VoltsDc | null {
  if (bulk === null) return null;
  const crest = bulk.lowestMains.value * Math.SQRT2;
  const discharging = Math.max(0, 1 / (2 * supply.frequency.value) - bulk.chargingTime.value);
  const taken = (bulk.power.value / bulk.efficiency) * discharging;
  const left = crest ** 2 - (2 * taken) / bulk.capacitance.value;
  return left > 0 ? voltsDc(Math.sqrt(left)) : null;
}
