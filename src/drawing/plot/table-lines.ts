// The figures of a table as lines of a plot: the chosen column, what it is doubled for reinforced, the other columns at the
// same place, and the same column at the other places of the last axis. Lengths in mm over volts, a step where no line is
// drawn between rows. Lines that run as one are one line with both names.

import { lookUp } from '#standards/tables/look-up.ts';
import { lineKey, type Table } from '#standards/tables/table.ts';

export interface TableLine {
  readonly name: string;
  readonly points: readonly (readonly [at: number, mm: number])[];
  /** `first`: what is asked in the end; `chosen`: the column as it is printed. */
  readonly rank: 'first' | 'chosen' | 'other';
}

/** Names in a plot beyond this many are no help. */
const MOST = 7;

/** Empty where the table holds no lengths by a voltage. `others`: places on the axes after the first. */
export function tableLines(
  table: Table,
  column: string,
  others: readonly (number | string)[],
): readonly TableLine[] {
  const [along, ...further] = table.file.axes;
  if (table.file.unit !== 'mm' || along === undefined || !/^k?V /.test(along.unit)) return [];
  const placed = placeWords(further, others);
  const chosen = pointsOf(table, column, others);
  const factor = table.factors.get('reinforced')?.value;
  const last = further.at(-1);
  const elsewhere = (last?.at ?? []).filter((at) => at !== others.at(-1));
  const all: readonly TableLine[] = [
    ...(factor === undefined
      ? []
      : [{ name: `${column}${placed}, reinforced`, rank: 'first' as const, points: times(chosen, factor) }]),
    { name: `${column}${placed}`, rank: factor === undefined ? 'first' : 'chosen', points: chosen },
    ...table.file.columns
      .filter((name) => name !== column)
      .map((name): TableLine => ({ name, rank: 'other', points: pointsOf(table, name, others) })),
    ...elsewhere.map((at): TableLine => ({
      name: `${last?.name} ${at}`,
      rank: 'other',
      points: pointsOf(table, column, [...others.slice(0, -1), at]),
    })),
  ];
  return joined(all.filter(({ points }) => points.length > 1)).slice(0, MOST);
}

/** What the first line asks at a value, rounded as the table rounds, mm; null: no figure. */
export function tableAsked(
  table: Table,
  at: number,
  column: string,
  others: readonly (number | string)[],
): number | null {
  if (table.file.unit !== 'mm') return null;
  const found = lookUp(table, at, column, others);
  if (found.kind !== 'found') return null;
  const factor = table.factors.get('reinforced')?.value ?? 1;
  return Number(((found.value / 1e6) * factor).toPrecision(12));
}

function pointsOf(table: Table, column: string, others: readonly (number | string)[]): TableLine['points'] {
  const cells = (table.lines.get(lineKey(column, others)) ?? []).flatMap(({ at, value }) =>
    value === null ? [] : [[Number(at), value / 1e6] as const],
  );
  if (table.file.axes[0]?.between === 'linear') return cells;
  return cells.flatMap((cell, i) => (i === 0 ? [cell] : [[cells[i - 1]![0], cell[1]] as const, cell]));
}

const times = (points: TableLine['points'], factor: number): TableLine['points'] =>
  points.map(([at, mm]) => [at, Number((mm * factor).toPrecision(12))]);

const placeWords = (
  axes: readonly { readonly name: string; readonly unit: string }[],
  at: readonly (number | string)[],
): string => axes.map(({ name }, i) => `, ${name} ${at[i]}`).join('');

function joined(lines: readonly TableLine[]): readonly TableLine[] {
  const by = new Map<string, TableLine>();
  for (const line of lines) {
    const key = line.points.join(';');
    const before = by.get(key);
    by.set(key, before === undefined ? line : { ...before, name: `${before.name}; ${line.name}` });
  }
  return [...by.values()];
}
