// Distances above 30 kHz by the tables of IEC 60664-4, for the books that refer to it. Clearance: a line between rows,
// nothing above 2 kV. Creepage: the row at or above the peak, a line between filled columns of frequency, over a gap too;
// right of the last filled one no figure, below the first row nothing.

import type { Answered } from '#books/questions/required.ts';
import { because, judged, type Judged } from '#standards/because.ts';
import { byPollution } from '#standards/tables/factors.ts';
import type { Column, PollutionDegree } from '#units/terms.ts';
import { lookUp } from '#standards/tables/look-up.ts';
import { isOutOfRange, outOfRange } from '#standards/tables/out-of-range.ts';
import { roundUp, roundingOf } from '#standards/tables/rounding.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';
import { lineKey, type Cell, type Table } from '#standards/tables/table.ts';
import { inMm, nm, voltsPeak, type Hertz, type Nm, type VoltsPeak } from '#units/quantity.ts';
import { timesRule } from './times-rule.ts';

/** `rule`: `distance`, the factor on the basic distance, and `voltage`, that on the voltage; the larger holds. */
export function partFourClearance(table: Table, rule: Rule, peak: VoltsPeak, column: Column): Answered<Nm> {
  const basic = clearanceAt(table, peak);
  if (column === 'basic' || isOutOfRange(basic)) return basic;
  const twice = timesRule(rule, 'distance', basic);
  const factor = rule.figure('voltage');
  const raised = clearanceAt(table, voltsPeak(peak * factor));
  if (isOutOfRange(raised)) return raised;
  const larger = raised.value > twice.value ? raised : twice;
  const from = [twice.because, raised.because];
  const values = { peak, factor, value: voltsPeak(peak * factor) };
  return judged(larger.value, because('peak-raised', values, rule.because(['voltage']).cites, from));
}

function clearanceAt(table: Table, peak: VoltsPeak): Answered<Nm> {
  const found = lookUp(table, peak, 'basic');
  return found.kind === 'found' ? judged(nm(found.value), found.because) : found;
}

interface AskedCreepage {
  readonly peak: VoltsPeak;
  readonly frequency: Hertz;
  readonly pollutionDegree: PollutionDegree;
}

/** Null: the table asks nothing. `rule` holds the `factor` for reinforced. */
export function partFourCreepage(
  table: Table,
  rule: Rule,
  asked: AskedCreepage,
  column: Column,
): Judged<Nm> | null | ReturnType<typeof outOfRange> {
  const { peak, frequency, pollutionDegree } = asked;
  const first = Number(table.steps[0]);
  if (peak < first) return null;
  const values = { quantity: table.file.quantity, peak, frequency };
  const cells = filledAround(table, peak, frequency);
  if (cells === null) {
    const place = `${peak} V peak at ${frequency} Hz`;
    const says = `${table.file.id} has no figure for ${place}`;
    return outOfRange(says, because('out-of-range', { quantity: table.file.quantity, place }));
  }
  const [low, high] = cells;
  const share = high === null ? 0 : (frequency - low.step) / (high.step - low.step);
  const to = high === null ? low.length : high.length;
  const raw = nm(Math.round(low.length + (to - low.length) * share));
  const cites = high === null ? [low.cell.cite] : [low.cell.cite, high.cell.cite];
  const row = Number(low.cell.at);
  const why = because('high-frequency-value', { ...values, row, raw: inMm(raw) }, cites);
  // the cells are those of degree 1
  const basic =
    pollutionDegree === 1
      ? judged(roundUp(raw, roundingOf(table)), why)
      : byPollution(table, { raw, because: why }, pollutionDegree);
  return column === 'basic' ? basic : timesRule(rule, 'factor', basic);
}

interface Filled {
  readonly step: number;
  readonly length: number;
  readonly cell: Cell;
}

/** The filled cells on either side of a frequency, in the row at or above the peak; one where it is met or lies before. */
function filledAround(
  table: Table,
  peak: number,
  frequency: number,
): readonly [Filled, Filled | null] | null {
  const filled = table.columnSteps.flatMap((step, c): readonly Filled[] => {
    const line = table.lines.get(lineKey(table.file.columns[c] ?? '', [])) ?? [];
    const cell = line.find(({ at }) => Number(at) >= peak);
    return cell?.value == null ? [] : [{ step, length: cell.value, cell }];
  });
  const i = filled.findIndex(({ step }) => step >= frequency);
  const at = filled[i];
  if (at === undefined) return null;
  const before = filled[i - 1];
  return at.step === frequency || before === undefined ? [at, null] : [before, at];
}
