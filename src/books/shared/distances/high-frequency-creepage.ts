// Surface distance above 30 kHz by peak and frequency: next row up in voltage, a straight line between the frequency
// columns, factor of the pollution degree, rounding, doubling. Null where the ordinary table governs.

import { inMm, nm, type Hertz, type Nm, type VoltsPeak } from '#units/quantity.ts';

import { because, judged, type Because, type Judged } from '#standards/because.ts';
import { byGrade, byPollution } from '#standards/tables/factors.ts';
import type { Column, PollutionDegree } from '#units/terms.ts';
import { outOfRange, type OutOfRange } from '#standards/tables/out-of-range.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';
import { lineKey, type Cell, type Table } from '#standards/tables/table.ts';

export interface Asked {
  readonly peak: VoltsPeak;
  readonly frequency: Hertz;
  readonly pd: PollutionDegree;
  readonly column: Column;
}

export function highFrequencyCreepage(
  table: Table,
  above: Rule,
  asked: Asked,
): Judged<Nm | null> | OutOfRange {
  const { peak, frequency, pd, column } = asked;
  const values = { quantity: table.file.quantity, peak, frequency };
  if (frequency <= above.figure('above'))
    return judged(null, because('not-high-frequency', values, [], [above.because()]));
  const cells = bracket(table, peak, frequency);
  if (cells === null) {
    const says = `${table.file.id} has no cell for ${peak} V peak at ${frequency} Hz`;
    return outOfRange(
      says,
      because('out-of-range', { ...values, place: `${peak} V peak at ${frequency} Hz` }),
    );
  }
  const cites = cells.map(({ cell }) => cell.cite);
  // A cell that holds the word lies in the corner of low voltage and high frequency: the ordinary table governs there.
  if (cells.some(({ cell }) => cell.word === 'not-needed'))
    return judged(null, because('not-needed', values, cites));
  const lengths = cells.map(({ cell }) => cell.value);
  if (lengths.some((value) => value === null)) {
    const says = `${table.file.id} gives no distance for ${peak} V peak at ${frequency} Hz`;
    return outOfRange(
      says,
      because('out-of-range', { ...values, place: `${peak} V peak at ${frequency} Hz` }, cites),
    );
  }
  const raw = nm(Math.round(along(cells, frequency)));
  const why: Because = because(
    'high-frequency-value',
    { ...values, row: Number(cells[0]?.cell.at), raw: inMm(raw) },
    cites,
  );
  return byGrade(table, byPollution(table, { raw, because: why }, pd), column);
}

interface Placed {
  readonly step: number;
  readonly cell: Cell;
}

/** One cell where a column is met or lies below the first, else the two columns around the frequency. */
function bracket(table: Table, peak: number, frequency: number): readonly Placed[] | null {
  const i = table.columnSteps.findIndex((step) => step >= frequency);
  if (i < 0) return null;
  const columns = i === 0 || table.columnSteps[i] === frequency ? [i] : [i - 1, i];
  const placed: Placed[] = [];
  for (const c of columns) {
    const cell = table.lines
      .get(lineKey(table.file.columns[c] ?? '', []))
      ?.find(({ at }) => Number(at) >= peak);
    const step = table.columnSteps[c];
    if (cell === undefined || step === undefined) return null;
    placed.push({ step, cell });
  }
  return placed;
}

function along(cells: readonly Placed[], frequency: number): number {
  const [low, high] = cells;
  if (low === undefined) throw new Error('no column at this frequency');
  const from = Number(low.cell.value);
  if (high === undefined) return from;
  return from + ((Number(high.cell.value) - from) * (frequency - low.step)) / (high.step - low.step);
}
