// What: a requirement never falls along voltage, altitude, frequency, pollution degree, worse material or higher grade,
// unless the file lists the cell under `falls` with its clause. Why: a slip of one digit shows as a dent.

import { describe, expect, it } from 'vitest';

import type { Row, TableFile } from '#standards/tables/table.ts';
import { tables } from './all-tables.ts';

const REQUIREMENTS = tables.filter(({ path }) =>
  /standards\/[^/]+\/(clearance|creepage|altitude|mains|temporary|test-|bridging|insulation-t|winding-t|additional)/.test(
    path,
  ),
);

/** Columns from the least to the most asked. */
const ORDERS: readonly (readonly string[])[] = [
  ['basic', 'reinforced'],
  ['I', 'II', 'IIIa', 'IIIb'],
  ['category 1', 'category 2', 'category 3', 'category 4'],
  ['100 kHz', '200 kHz', '400 kHz'],
];

type Dent = readonly [Row, Row, string];

const number = (row: Row, column: string): number | null =>
  typeof row[column] === 'number' ? row[column] : null;

/** Pairs of rows that differ on one axis only, by one step up. */
function neighbours(file: TableFile): readonly (readonly [Row, Row])[] {
  return file.rows.flatMap((row) =>
    file.axes.flatMap((axis, i) => {
      const next = axis.at[axis.at.indexOf(row.at[i] ?? '') + 1];
      const place = row.at.map((at, j) => (i === j ? next : at)).join('|');
      const other = file.rows.find(({ at }) => at.join('|') === place);
      return next === undefined || other === undefined ? [] : [[row, other] as const];
    }),
  );
}

function dents(file: TableFile): readonly Dent[] {
  return neighbours(file).flatMap(([row, next]) =>
    file.columns
      .filter((column) => {
        const [from, to] = [number(row, column), number(next, column)];
        return from !== null && to !== null && to < from;
      })
      .map((column): Dent => [row, next, column]),
  );
}

describe('requirements', () => {
  it('should be found among the tables', () => {
    expect(REQUIREMENTS.length).toBeGreaterThanOrEqual(35);
  });

  it.each(REQUIREMENTS)('should never fall from a row to the next on any axis: $path', ({ file }) => {
    const listed = (file as { falls?: { cell: string }[] }).falls?.map(({ cell }) => cell) ?? [];
    const found = dents(file)
      .map(([, next, column]) => `rows[${file.rows.indexOf(next)}].${column}`)
      .filter((cell) => !listed.includes(cell));
    expect(found).toEqual([]);
  });

  it.each(REQUIREMENTS)('should never fall from a column to the next: $path', ({ file }) => {
    for (const order of ORDERS.filter(([first]) => file.columns.includes(first ?? ''))) {
      for (const row of file.rows) {
        const printed = order.map((column) => number(row, column)).filter((value) => value !== null);
        expect([...printed].sort((a, b) => a - b)).toEqual(printed);
      }
    }
  });

  it('should be caught where they fall', () => {
    const file = REQUIREMENTS[0]?.file as TableFile;
    const rows = file.rows.map((row, i) => (i === 1 ? { ...row, [file.columns[0] ?? '']: 0 } : row));
    expect(dents({ ...file, rows }).length).toBeGreaterThan(0);
  });
});
