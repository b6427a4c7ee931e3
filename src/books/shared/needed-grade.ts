// The grade needed between two circuits, by their roles; null: nothing is asked. The order of the roles is the same thing.

import { because, judged, type Judged } from '#standards/because.ts';
import type { Grade, Role } from '#units/terms.ts';
import { exactCell } from '#standards/tables/look-up.ts';
import type { Table } from '#standards/tables/table.ts';

export function neededGrade(table: Table, a: Role, b: Role): Judged<Grade | null> {
  const cell = exactCell(table, a, 'grade', [b]) ?? exactCell(table, b, 'grade', [a]);
  const grade = (cell?.word ?? null) as Grade | null;
  return judged(
    grade,
    because('needed-grade', { a, b, value: grade }, cell === undefined ? [] : [cell.cite]),
  );
}
