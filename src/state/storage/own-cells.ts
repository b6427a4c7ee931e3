// Cells that the user confirmed from a copy of a standard, kept by this browser for other builds, and handed on as a file
// (format layerwright-confirmed/1). What was kept may have been damaged since: what does not fit is left out.

import * as z from 'zod';
import { confirmedCell } from '#model/schema/schema-confirmed.ts';

const listSchema = z.strictObject({
  format: z.literal('layerwright-confirmed/1'),
  confirmed: z.array(confirmedCell).max(2_000),
});

export type KeptCell = z.output<typeof confirmedCell>;

const KEY = 'layerwright-confirmed';

export function keptCells(): readonly KeptCell[] {
  try {
    const parsed = listSchema.safeParse(JSON.parse(localStorage.getItem(KEY) ?? 'null'));
    return parsed.success ? parsed.data.confirmed : [];
  } catch {
    return [];
  }
}

/** False where this browser keeps nothing. */
export function keepCells(confirmed: readonly KeptCell[]): boolean {
  try {
    localStorage.setItem(KEY, cellsText(confirmed));
    return true;
  } catch {
    return false;
  }
}

export const cellsText = (confirmed: readonly KeptCell[]): string =>
  `${JSON.stringify({ format: 'layerwright-confirmed/1', confirmed }, null, 2)}\n`;

export const isSameCell = (a: KeptCell, b: KeptCell): boolean =>
  a.standard === b.standard && a.table === b.table && a.cell === b.cell;

/** Each cell once, the newer reading of it. */
export const laidTogether = (older: readonly KeptCell[], newer: readonly KeptCell[]): readonly KeptCell[] => [
  ...older.filter((old) => !newer.some((one) => isSameCell(one, old))),
  ...newer,
];
