// What a market changes: the voltage of its mains, with which tables of the mains are entered, the overvoltage category
// where a file names none, and, where the book's national adoption says so, the altitude that counts.

import markets from '#tables/standards/national/markets.json' with { type: 'json' };

import { because, judged } from '#standards/because.ts';
import type { National } from '#books/questions/national.ts';
import type { OvervoltageCategory } from '#units/terms.ts';
import { exactCell } from '#standards/tables/look-up.ts';
import type { Reader } from '#standards/tables/reader.ts';
import type { Table } from '#standards/tables/table.ts';
import { metres, voltsRms } from '#units/quantity.ts';

export const marketIds: readonly string[] = markets.rows.map(({ at: [id] }) => id!);

export const marketNames: ReadonlyMap<string, string> = new Map(
  markets.rows.map(({ at: [id], name }) => [id!, name]),
);

export const marketsTable = ({ table }: Reader): Table => table(markets);

/** Null: the file names no market. `altitudes`: null where no national adoption of the book was seen. */
export function nationalOf(all: Table, altitudes: Table | null, market: string | null): National | null {
  if (market === null) return null;
  const at = (table: Table, column: 'mains' | 'entered' | 'category' | 'altitude') => {
    const cell = exactCell(table, market, column);
    if (cell?.value == null) return null;
    const values = { market: marketNames.get(market) ?? market, quantity: column, value: cell.value };
    return judged(cell.value, because('national', values, [cell.cite]));
  };
  const [mains, entered, category] = [at(all, 'mains'), at(all, 'entered'), at(all, 'category')];
  if (mains === null || entered === null || category === null) throw new Error(`no market ${market}`);
  const altitude = altitudes === null ? null : at(altitudes, 'altitude');
  return {
    market,
    name: marketNames.get(market) ?? market,
    mains: voltsRms(mains.value),
    entered: { ...entered, value: voltsRms(entered.value) },
    category: { ...category, value: category.value as OvervoltageCategory },
    altitude: altitude && { ...altitude, value: metres(altitude.value) },
  };
}
