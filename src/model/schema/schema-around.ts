// Schemas of what surrounds the winding window: supply, surroundings, converter, former, core, parts, outside, bridges, evidence.

import * as z from 'zod';
import {
  between,
  choice,
  count,
  flag,
  id,
  list,
  LONG_TEXT,
  quantity,
  reading,
  record,
  SHORT_TEXT,
  text,
} from './schema-leaf.ts';
import { sheet, wall } from './schema-solid.ts';

/** A part of a whole, also as a text in percent. */
const share = (highest: number, example: string) => {
  const error = `a number from 0 to ${highest}, ${example}`;
  const part = z.number({ error }).min(0, { error }).max(highest, { error });
  const percent = z.string().regex(/^\s*\d{1,3}(?:\.\d{1,6})?\s*%\s*$/);
  return z.union([part, percent.transform((text) => Number.parseFloat(text) / 100).pipe(part)], { error });
};

export const supply = record({
  kind: choice('ac', 'dc'),
  voltage: quantity('voltsRms'),
  tolerance: share(1, '0.1 being 10 %').optional(),
  frequency: quantity('frequency').optional(),
  overvoltageCategory: count(1, 4).optional(),
});

export const surroundings = record({
  pollutionDegree: count(1, 3).optional(),
  altitude: quantity('altitude').optional(),
  hottestInsulation: reading('temperature').optional(),
  impregnation: choice('none', 'varnish', 'potted').optional(),
  proof: choice('tested', 'none').optional(),
});

const outputs = list(record({ circuit: id, voltage: quantity('voltsDc') }), 0, 32, 'outputs');

/** The capacitor behind the mains rectifier, from which the valley of the bulk voltage follows. */
const bulk = record({
  lowestMains: quantity('voltsRms', true),
  capacitance: quantity('bulkCapacitance', true),
  power: quantity('power'),
  efficiency: share(1, '0.8 being 80 %'),
  chargingTime: quantity('duration'),
});

export const converter = record({
  mode: choice('continuous', 'discontinuous'),
  switchingFrequency: quantity('frequency', true),
  reflectedVoltage: quantity('voltsPeak'),
  clampOvershoot: quantity('voltsPeak'),
  duty: share(0.99, 'the part of the period that the switch conducts').optional(),
  bulk: bulk.optional(),
  outputs,
  variants: list(
    record({ name: text(SHORT_TEXT), outputs, switchingFrequency: quantity('frequency', true).optional() }),
    0,
    32,
    'variants',
  ).optional(),
});

export const workingVoltage = record({
  between,
  rms: quantity('voltsRms').optional(),
  peak: quantity('voltsPeak').optional(),
  frequency: quantity('frequency').optional(),
  basis: choice('measured', 'stated').optional(),
});

export const circuit = record({
  id,
  name: text(SHORT_TEXT).optional(),
  role: choice('mains', 'touchable', 'earth', 'isolated'),
});

export const former = record({
  height: quantity('length'),
  wall,
  flange: reading('length'),
  material: id.optional(),
  split: flag.optional(),
  chambers: list(record({ width: quantity('length', true) }), 1, 16, 'chambers'),
  dividers: list(quantity('length'), 0, 15, 'dividers').optional(),
});

export const core = record({
  bond: id.optional(),
  outerGap: reading('length').optional(),
  wrap: z
    .union([z.null(), sheet], { error: 'null, or an object with the fields material, plies' })
    .optional(),
});

export const part = record({ id, bond: id.optional(), touches: list(id, 0, 64, 'ids').optional() });

export const outside = record({
  between,
  what: text(LONG_TEXT).optional(),
  clearance: quantity('length').optional(),
  creepage: quantity('length').optional(),
  materialGroup: choice('I', 'II', 'IIIa', 'IIIb', 'unknown').optional(),
});

export const bridge = record({
  id,
  kind: choice('capacitor', 'optocoupler', 'resistor'),
  between,
  capacitance: quantity('capacitance').optional(),
  resistance: quantity('resistance').optional(),
  safetyClass: choice('Y1', 'Y2', 'Y4', 'X1', 'X2', 'none', 'unknown').optional(),
  rated: quantity('voltsRms').optional(),
  inSeries: count(1, 64).optional(),
  clearance: quantity('length').optional(),
  creepage: quantity('length').optional(),
  throughInsulation: quantity('length').optional(),
  approval: choice('none', 'basic', 'reinforced', 'unknown').optional(),
});

/** A data address fills at most the whole file. */
const MOST_FILE = 2_000_000;

export const evidence = record({
  id,
  kind: choice('photo', 'measurement', 'document'),
  says: text(LONG_TEXT).optional(),
  fields: list(text(SHORT_TEXT), 0, 64, 'paths of fields').optional(),
  file: text(MOST_FILE).optional(),
});
