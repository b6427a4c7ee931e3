// What: axes rise strictly, rows stand on them in order, each place once and none left out.
// Why: a look-up walks along a line of cells and trusts its order.

import { describe, expect, it } from 'vitest';

import type { TableFile } from '#standards/tables/table.ts';
import { tables } from './all-tables.ts';

const rises = (steps: readonly (number | string)[]): boolean =>
  steps.every((step, i) => i === 0 || typeof step === 'string' || Number(steps[i - 1]) < step);

/** Tables where not every combination of places has a row. */
const SPARSE = ['needed-grades', 'field-reduction', 'films'];

const places = (file: TableFile): number => file.axes.reduce((count, { at }) => count * at.length, 1);

describe('axes', () => {
  it.each(tables)('should rise strictly and hold no place twice: $path', ({ file }) => {
    for (const axis of [...file.axes, ...(file.columnAxis ? [file.columnAxis] : [])]) {
      expect(rises(axis.at)).toBe(true);
      expect(new Set(axis.at).size).toBe(axis.at.length);
    }
  });

  it.each(tables)('should hold every row, each place once: $path', ({ file }) => {
    for (const row of file.rows) {
      expect(row.at.length).toBe(file.axes.length);
      row.at.forEach((at, i) => expect(file.axes[i]?.at).toContain(at));
    }
    expect(new Set(file.rows.map(({ at }) => at.join('|'))).size).toBe(file.rows.length);
    if (!SPARSE.includes(file.id)) expect(file.rows.length).toBe(places(file));
  });

  it.each(tables)('should order the rows of a line as they rise: $path', ({ file }) => {
    const lines = new Map<string, (number | string)[]>();
    for (const { at } of file.rows) {
      const key = at.slice(1).join('|');
      lines.set(key, [...(lines.get(key) ?? []), at[0] ?? '']);
    }
    for (const line of lines.values()) expect(rises(line)).toBe(true);
  });

  it.each(tables)('should name every column in every row and no other figure: $path', ({ file }) => {
    for (const row of file.rows) {
      const figures = Object.keys(row).filter((key) => !['at', 'from', 'name', 'base'].includes(key));
      expect(figures.sort()).toEqual([...file.columns].sort());
    }
    if (file.columnAxis) expect(file.columnAxis.at.length).toBe(file.columns.length);
  });
});
