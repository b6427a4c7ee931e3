// A clearance at a site above the height for which the tables hold: times the factor of the next row up, rounded once more
// by the table's rule. Where a book has no rule for it, the parent's holds and `rule` says that it is from memory.

import type { Answered } from '#books/questions/required.ts';
import { judged, type Because, type Judged } from '#standards/because.ts';
import { lookUp } from '#standards/tables/look-up.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';
import { roundUp } from '#standards/tables/rounding.ts';
import type { Rounding, Table } from '#standards/tables/table.ts';
import { nm, type Metres, type Nm } from '#units/quantity.ts';

export interface Raised {
  readonly value: Nm;
  readonly factor: number;
  readonly because: readonly Because[];
}

export function raisedByAltitude(
  table: Table,
  rule: Rule | null,
  altitude: Metres,
  clearance: Nm,
  rounding: Rounding,
): Answered<Raised> {
  const found = lookUp(table, altitude, 'factor');
  if (found.kind === 'out-of-range') return found;
  const factor = found.value;
  const value = factor > 1 ? roundUp(nm(Math.round(clearance * factor)), rounding) : clearance;
  const own = rule === null || factor === 1 ? [] : [rule.because()];
  const raised: Judged<Raised> = judged({ value, factor, because: [found.because, ...own] }, found.because);
  return raised;
}
