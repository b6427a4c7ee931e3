// One table file made ready for look-up: axes and cells in base units (V, Hz, m, nanometres), each cell with its
// citation. The shape of a file is fixed by `tables/schema.json` and checked by `test/tables`, not here.

import { mm } from '#units/quantity.ts';

import type { Cite, Confirmed } from '#standards/because.ts';
import { isOwn, type OwnCell } from './own-cell.ts';

export interface Axis {
  readonly name: string;
  readonly unit: string;
  readonly at: readonly (number | string)[];
  readonly between: 'linear' | 'next-row' | 'previous-row' | 'exact';
}

export interface Rounding {
  readonly way: 'up';
  /** First step whose `upTo` is not below the value; the last has none. Both in the table's unit. */
  readonly steps: readonly { readonly upTo: number | null; readonly to: number }[];
}

/** Where a figure was seen: `in` are keys of `tables/sources.json`. Rows name it by `key`. */
export interface Seen {
  readonly key: string;
  readonly saw: string;
  readonly confirmed: Confirmed;
  readonly in: readonly string[];
}

type Printed = number | string | null;

export interface Row {
  readonly at: readonly (number | string)[];
  /** One source for the whole row, or one for each column; left out columns take the table's `columnFrom`. */
  readonly from?: string | Readonly<Record<string, string>>;
  readonly [column: string]: unknown;
}

export interface TableFile {
  readonly id: string;
  readonly quantity: string;
  readonly unit: string;
  readonly standard: string;
  readonly edition: string;
  readonly table: string | null;
  readonly clauses: readonly string[];
  /** In our own words. */
  readonly describes: string;
  readonly axes: readonly Axis[];
  /** Where the columns are steps of a second quantity, e.g. of frequency. */
  readonly columnAxis?: { readonly name: string; readonly unit: string; readonly at: readonly number[] };
  readonly columns: readonly string[];
  /** Units of columns that have not the table's own. */
  readonly units?: Readonly<Record<string, string>>;
  readonly columnFrom?: Readonly<Record<string, string>>;
  readonly rows: readonly Row[];
  readonly outside: {
    readonly below: 'first-row' | 'refuse';
    readonly above: 'refuse' | 'factor' | 'last-row';
  };
  readonly rounding: Rounding | null;
  readonly factors?: readonly { readonly key: string; readonly value: number; readonly from: string }[];
  readonly sources: readonly Seen[];
  /** Other readings of a cell, `rows[0].basic`, each with where it was seen. */
  readonly disagree?: readonly {
    readonly cell: string;
    readonly others: readonly { readonly value: number | string; readonly from: readonly string[] }[];
    readonly why: string;
  }[];
}

/** `value` in the base unit; null where the cell holds a word or nothing. */
export interface Cell {
  readonly at: number | string;
  readonly value: number | null;
  readonly word: string | null;
  readonly cite: Cite;
}

export interface Table {
  readonly file: TableFile;
  /** Steps of the first axis in its base unit, rising. */
  readonly steps: readonly (number | string)[];
  /** Steps of the columns in their base unit, empty where columns are words. */
  readonly columnSteps: readonly number[];
  /** Cells along the first axis, under the column and the other axes' places. */
  readonly lines: ReadonlyMap<string, readonly Cell[]>;
  readonly factors: ReadonlyMap<string, { readonly value: number; readonly cite: Cite }>;
}

const PER_UNIT: Readonly<Record<string, number>> = {
  'kV peak': 1000,
  'kV rms': 1000,
  'kV peak/mm': 1000,
  kHz: 1000,
  mA: 0.001,
};

/** A printed figure in the base unit; the product is cleared of binary noise (0.33 kV is 330 V). */
export function inBase(value: number, unit: string): number {
  if (unit === 'mm') return mm(value);
  const factor = PER_UNIT[unit];
  return factor === undefined ? value : Number((value * factor).toPrecision(12));
}

export const lineKey = (column: string, others: readonly (number | string)[]): string =>
  [column, ...others].join('|');

