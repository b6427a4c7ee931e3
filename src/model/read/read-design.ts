// Reads a design file: JSON in, a design with every reference checked out, or all that is wrong with it.
// In steps: hostile content, format ladder, schema, defaults, what must hold together. A step's faults end the reading.

import type { BadInput } from '#model/faults/bad-input.ts';
import { buildDesign } from './build-design.ts';
import { checkDesign } from '#model/check/check-design.ts';
import type { KnownIds } from '#model/check/check-ids.ts';
import type { Design } from '#model/design.ts';
import { hostileFaults } from '#model/faults/hostile-faults.ts';
import { raised } from './ladder.ts';
import { schema } from '#model/schema/schema.ts';
import { schemaFaults } from '#model/faults/schema-faults.ts';

export type ReadDesign =
  | { readonly kind: 'design'; readonly design: Design }
  | { readonly kind: 'bad'; readonly faults: readonly BadInput[] };

const MOST_FAULTS = 20;

export function readDesign(json: unknown, known: KnownIds): ReadDesign {
  const hostile = hostileFaults(json);
  if (hostile.length > 0) return bad(hostile);
  const ladder = raised(json);
  if (ladder.kind === 'bad') return bad([ladder.fault]);
  const parsed = schema.safeParse(ladder.doc);
  if (!parsed.success) return bad(schemaFaults(parsed.error.issues, ladder.doc));
  const design = buildDesign(parsed.data);
  const faults = checkDesign(design, known);
  return faults.length > 0 ? bad(faults) : { kind: 'design', design };
}

const bad = (faults: readonly BadInput[]): ReadDesign => ({
  kind: 'bad',
  faults: faults.slice(0, MOST_FAULTS),
});
