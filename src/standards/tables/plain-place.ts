// Where a table is looked at unless somebody says else: pollution degree 2, the column that asks most, else the first.

import type { TableFile } from './table.ts';

export const plainColumn = ({ columns }: Pick<TableFile, 'columns'>): string =>
  columns.find((name) => name === 'IIIb' || name === 'reinforced') ?? columns[0] ?? '';

/** Places on the axes after the first: those that were chosen, as they are written, where the table has them. */
export const plainPlaces = (
  { axes }: Pick<TableFile, 'axes'>,
  chosen: readonly (number | string | undefined)[],
): readonly (number | string)[] =>
  axes.slice(1).map(({ at }, i) => {
    const own = at.find((each) => String(each) === String(chosen[i]));
    return own ?? at.find((each) => each === 2) ?? at[0] ?? '';
  });
