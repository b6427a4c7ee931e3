// The cell of a table for a place on its first axis: the row itself, the next or the previous one, or a straight line
// between two, as the table allows. Below the first row the first holds or none, above the last there is no figure.
// Values of the step `table-value` are in mm for lengths and in the base unit (V, degC, A, 1) otherwise.

import { inMm, nm } from '#units/quantity.ts';

import { because, type Because, type Cite } from '#standards/because.ts';
import { outOfRange, type OutOfRange } from './out-of-range.ts';
import { roundUp } from './rounding.ts';
import { lineKey, type Cell, type Table } from './table.ts';

export interface Found {
  readonly kind: 'found';
  /** In the base unit: nanometres for lengths. */
  readonly value: number;
  /** Before the table's rounding, for rules that multiply first. */
  readonly raw: number;
  readonly because: Because;
}

interface Between {
  readonly lower: Cell | undefined;
  readonly upper: Cell;
}

/** `others` are the places on the axes after the first, which are always met exactly. */
export function lookUp(
  table: Table,
  at: number,
  column: string,
  others: readonly (number | string)[] = [],
): Found | OutOfRange {
  const line = table.lines.get(lineKey(column, others));
  if (line === undefined) return refuse(table, at, column, others);
  const found = around(table, line, at);
  if (found === null) return beyond(table, line, at, column, others);
  const { lower, upper } = found;
  if (upper.value === null) return refuse(table, at, column, others, upper.cite);
  if (lower === undefined || lower.value === null) return single(table, upper, upper.value, at);
  return between(table, { lower, upper }, at, lower.value, upper.value);
}

/** The cell at a place that must be met exactly, e.g. a class or a role. */
export function exactCell(
  table: Table,
  at: number | string,
  column: string,
  others: readonly (number | string)[] = [],
): Cell | undefined {
  return table.lines.get(lineKey(column, others))?.find((cell) => cell.at === at);
}

/** The one cell that holds at a place on a first axis without interpolation; undefined where there is none. */
export function cellFor(
  table: Table,
  at: number,
  column: string,
  others: readonly (number | string)[] = [],
): Cell | undefined {
  const line = table.lines.get(lineKey(column, others));
  return line === undefined ? undefined : around(table, line, at)?.upper;
}

/** The rows on either side of `at`; no lower one where one row alone decides. Null where the table has no figure. */
function around(table: Table, line: readonly Cell[], at: number): Between | null {
  const { axes, outside } = table.file;
  if (axes[0]?.between === 'previous-row') {
    const row = line.findLast((cell) => Number(cell.at) <= at);
    return row === undefined ? null : { lower: undefined, upper: row };
  }
  const i = line.findIndex((cell) => Number(cell.at) >= at);
  const upper = line[i];
  if (upper === undefined) return null;
  if (i === 0 && upper.at !== at && outside.below === 'refuse') return null;
  const alone = axes[0]?.between !== 'linear' || upper.at === at;
  return { lower: alone ? undefined : line[i - 1], upper };
}

function single(table: Table, cell: Cell, value: number, at: number): Found {
  const shown = inPrint(table, value);
  const values = {
    ...asked(table, at),
    interpolated: false,
    rowAt: cell.at,
    row: shown,
    value: shown,
  } as const;
  return { kind: 'found', value, raw: value, because: because('table-value', values, [cell.cite]) };
}

function between(table: Table, { lower, upper }: Between, at: number, low: number, high: number): Found {
  const from = Number(lower?.at);
  const raw = low + ((high - low) * (at - from)) / (Number(upper.at) - from);
  const { rounding, unit } = table.file;
  // To a nanometre first; a row's own value is never exceeded below that row.
  const exact = unit === 'mm' ? nm(Math.round(raw)) : raw;
  const value = unit === 'mm' && rounding !== null ? Math.min(roundUp(nm(exact), rounding), high) : exact;
  const values = {
    ...asked(table, at),
    interpolated: true as const,
    lowerAt: Number(lower?.at),
    lower: inPrint(table, low),
    upperAt: Number(upper.at),
    upper: inPrint(table, high),
    raw: inPrint(table, exact),
    value: inPrint(table, value),
    // A laboratory may refuse to interpolate and take the next row.
    nextRow: inPrint(table, high),
  };
  const cites = lower === undefined ? [upper.cite] : [lower.cite, upper.cite];
  return { kind: 'found', value, raw: exact, because: because('table-value', values, cites) };
}

/** Above the last row a factor on the asked value may hold; otherwise there is no figure. */
function beyond(
  table: Table,
  line: readonly Cell[],
  at: number,
  column: string,
  others: readonly (number | string)[],
): Found | OutOfRange {
  const factor = table.file.outside.above === 'factor' ? table.factors.get(column) : undefined;
  if (factor === undefined) return refuse(table, at, column, others, line.at(-1)?.cite);
  const value = at * factor.value;
  const values = { ...asked(table, at), factor: factor.value, value };
  return { kind: 'found', value, raw: value, because: because('factor-beyond-table', values, [factor.cite]) };
}

function refuse(
  table: Table,
  at: number,
  column: string,
  others: readonly (number | string)[],
  cite?: Cite,
): OutOfRange {
  const place = [column, ...others].join(', ');
  const says = `${table.file.id} has no figure for ${at} (${place}); it runs from ${table.steps[0]} to ${table.steps.at(-1)}`;
  const values = { ...asked(table, at), place };
  return outOfRange(says, because('out-of-range', values, cite ? [cite] : []));
}

const asked = (table: Table, at: number) => ({
  quantity: table.file.quantity,
  unit: table.file.unit,
  along: table.file.axes[0]?.name ?? '',
  at,
});

const inPrint = (table: Table, value: number): number => (table.file.unit === 'mm' ? inMm(nm(value)) : value);
