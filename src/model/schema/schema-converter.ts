// Schema of the converter, from which working voltages are computed: how it runs, what it is fed from, its outputs and
// the further versions of it that one transformer serves. All may be left out: a part that is not stated in full is none.

import * as z from 'zod';
import {
  choice,
  count,
  id,
  list,
  quantity,
  record,
  share,
  SHORT_TEXT,
  text,
  UNKNOWN,
} from './schema-leaf.ts';
import { MOST_TURNS } from './schema-layer.ts';

const outputs = list(record({ circuit: id, voltage: quantity('voltsDc').optional() }), 0, 32, 'outputs');

/** The capacitor behind the mains rectifier, from which the valley of the bulk voltage follows. */
const bulk = record({
  lowestMains: quantity('voltsRms', true).optional(),
  capacitance: quantity('bulkCapacitance', true).optional(),
  power: quantity('power').optional(),
  efficiency: share(1, '0.8 being 80 %').optional(),
  chargingTime: quantity('duration').optional(),
});

const rail = z.union(
  [
    UNKNOWN,
    z.discriminatedUnion(
      'kind',
      [
        record({ kind: z.literal('mains') }),
        record({ kind: z.literal('boosted'), voltage: quantity('voltsDc', true).optional() }),
      ],
      { error: 'a rail of the kind "mains" or "boosted"' },
    ),
  ],
  { error: '{ "kind": "mains" }, { "kind": "boosted", "voltage" }, or "unknown"' },
);

const variant = record({
  name: text(SHORT_TEXT),
  outputs,
  switchingFrequency: quantity('frequency', true).optional(),
  reflectedVoltage: quantity('voltsPeak').optional(),
  clampOvershoot: quantity('voltsPeak').optional(),
  turns: z
    .record(z.string(), count(1, MOST_TURNS), { error: 'an object with the turns of each winding by its id' })
    .optional(),
});

export const converter = record({
  mode: choice('continuous', 'discontinuous', 'unknown').optional(),
  switchingFrequency: quantity('frequency', true).optional(),
  reflectedVoltage: quantity('voltsPeak').optional(),
  clampOvershoot: quantity('voltsPeak').optional(),
  rail: rail.optional(),
  duty: share(0.99, 'the part of the period that the switch conducts').optional(),
  bulk: bulk.optional(),
  outputs,
  variants: list(variant, 0, 32, 'variants').optional(),
});
