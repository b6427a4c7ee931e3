// Which of the cells that a user confirmed name nothing here: a standard that no rule book reads, a table that it has not,
// a cell that is not in the table. They change nothing, so whoever reads the file must be told.

import type { OwnCell } from '#standards/tables/own-cell.ts';
import { cellNames, type TableFile } from '#standards/tables/table.ts';
import type { RulesFile } from '#standards/tables/rules-in-words.ts';
import { ruleBook, ruleBookIds } from './shelf.ts';

export interface StrayCell {
  readonly cell: OwnCell;
  /** What of it is not here. */
  readonly missing: 'standard' | 'table' | 'cell';
}

export const strayCells = (own: readonly OwnCell[]): readonly StrayCell[] =>
  own.flatMap((cell) => {
    const missing = missingOf(cell);
    return missing === null ? [] : [{ cell, missing }];
  });

function missingOf({ standard, table, cell }: OwnCell): StrayCell['missing'] | null {
  const files = readFiles().filter((file) => file.standard === standard);
  if (files.length === 0) return 'standard';
  const named = files.filter(({ id }) => id === table);
  if (named.length === 0) return 'table';
  return named.some((file) => namesIn(file).has(cell)) ? null : 'cell';
}

type AnyFile = TableFile | RulesFile;

/** Every file that a book on the shelf reads. */
const readFiles = (): readonly AnyFile[] =>
  ruleBookIds.flatMap((id): readonly AnyFile[] => {
    const book = ruleBook(id);
    return book === null ? [] : [...book.tables.map(({ file }) => file), book.rules.file];
  });

function namesIn(file: AnyFile): ReadonlySet<string> {
  return new Set(
    'rules' in file
      ? file.rules.flatMap(({ id, values }) => Object.keys(values).map((key) => `${id}, ${key}`))
      : cellNames(file),
  );
}
