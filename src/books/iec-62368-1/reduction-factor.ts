// The factor by which high frequency lowers the breakdown field of a material: its row of the table, in the column of the
// next higher frequency. A material without a row takes the mean of neighbouring rows that the rule names.

import type { Hertz } from '#units/quantity.ts';

import { because, judged, type Judged } from '#standards/because.ts';
import { lineKey, type Cell, type Table } from '#standards/tables/table.ts';

/** The first and the last of the rows whose mean stands for a material that has none. */
export interface StandIn {
  readonly first: string;
  readonly last: string;
}

/** `material` is an id of ours, which has a row where a row bears its name; null: a material that nobody named. */
export function reductionFactor(
  table: Table,
  frequency: Hertz,
  material: string | null,
  standIn: StandIn,
): Judged<number> {
  const column = columnAbove(table, frequency);
  const values = { frequency, column: table.columnSteps[column] ?? 0 };
  const own = table.file.rows.find(({ at }) => isNamed(at[0], material));
  if (own !== undefined) {
    const { value, cite } = cellAt(table, own.at, column);
    const where = { material: own.at[0] ?? '', thickness: own.at[1] ?? '' };
    return judged(value, because('field-reduction', { ...where, ...values, value }, [cite]));
  }
  const names = table.file.rows.map(({ at }) => at[0]);
  const rows = table.file.rows.slice(names.indexOf(standIn.first), names.indexOf(standIn.last) + 1);
  if (rows.length === 0) throw new Error(`${table.file.id} has no rows from ${standIn.first} on`);
  const cells = rows.map(({ at }) => cellAt(table, at, column));
  const sum = cells.reduce((total, { value }) => total + value, 0);
  const value = Number((sum / cells.length).toPrecision(12));
  const why = { ...standIn, rows: cells.length, ...values, value };
  return judged(
    value,
    because(
      'field-reduction-mean',
      why,
      cells.map(({ cite }) => cite),
    ),
  );
}

const isNamed = (row: number | string | undefined, material: string | null): boolean =>
  material !== null && String(row).toLowerCase() === material.toLowerCase();

function columnAbove(table: Table, frequency: Hertz): number {
  const column = table.columnSteps.findIndex((step) => step >= frequency);
  // Designs end at the last column, see the limits of the file; a higher frequency is a bug of ours.
  if (column < 0) throw new RangeError(`${table.file.id} ends below ${frequency} Hz`);
  return column;
}

function cellAt(
  table: Table,
  [material, thickness]: readonly (number | string)[],
  column: number,
): { readonly value: number; readonly cite: Cell['cite'] } {
  const cell = table.lines
    .get(lineKey(table.file.columns[column] ?? '', [thickness ?? '']))
    ?.find(({ at }) => at === material);
  if (cell?.value == null) throw new Error(`${table.file.id} has a gap at ${material}`);
  return { value: cell.value, cite: cell.cite };
}
