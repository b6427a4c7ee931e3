// A derivation as the rows of a worked sheet, in the order in which a hand would work it: what a figure rests on first,
// the figure itself last. The page, the command line and the report print the same rows.

import type { Because } from '#standards/because.ts';
import { NEXT_ROW, type SheetRow } from './sheet-row.ts';
import { stepRows } from './step-rows.ts';

export type { SheetRow } from './sheet-row.ts';

/** Two parts of a derivation that rest on the same figure name it once. */
export function workedSheet(why: Because): readonly SheetRow[] {
  const seen = new Set<string>();
  return rowsOf(why, true).filter((row) => {
    const key = JSON.stringify(row);
    return seen.has(key) ? false : Boolean(seen.add(key));
  });
}

function rowsOf(why: Because, last: boolean): readonly SheetRow[] {
  const rows = [...why.from.flatMap((each) => rowsOf(each, false)), ...stepRows(why, last)];
  if (!last) return rows;
  const end = rows.findLastIndex(({ value, label }) => value !== '' && label !== NEXT_ROW);
  return rows.map((row, k) => (k === end ? { ...row, result: true } : row));
}
