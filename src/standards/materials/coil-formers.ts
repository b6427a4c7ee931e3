// Typical coil formers to start a build from. Every dimension is a starting value that the drawing of the real part
// replaces; those from memory are most of them and say so.

import formersFile from '#tables/shapes/formers.json' with { type: 'json' };

import { nm, type Nm } from '#units/quantity.ts';

import { exactCell } from '#standards/tables/look-up.ts';
import type { Figure } from './materials.ts';
import { readTable } from '#standards/tables/table.ts';

export interface CoilFormer {
  /** Core shape that it belongs to, e.g. `EFD15`. */
  readonly id: string;
  /** Between the flanges. */
  readonly width: Figure<Nm>;
  /** From the tube to the rim of the flanges. */
  readonly height: Figure<Nm>;
  readonly wall: Figure<Nm>;
  readonly flange: Figure<Nm>;
  /** Mean length of a turn. */
  readonly meanTurn: Figure<Nm>;
}

const table = readTable(formersFile);

export const coilFormers: readonly CoilFormer[] = table.file.rows.map((row) => {
  const id = String(row.at[0]);
  return {
    id,
    width: length(id, 'width'),
    height: length(id, 'height'),
    wall: length(id, 'wall'),
    flange: length(id, 'flange'),
    meanTurn: length(id, 'meanTurn'),
  };
});

export const coilFormerById = (id: string): CoilFormer | null =>
  coilFormers.find((former) => former.id === id) ?? null;

function length(id: string, column: string): Figure<Nm> {
  const cell = exactCell(table, id, column);
  if (cell?.value == null) throw new Error(`${table.file.id} has no ${column} for ${id}`);
  return { value: nm(cell.value), cite: cell.cite };
}
