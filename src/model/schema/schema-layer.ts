// Schemas of the layers, from the former's tube outward: windings, tapes, screens.

import * as z from 'zod';
import { screenLead } from './schema-winding.ts';
import { count, countOrUnknown, flag, id, quantity, record } from './schema-leaf.ts';
import { inset, margins, sheet, sheetFields } from './schema-solid.ts';

const chamber = count(0, 15).optional();

/** Of one layer. */
export const MOST_TURNS = 20_000;

const windingLayer = record({
  kind: z.literal('winding'),
  chamber,
  winding: id,
  turns: countOrUnknown(1, MOST_TURNS),
  strands: count(1, 64).optional(),
  spread: flag.optional(),
  margins: margins.optional(),
  extent: record({ from: quantity('length'), to: quantity('length') }).optional(),
  beside: flag.optional(),
});

const tapeLayer = record({
  kind: z.literal('tape'),
  chamber,
  ...sheetFields,
  bonded: flag.optional(),
  cemented: flag.optional(),
  inset: inset.optional(),
  margins: margins.optional(),
  turnUp: quantity('length').optional(),
});

const screenLayer = record({
  kind: z.literal('screen'),
  chamber,
  circuit: id.optional(),
  id: id.optional(),
  thickness: quantity('length'),
  overlap: sheet.optional(),
  inset: inset.optional(),
  margins: margins.optional(),
  lead: screenLead.optional(),
});

export const layer = z.discriminatedUnion('kind', [windingLayer, tapeLayer, screenLayer], {
  error: 'a layer of the kind "winding", "tape" or "screen"',
});
