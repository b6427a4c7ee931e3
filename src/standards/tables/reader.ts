// How a rule book reads its tables: as they are filed, or with the cells that a user confirmed or corrected laid over.

import type { OwnCell } from './own-cell.ts';
import { readRules, type Rules } from './rules-in-words.ts';
import { readTable, type Table } from './table.ts';

export interface Reader {
  readonly table: (json: unknown) => Table;
  readonly rules: (json: unknown) => Rules;
}

export const readerWith = (own: readonly OwnCell[]): Reader => ({
  table: (json) => readTable(json, own),
  rules: (json) => readRules(json, own),
});

export const AS_FILED: Reader = readerWith([]);
