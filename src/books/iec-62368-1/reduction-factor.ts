// The factor by which high frequency lowers the breakdown field of a material: a straight line between the frequency
// columns of its row. A material without a row takes the lowest of the thin films.

import { inMm, nm, type Hertz } from '#units/quantity.ts';

import { because, judged, type Judged } from '#standards/because.ts';
import { lineKey, type Cell, type Table } from '#standards/table.ts';

/** `filmThickness` in nanometres picks the rows that stand in for a material without one of its own. */
export function reductionFactor(
  table: Table,
  frequency: Hertz,
  material: string | null,
  filmThickness: number,
): Judged<number> {
  const rows = table.file.rows
    .filter((row) => (material === null ? row.at[1] === inMm(nm(filmThickness)) : row.at[0] === material))
    .map((row) => row.at);
  const found = rows.map((at) => along(table, at, frequency));
  const lowest = found.reduce<Judged<number> | null>(
    (low, next) => (low === null || next.value < low.value ? next : low),
    null,
  );
  if (lowest === null) throw new Error(`${table.file.id} has no row for ${material ?? 'thin films'}`);
  return lowest;
}

function along(
  table: Table,
  [material, thickness]: readonly (number | string)[],
  frequency: Hertz,
): Judged<number> {
  const i = table.columnSteps.findIndex((step) => step >= frequency);
  // Designs end at the last column, see the limits of the file; a higher frequency is a bug of ours.
  if (i < 0) throw new RangeError(`${table.file.id} ends below ${frequency} Hz`);
  const cell = (c: number): Cell | undefined =>
    table.lines
      .get(lineKey(table.file.columns[c] ?? '', [thickness ?? '']))
      ?.find(({ at }) => at === material);
  const [low, high] = [cell(Math.max(i - 1, 0)), cell(i)];
  const [from, to] = [table.columnSteps[Math.max(i - 1, 0)], table.columnSteps[i]];
  if (low?.value == null || high?.value == null || from === undefined || to === undefined)
    throw new Error(`${table.file.id} has a gap at ${material}`);
  const share = to === from ? 0 : (frequency - from) / (to - from);
  const value = low.value + (high.value - low.value) * share;
  const values = { material: material ?? '', thickness: thickness ?? '', frequency, value };
  return judged(value, because('field-reduction', values, [low.cite, high.cite]));
}
