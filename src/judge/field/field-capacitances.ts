// The capacitances between circuits that the field found, for the touch current: what floats is taken out and passes the
// field on. They take the place of the estimate of parallel layers.

import type { FieldWindings } from '#judge/cases/judged-touch.ts';
import type { FieldCapacitance, FieldReport } from './field-report.ts';
import type { Design } from '#model/design.ts';
import { because } from '#standards/because.ts';
import type { LayersCapacitance } from '#stress/current/winding-capacitance.ts';
import { farads as inFarads } from '#units/quantity.ts';

/** Null where no field was solved, or by one mesh alone, which cannot say how far it is off. */
export function fieldCapacitances(design: Design, report: FieldReport): FieldWindings | null {
  if (report.none !== null || report.error === null) return null;
  const isCircuit = (id: string) => design.circuits.some((circuit) => circuit.id === id);
  const found = report.effective.filter(({ between }) => between.every(isCircuit));
  const isMeasured = report.turned || design.former.tube !== null;
  return {
    // what it may be off by counts against the build
    most: found.map((one) => counted(one, 1)),
    least: isMeasured ? found.map((one) => counted(one, -1)) : null,
  };
}

function counted(
  { between, farads, perMetre, meanTurn, error }: FieldCapacitance,
  way: 1 | -1,
): LayersCapacitance {
  const off = Math.min(1, error ?? 0);
  const value = inFarads(farads * (1 + way * off));
  const values = { farads: value, perMetre, meanTurn, error: off };
  return {
    between,
    layers: null,
    farads: value,
    from: 'field',
    because: because('field-capacitance', values),
  };
}
