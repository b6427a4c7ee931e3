// Under which width a gap counts as bridged: a width by the pollution degree, or a third of the clearance of the grade
// that is needed, where that clearance is small and a third of it is less. Where nothing is asked the first.

import type { Answered, Both, Question } from '#books/questions/required.ts';
import { because, judged, type Judged } from '#standards/because.ts';
import type { PollutionDegree } from '#units/terms.ts';
import { exactCell } from '#standards/tables/look-up.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';
import type { Table } from '#standards/tables/table.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';

/** `third`: the rule with its `divisor`, and `below` which clearance it holds. */
export function bridgedGap(
  widths: Table,
  third: Rule,
  { needed, pollutionDegree }: Pick<Question, 'needed' | 'pollutionDegree'>,
  clearance: Both<Answered<Nm>>,
): Judged<Nm> {
  const width = bridgingWidth(widths, pollutionDegree);
  if (needed === null || needed === 'none' || needed === 'functional') return width;
  const wanted = needed === 'reinforced' || needed === 'double' ? clearance.reinforced : clearance.basic;
  if (isOutOfRange(wanted) || wanted.value >= third.figure('below')) return width;
  const divisor = third.figure('divisor');
  const share = Math.floor(wanted.value / divisor);
  if (share >= width.value) return width;
  const values = { value: inMm(nm(share)), clearance: inMm(wanted.value), divisor };
  return judged(nm(share), because('bridging-share', values, [], [width.because, third.because()]));
}

export function bridgingWidth(table: Table, pd: PollutionDegree): Judged<Nm> {
  const cell = exactCell(table, pd, 'X');
  if (cell?.value == null) throw new Error(`${table.file.id} has no row for PD ${pd}`);
  const value = nm(cell.value);
  return judged(value, because('bridging-width', { pd, value: inMm(value) }, [cell.cite]));
}
