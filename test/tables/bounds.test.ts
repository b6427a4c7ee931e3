// What: at every bound of every table that is entered with a number, exactly on it, just under and just over.
// Why: a slip between "at" and "above" moves a requirement by a whole row. Expected values by whole numbers here.

import { describe, expect, it } from 'vitest';

import { lookUp, type Found } from '#standards/tables/look-up.ts';
import { lineKey, readTable, type Cell, type Table } from '#standards/tables/table.ts';
import { tables } from './all-tables.ts';

const entered = tables
  .filter(({ path, file }) => path.startsWith('standards/') && file.axes[0]?.between !== 'exact')
  .filter(({ file }) => file.columnAxis === undefined)
  .map(({ path, file }) => ({ path, table: readTable(file) }));

interface Line {
  readonly column: string;
  readonly others: readonly (number | string)[];
  readonly cells: readonly Cell[];
}

function linesOf(table: Table): readonly Line[] {
  const others = [...new Set(table.file.rows.map(({ at }) => JSON.stringify(at.slice(1))))].map(
    (text) => JSON.parse(text) as (number | string)[],
  );
  return others.flatMap((places) =>
    table.file.columns.map((column) => {
      const cells = table.lines.get(lineKey(column, places)) ?? [];
      return { column, others: places, cells: cells.filter(({ value }) => value !== null) };
    }),
  );
}

const valueAt = (table: Table, at: number, { column, others }: Line): number | null => {
  const found = lookUp(table, at, column, others);
  return found.kind === 'found' ? found.value : null;
};

/** One unit above the lower row, in exact thousandths of the rounding step. */
function expectedBetween(table: Table, low: Cell, high: Cell, at: number): number {
  const [x0, x1] = [Number(low.at), Number(high.at)];
  const [y0, y1] = [Number(low.value), Number(high.value)];
  if (table.file.axes[0]?.between === 'next-row') return y1;
  if (table.file.unit !== 'mm') return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
  const scaled = BigInt(y0) * BigInt(x1 - x0) + BigInt(y1 - y0) * BigInt(at - x0);
  const nanometres = (scaled * 2n + BigInt(x1 - x0)) / (2n * BigInt(x1 - x0));
  const step = table.file.rounding?.steps.find(
    ({ upTo }) => upTo === null || nanometres <= BigInt(upTo * 1e6),
  );
  const to = BigInt(Math.round((step?.to ?? 0) * 1e6));
  const up = Number(((nanometres + to - 1n) / to) * to);
  return Math.min(up, y1);
}

describe('bounds', () => {
  it('should be asked of the tables of every distance and voltage', () => {
    expect(entered.length).toBeGreaterThanOrEqual(28);
  });

  it.each(entered)('should give each row its own value: $path', ({ table }) => {
    for (const line of linesOf(table))
      for (const cell of line.cells) expect(valueAt(table, Number(cell.at), line)).toBe(cell.value);
  });

  it.each(entered)('should be right one unit over and under each row: $path', ({ table }) => {
    for (const line of linesOf(table)) {
      line.cells.slice(1).forEach((high, i) => {
        const low = line.cells[i] as Cell;
        // Half-volt rows are only crept up to from whole volts.
        for (const at of [Math.floor(Number(low.at)) + 1, Math.ceil(Number(high.at)) - 1]) {
          if (!Number.isInteger(low.at) || !Number.isInteger(high.at) || at === high.at) continue;
          const expected = expectedBetween(table, low, high, at);
          if (table.file.unit === 'mm') expect(valueAt(table, at, line)).toBe(expected);
          else expect(valueAt(table, at, line)).toBeCloseTo(expected, 9);
        }
      });
    }
  });

  it.each(entered)('should stay between the rows a hair over and under them: $path', ({ table }) => {
    for (const line of linesOf(table)) {
      line.cells.slice(1).forEach((high, i) => {
        const low = line.cells[i] as Cell;
        for (const at of [Number(low.at) * (1 + 1e-9), Number(high.at) * (1 - 1e-9)]) {
          const value = valueAt(table, at, line) ?? -1;
          expect(value).toBeGreaterThanOrEqual(Number(low.value));
          expect(value).toBeLessThanOrEqual(Number(high.value));
          if (table.file.axes[0]?.between === 'next-row') expect(value).toBe(high.value);
        }
      });
    }
  });

  it.each(entered)(
    'should take the first row below it, and refuse or multiply above the last: $path',
    ({ table }) => {
      for (const line of linesOf(table)) {
        const [first, last] = [line.cells[0] as Cell, line.cells.at(-1) as Cell];
        expect(valueAt(table, 0, line)).toBe(first.value);
        expect(valueAt(table, Number(first.at) * (1 - 1e-9), line)).toBe(first.value);
        const over = Number(last.at) * (1 + 1e-9);
        const found = lookUp(table, over, line.column, line.others);
        if (table.file.outside.above === 'refuse') expect(found.kind).toBe('out-of-range');
        else expect((found as Found).value).toBe(over * (table.factors.get(line.column)?.value ?? 0));
      }
    },
  );
});
