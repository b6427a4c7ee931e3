// Schemas of windings: their wire, their leads, the links between the parts of a split winding.

import * as z from 'zod';
import {
  choice,
  count,
  flag,
  id,
  list,
  quantity,
  reading,
  record,
  UNKNOWN,
  wireSize,
} from './schema-leaf.ts';
import { sideOrUnknown, sleeve, withstand } from './schema-solid.ts';

export const wire = record({
  kind: choice('bare', 'enamelled', 'fully-insulated', 'layer-insulated', 'litz', 'unknown').optional(),
  conductor: wireSize().optional(),
  grade: z.union([count(1, 9), UNKNOWN], { error: 'a whole number from 1 to 9, or "unknown"' }).optional(),
  insulationLayers: z
    .union([z.literal(1), z.literal(2), z.literal(3), UNKNOWN], { error: '1, 2, 3 or "unknown"' })
    .optional(),
  approval: choice('wire-annex', 'none', 'unknown').optional(),
  overallDiameter: quantity('length', true).optional(),
  withstand: withstand.optional(),
  litzStrands: count(1, 20_000).optional(),
  served: flag.optional(),
});

const leadFields = {
  at: sideOrUnknown.optional(),
  exit: sideOrUnknown.optional(),
  way: choice('slot', 'riser', 'top', 'unknown').optional(),
  sleeve: sleeve.optional(),
  bareFrom: reading('length').optional(),
  crossTape: count(0, 500).optional(),
  apart: quantity('length').optional(),
};

const LEAD = 'an object with the fields of a lead, or "unknown"';
const lead = z.union([UNKNOWN, record(leadFields)], { error: LEAD });

/** A screen has one lead, which may be left unjudged as a whole. */
export const screenLead = z.union([UNKNOWN, z.literal('not-judged'), record(leadFields)], {
  error: `${LEAD} or "not-judged"`,
});

const leads = z.union(
  [UNKNOWN, z.literal('not-judged'), record({ start: lead.optional(), finish: lead.optional() })],
  {
    error: 'an object with the fields start, finish, or "unknown" or "not-judged"',
  },
);

const link = record({
  side: sideOrUnknown.optional(),
  way: choice('riser', 'unknown').optional(),
  sleeve: sleeve.optional(),
});

const links = z.union([UNKNOWN, list(link, 0, 400, 'links')], { error: 'a list of links, or "unknown"' });

export const winding = record({
  id,
  circuit: id,
  wire,
  anchored: flag.optional(),
  leads: leads.optional(),
  links: links.optional(),
});
