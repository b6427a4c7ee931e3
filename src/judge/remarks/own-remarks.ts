// Which of the figures that a verdict rests on the user confirmed from a copy of the standard of their own: each once; and
// which of the cells that the file confirms are of no table here, so that they change nothing.

import { strayCells } from '#books/stray-cells.ts';
import type { OwnCell } from '#standards/tables/own-cell.ts';
import { type Because, type Cite, citesOf } from '#standards/because.ts';
import type { Remark } from '#judge/verdict/remark.ts';

export function ownRemarks(grounds: readonly Because[]): readonly Remark[] {
  const own = grounds.flatMap(citesOf).flatMap(remarkOf);
  return [...new Map(own.map((each) => [JSON.stringify(each), each])).values()];
}

const remarkOf = ({ standard, table, cell, own }: Cite): readonly Remark[] =>
  own === undefined
    ? []
    : [{ kind: 'confirmed-by-user', standard, table, cell, clause: own.clause, on: own.on }];

export const strayRemarks = (own: readonly OwnCell[]): readonly Remark[] =>
  strayCells(own).map(({ cell: { standard, table, cell }, missing }) => ({
    kind: 'confirmed-nowhere',
    standard,
    table,
    cell,
    missing,
  }));
