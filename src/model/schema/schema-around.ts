// Schemas of what surrounds the winding window: supply, surroundings, voltages, former, core, parts, outside, bridges.

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
  share,
  SHORT_TEXT,
  text,
} from './schema-leaf.ts';
import { sheet, wall } from './schema-solid.ts';

export const supply = record({
  kind: choice('ac', 'dc'),
  voltage: quantity('voltsRms'),
  lowest: reading('voltsRms').optional(),
  tolerance: share(1, '0.1 being 10 %').optional(),
  frequency: quantity('frequency').optional(),
  overvoltageCategory: count(1, 4).optional(),
  transient: quantity('voltsPeak', true).optional(),
  market: id.optional(),
});

export const surroundings = record({
  pollutionDegree: count(1, 3).optional(),
  altitude: quantity('altitude').optional(),
  hottestInsulation: reading('temperature').optional(),
  temperature: record({
    method: choice('thermocouple', 'resistance', 'infrared', 'unknown').optional(),
    condition: choice('normal', 'abnormal').optional(),
  }).optional(),
  impregnation: choice('none', 'varnish', 'potted').optional(),
  proof: choice('tested', 'none').optional(),
});

const givenFields = {
  rms: quantity('voltsRms').optional(),
  peak: quantity('voltsPeak').optional(),
  frequency: quantity('frequency').optional(),
  basis: choice('measured', 'stated').optional(),
};

export const workingVoltage = record({ between, ...givenFields });

/** The voltage at one place. */
const working = record(givenFields);

export const circuit = record({
  id,
  name: text(SHORT_TEXT).optional(),
  role: choice('mains', 'touchable', 'earth', 'isolated'),
  means: choice('patient', 'operator', 'unknown').optional(),
});

export const former = record({
  height: quantity('length'),
  wall,
  flange: reading('length'),
  material: id.optional(),
  split: flag.optional(),
  chambers: list(record({ width: quantity('length', true) }), 1, 16, 'chambers'),
  dividers: list(quantity('length'), 0, 15, 'dividers').optional(),
  tube: record({
    shape: choice('round', 'rectangular'),
    width: quantity('length', true).optional(),
    depth: quantity('length', true).optional(),
  }).optional(),
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
  working: working.optional(),
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
  working: working.optional(),
});
