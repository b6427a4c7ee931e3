// The tables of the rule books as the page of tables lists and searches them, what a typed value gives, and which of their
// cells an open verdict rests on.

import { ruleBook } from '#books/shelf.ts';
import { strayCells } from '#books/stray-cells.ts';
import { tableAsked, tableLines } from '#drawing/plot/table-lines.ts';
import { tablePlot, type TablePlot } from '#drawing/plot/table-plot.ts';
import { tablePoints } from '#drawing/plot/table-points.ts';
import { strayWords } from '#words/verdict/remark-words.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import { type Because, type Cite, citesOf, type Confirmed } from '#standards/because.ts';
import { byGrade } from '#standards/tables/factors.ts';
import { lookUp } from '#standards/tables/look-up.ts';
import type { OwnCell } from '#standards/tables/own-cell.ts';
import { inBase, type Table } from '#standards/tables/table.ts';
import { rulesView, tableView, type CellView, type TableView } from '#standards/tables/table-view.ts';
import { sourceNamed, type Source } from '#standards/sources.ts';
import { workedSheet } from '#words/derivation/derivation-table.ts';
import { judged } from '#standards/because.ts';
import { nm } from '#units/quantity.ts';

export type { CellView, OwnCell, TableView };

/** By number of the table, what has none last, the rules in words at the end. */
export function shelfOf(book: string, own: readonly OwnCell[]): readonly TableView[] {
  const found = ruleBook(book, own);
  if (found === null) return [];
  const tables = found.tables.map(({ file }) => tableView(file, own));
  const once = [...new Map(tables.map((table) => [table.key, table])).values()];
  return [...once.sort(byNumber), rulesView(found.rules.file, own)];
}

function byNumber(a: TableView, b: TableView): number {
  if (a.number === null || b.number === null) return Number(a.number === null) - Number(b.number === null);
  return a.number.localeCompare(b.number, 'en', { numeric: true });
}

/** Words of the search, all of which are in the table's title, clause, source or describing words. */
export function matches(table: TableView, words: string): boolean {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  const { standard, number, clauses, quantity, describes, columns, rows } = table;
  const ruled = table.file === 'rules' ? rows.map(({ at }) => at.join(' ')) : [];
  const text = [standard, number, clauses, quantity, describes, ...columns, ...ruled].join(' ').toLowerCase();
  return wanted.every((word) => text.includes(word));
}

export type Typed =
  | { readonly kind: 'found'; readonly lines: ReturnType<typeof workedSheet>; readonly text: string }
  | { readonly kind: 'none'; readonly says: string };

/** What the table gives at a typed value, worked out line by line. `others`: the places on the further axes. */
export function typedIn(
  book: string,
  own: readonly OwnCell[],
  view: TableView,
  at: number,
  column: string,
  others: readonly (number | string)[],
): Typed {
  const table = tableIn(book, own, view);
  if (table === undefined) return { kind: 'none', says: 'the table is not read by this book' };
  const [axis] = table.file.axes;
  const entry = inBase(at, axis?.unit ?? '1');
  const found = lookUp(table, entry, column, others);
  if (found.kind !== 'found') {
    const [from, to] = [axis?.at[0], axis?.at.at(-1)];
    return {
      kind: 'none',
      says: `the table runs from ${from} to ${to} ${axis?.unit ?? ''}; no reading beyond`,
    };
  }
  const doubled = table.factors.has('reinforced') && table.file.unit === 'mm';
  const last: Because = doubled
    ? byGrade(table, judged(nm(found.value), found.because), 'reinforced').because
    : found.because;
  const value = table.file.unit === 'mm' ? found.value / 1e6 : found.value;
  return { kind: 'found', lines: workedSheet(last), text: `${value} ${table.file.unit}` };
}

/** What the table asks as a plot, with the points of the verdict's build; null: it holds no lengths by a voltage. */
export function plotOf(
  book: string,
  own: readonly OwnCell[],
  view: TableView,
  looked: {
    readonly at: number;
    readonly column: string;
    readonly others: readonly (number | string)[];
  },
  verdict: Verdict | null,
): TablePlot | null {
  const table = tableIn(book, own, view);
  if (table === undefined) return null;
  const { column, others } = looked;
  const at = inBase(looked.at, table.file.axes[0]?.unit ?? '1');
  // the verdict may be of another book, which reads other tables
  const points = (verdict?.rules.id === book ? tablePoints(verdict, table.file) : []).filter(
    ({ places }) => places.join() === others.join(),
  );
  return tablePlot(tableLines(table, column, others), points, at, tableAsked(table, at, column, others));
}

const tableIn = (book: string, own: readonly OwnCell[], view: TableView): Table | undefined =>
  ruleBook(book, own)?.tables.find(({ file }) => file.standard === view.standard && file.id === view.file);

/** Confirmed cells of a file that name nothing here. */
export const strayIn = (own: readonly OwnCell[]): readonly string[] =>
  strayCells(own).map(({ cell, missing }) => strayWords({ ...cell, missing }));

/** Cells of memory or second-hand copies that the verdict rests on, by table key and name. */
export function decidingCells(verdict: Verdict | null): ReadonlySet<string> {
  const cites = (verdict?.pairs ?? []).flatMap(({ because, limiting }) => [
    ...citesOf(because),
    ...(limiting === null ? [] : citesOf(limiting.because)),
  ]);
  return new Set(cites.filter(isWeak).map(({ standard, file, cell }) => `${standard}/${file}/${cell}`));
}

const WEAK: readonly Confirmed[] = ['memory', 'secondary'];
const isWeak = ({ confirmed }: Cite): boolean => WEAK.includes(confirmed);

export const sourcesOf = (cell: CellView): readonly Source[] =>
  cell.seen.in.flatMap((key) => {
    const source = sourceNamed(key);
    return source === null ? [] : [source];
  });

export const sourcesNamed = (keys: readonly string[]): readonly Source[] =>
  keys.flatMap((key) => {
    const source = sourceNamed(key);
    return source === null ? [] : [source];
  });
