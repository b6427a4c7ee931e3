// A table as a reader looks at it: rows and cells as printed, each with how well it is known, where it was seen, other
// readings, and what a user's own copy says.

import type { Confirmed } from '#standards/because.ts';
import { isOwn, type OwnCell } from './own-cell.ts';
import type { RulesFile } from './rules-in-words.ts';
import { cellName, type Row, type Seen, sourceOf, type TableFile } from './table.ts';

export interface TableView {
  /** Standard and file: names the table among all. */
  readonly key: string;
  readonly standard: string;
  readonly file: string;
  readonly edition: string;
  readonly number: string | null;
  readonly clauses: string;
  readonly quantity: string;
  readonly describes: string;
  readonly unit: string;
  readonly axes: readonly string[];
  readonly columns: readonly string[];
  readonly rows: readonly RowView[];
  readonly best: Confirmed;
  readonly worst: Confirmed;
}

export interface RowView {
  readonly at: readonly (number | string)[];
  readonly cells: readonly CellView[];
}

export interface CellView {
  /** As a citation names it. */
  readonly name: string;
  /** As printed; with the user's own value where there is one. */
  readonly value: number | string | null;
  /** Ours, where the user's own copy says another. */
  readonly ours: number | string | null;
  readonly unit: string;
  readonly confirmed: Confirmed;
  readonly seen: Seen;
  readonly others: readonly { readonly value: number | string; readonly from: readonly string[] }[];
  readonly why: string;
  readonly own: { readonly clause: string; readonly on: string } | null;
}

const ORDER: readonly Confirmed[] = [
  'two-sources',
  'published',
  'user',
  'stated',
  'derived',
  'house-rule',
  'secondary',
  'memory',
];

export function tableView(file: TableFile, own: readonly OwnCell[] = []): TableView {
  const rows = file.rows.map((row, i): RowView => ({
    at: row.at,
    cells: file.columns.map((column) => cellView(file, row, i, column, own)),
  }));
  return {
    ...headOf(file),
    number: file.table,
    clauses: file.clauses.join(', '),
    quantity: file.quantity,
    describes: file.describes,
    unit: file.unit,
    axes: file.axes.map(({ name, unit }) => (unit === 'word' || unit === '1' ? name : `${name}, ${unit}`)),
    columns: file.columns,
    rows,
    ...span(rows),
  };
}

/** The rules in words as one table: a row a figure. */
export function rulesView(file: RulesFile, own: readonly OwnCell[] = []): TableView {
  const rows = file.rules.flatMap(({ id, clauses, says, values }) =>
    Object.entries(values).map(([key, { value, unit, from }]): RowView => {
      const name = `${id}, ${key}`;
      const seen = file.sources.find((source) => source.key === from)!;
      const plain = typeof value === 'boolean' ? (value ? 'holds' : 'does not hold') : value;
      return {
        at: [clauses.join(', '), says, key],
        cells: [laidOver(file, { name, value: plain, unit, seen, others: [], why: '' }, own)],
      };
    }),
  );
  return {
    ...headOf(file),
    number: null,
    clauses: '',
    quantity: 'rules in words',
    describes: 'rules that stand in words, in our own, with their figures',
    unit: '',
    axes: ['clause', 'rule', 'figure'],
    columns: ['value'],
    rows,
    ...span(rows),
  };
}

const headOf = ({ standard, id, edition }: Pick<TableFile, 'standard' | 'id' | 'edition'>) => ({
  key: `${standard}/${id}`,
  standard,
  file: id,
  edition,
});

function cellView(file: TableFile, row: Row, i: number, column: string, own: readonly OwnCell[]): CellView {
  const name = cellName(file, row, column);
  const disagree = file.disagree?.find(({ cell }) => cell === `rows[${i}].${column}`);
  const unit = file.units?.[column] ?? file.unit;
  const value = (row[column] ?? null) as number | string | null;
  const seen = sourceOf(file, row, column);
  return laidOver(
    file,
    { name, value, unit, seen, others: disagree?.others ?? [], why: disagree?.why ?? '' },
    own,
  );
}

function laidOver(
  file: { readonly standard: string; readonly id: string },
  cell: Pick<CellView, 'name' | 'value' | 'unit' | 'seen' | 'others' | 'why'>,
  own: readonly OwnCell[],
): CellView {
  const by = own.find((each) => isOwn(each, file, cell.name));
  return {
    ...cell,
    value: by?.value ?? cell.value,
    ours: by?.value == null || by.value === cell.value ? null : cell.value,
    confirmed: by === undefined ? cell.seen.confirmed : 'user',
    own: by === undefined ? null : { clause: by.clause, on: by.on },
  };
}

function span(rows: readonly RowView[]): Pick<TableView, 'best' | 'worst'> {
  const all = rows.flatMap(({ cells }) => cells).filter(({ value }) => value !== null);
  const ranks = all.map(({ confirmed }) => ORDER.indexOf(confirmed));
  return {
    best: ORDER[Math.min(...ranks)] ?? 'memory',
    worst: ORDER[Math.max(...ranks)] ?? 'memory',
  };
}
