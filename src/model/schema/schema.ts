// The schema of a whole design file, format 1: every field, its shape and its limits; unknown fields are refused.
// It reads quantities into branded units but fills no default in and follows no reference (build-design, check-design).

import type * as z from 'zod';
import * as around from './schema-around.ts';
import { confirmedCell } from './schema-confirmed.ts';
import { converter } from './schema-converter.ts';
import { evidence } from './schema-evidence.ts';
import { layer } from './schema-layer.ts';
import { choice, flag, id, list, LONG_TEXT, record, SHORT_TEXT, text } from './schema-leaf.ts';
import { template } from './schema-template.ts';
import { winding } from './schema-winding.ts';

export const FORMAT = 'layerwright-design/1';

export const schema = record({
  format: choice(FORMAT),
  title: text(SHORT_TEXT),
  origin: choice('proposed', 'dissected', 'lesson'),
  made: text(SHORT_TEXT).optional(),
  notes: text(LONG_TEXT).optional(),
  rules: id,
  supply: around.supply,
  surroundings: around.surroundings.optional(),
  converter: converter.optional(),
  workingVoltages: list(around.workingVoltage, 0, 400, 'working voltages').optional(),
  circuits: list(around.circuit, 0, 32, 'circuits'),
  former: around.former,
  core: around.core.optional(),
  parts: list(around.part, 0, 64, 'parts').optional(),
  windings: list(winding, 0, 64, 'windings'),
  layers: list(layer, 0, 400, 'layers'),
  outside: list(around.outside, 0, 64, 'entries').optional(),
  bridges: list(around.bridge, 0, 64, 'bridges').optional(),
  evidence: list(evidence, 0, 400, 'pieces of evidence').optional(),
  confirmed: list(confirmedCell, 0, 2_000, 'confirmed cells').optional(),
  unopened: flag.optional(),
  templates: list(template, 0, 50, 'templates').optional(),
});

/** A design file as it stands in JSON. */
export type DesignFile = z.input<typeof schema>;

/** The same with its quantities read. */
export type FileRead = z.output<typeof schema>;
