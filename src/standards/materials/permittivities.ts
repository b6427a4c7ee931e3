// Relative permittivity of what no list of materials holds: enamel, covers of wires, compound, solids of unknown material.

import permittivitiesFile from '#tables/materials/permittivities.json' with { type: 'json' };

import { exactCell } from '#standards/tables/look-up.ts';
import type { Figure } from './materials.ts';
import { readTable } from '#standards/tables/table.ts';

const table = readTable(permittivitiesFile);

export type PlainSolid = 'enamel' | 'cover' | 'compound' | 'tape' | 'moulding' | 'margin';

export function permittivityOf(solid: PlainSolid): Figure<number> {
  const cell = exactCell(table, solid, 'permittivity');
  if (cell?.value == null) throw new Error(`no permittivity of ${solid}`);
  return { value: cell.value, cite: cell.cite };
}
