// What the insulation of a winding's own wire holds by the wire tables: the least breakdown of new wire, rms. It is no
// grade of insulation between circuits; it tells whether turns of one circuit may lie on each other.

import type { Wire } from '#model/design/winding.ts';
import { isKnown } from '#model/quantity/reading.ts';
import { type Judged, because, judged } from '#standards/because.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import { fullyInsulatedWire, roundWire } from '#standards/materials/wires.ts';
import { voltsRms, type VoltsRms } from '#units/quantity.ts';

/** Null where the tables say nothing: a layer-insulated wire, an unlisted size. An unknown wire counts as enamel, grade 1. */
export function enamelHolds(wire: Wire): Judged<VoltsRms> | null {
  const kind = typeof wire.kind === 'string' ? wire.kind : 'enamelled';
  if (kind === 'bare') return judged(voltsRms(0), because('bare-wire', { field: '' }));
  if (kind === 'layer-insulated' || wire.conductor === null || !isKnown(wire.conductor)) return null;
  const conductor = wire.conductor.value;
  const grade = typeof wire.grade === 'number' ? wire.grade : kind === 'fully-insulated' ? 3 : 1;
  if (kind === 'fully-insulated') {
    const found = fullyInsulatedWire(conductor, grade as 3 | 4 | 5 | 6 | 7 | 8 | 9);
    return isOutOfRange(found) ? null : judged(found.value.leastBreakdown, found.because);
  }
  const found = roundWire(conductor, Math.min(3, grade) as 1 | 2 | 3);
  if (isOutOfRange(found) || found.value.breakdown === null) return null;
  return judged(found.value.breakdown, found.because);
}
