// The capacitances between circuits that the field found, for the touch current: what floats is taken out and passes the
// field on. They take the place of the estimate of parallel layers.

import type { FieldReport } from './field-report.ts';
import type { Design } from '#model/design.ts';
import { because } from '#standards/because.ts';
import type { LayersCapacitance } from '#stress/current/winding-capacitance.ts';
import { farads as inFarads } from '#units/quantity.ts';

/** Null where no field was solved, or by one mesh alone, which cannot say how far it is off. */
export function fieldCapacitances(design: Design, report: FieldReport): readonly LayersCapacitance[] | null {
  if (report.none !== null || report.error === null) return null;
  const isCircuit = (id: string) => design.circuits.some((circuit) => circuit.id === id);
  return report.effective.flatMap(
    ({ between, farads, perMetre, meanTurn, error }): readonly LayersCapacitance[] => {
      if (!between.every(isCircuit)) return [];
      // what it may be off by counts against the build
      const value = inFarads(farads * (1 + (error ?? 0)));
      const values = { farads: value, perMetre, meanTurn, error: error ?? 0 };
      return [
        {
          between,
          layers: null,
          farads: value,
          from: 'field',
          because: because('field-capacitance', values),
        },
      ];
    },
  );
}