/** `json` is a table file; its shape is taken for granted (see the header). `own` are laid over its cells. */
export function readTable(json: unknown, own: readonly OwnCell[] = []): Table {
  const file = json as TableFile;
  const first = file.axes[0];
  if (first === undefined) throw new Error(`table ${file.id} has no axis`);
  const lines = new Map<string, Cell[]>();
  for (const row of file.rows) {
    for (const column of file.columns) {
      const key = lineKey(column, row.at.slice(1));
      const line = lines.get(key) ?? [];
      if (line.length === 0) lines.set(key, line);
      line.push(cellOf(file, row, column, own));
    }
  }
  return {
    file,
    steps: first.at.map((at) => (typeof at === 'number' ? inBase(at, first.unit) : at)),
    columnSteps: file.columnAxis?.at.map((at) => inBase(at, file.columnAxis?.unit ?? '1')) ?? [],
    lines,
    factors: new Map(
      file.factors?.map(({ key, value, from }) => {
        const cite = citeOf(file, factorName(key), from, own);
        return [key, { value: ownValue(file, cite.cell, own) ?? value, cite }];
      }),
    ),
  };
}

function cellOf(file: TableFile, row: Row, column: string, own: readonly OwnCell[]): Cell {
  const printed = row[column] as Printed;
  const at = row.at[0] ?? '';
  const unit = file.axes[0]?.unit ?? '1';
  const cite = citeOf(file, cellName(file, row, column), keyOf(row, column, file), own);
  const figure = ownValue(file, cite.cell, own) ?? printed;
  return {
    at: typeof at === 'number' ? inBase(at, unit) : at,
    value: typeof figure === 'number' ? inBase(figure, file.units?.[column] ?? file.unit) : null,
    word: typeof figure === 'string' ? figure : null,
    cite,
  };
}

/** As a citation names it: `250 V rms, PD 2, IIIa`. */
export const cellName = (file: TableFile, row: Row, column: string): string =>
  `${placeOf(file, row)}, ${column}`;

/** Of every cell and factor that a user's own copy may speak of. */
export const cellNames = (file: TableFile): readonly string[] => [
  ...file.rows.flatMap((row) => file.columns.map((column) => cellName(file, row, column))),
  ...(file.factors ?? []).map(({ key }) => factorName(key)),
];

const factorName = (key: string): string => `factor ${key}`;

const keyOf = (row: Row, column: string, { columnFrom }: TableFile): string =>
  (typeof row.from === 'string' ? row.from : row.from?.[column]) ?? columnFrom?.[column] ?? '';

/** Where a cell was seen. */
export function sourceOf(file: TableFile, row: Row, column: string): Seen {
  const key = keyOf(row, column, file);
  const seen = file.sources.find((source) => source.key === key);
  if (seen === undefined) throw new Error(`table ${file.id} names no source ${key}`);
  return seen;
}

/** What the user's own copy says of a cell, in the unit of its column; null where it says nothing else. */
export const ownValue = (
  file: { readonly standard: string; readonly id: string },
  cell: string,
  own: readonly OwnCell[],
): number | null => own.find((each) => isOwn(each, file, cell))?.value ?? null;

/** `250 V rms, PD 2`. */
function placeOf(file: TableFile, row: Row): string {
  return file.axes
    .map(({ name, unit }, i) => {
      const at = row.at[i] ?? '';
      return unit === 'word' ? `${at}` : unit === '1' ? `${name} ${at}` : `${at} ${unit}`;
    })
    .join(', ');
}

export function citeOf(
  file: Pick<TableFile, 'id' | 'standard' | 'edition' | 'table' | 'clauses' | 'sources'>,
  cell: string,
  from: string,
  own: readonly OwnCell[] = [],
): Cite {
  const seen = file.sources.find(({ key }) => key === from);
  if (seen === undefined) throw new Error(`table ${file.id} names no source ${from}`);
  const by = own.find((each) => isOwn(each, file, cell));
  return {
    standard: file.standard,
    edition: file.edition,
    clause: file.clauses.join(', '),
    table: file.table,
    file: file.id,
    cell,
    confirmed: by === undefined ? seen.confirmed : 'user',
    sources: seen.in,
    ...(by && { own: { clause: by.clause, on: by.on } }),
  };
}
