// How one table is looked at: the typed value, the column, the places on its further axes, and what they give.

import type { Verdict } from '#judge/verdict/verdict.ts';
import { plotOf, typedIn, type OwnCell, type TableView } from './table-shelf.ts';

type Place = number | string;

/** What is looked into. `voltage`: of the pair that is shown, V rms; it stands where nothing is typed. */
export interface Looked {
  readonly book: string;
  readonly own: readonly OwnCell[];
  readonly table: TableView | null;
  readonly verdict: Verdict | null;
  readonly voltage: number | null;
}

/** Where no build gives a voltage. */
const A_MAINS = 250;

export class TableLook {
  entry = $state('');
  #column: string | null = $state(null);
  #others: readonly Place[] = $state.raw([]);
  readonly #looked: () => Looked;

  constructor(looked: () => Looked) {
    this.#looked = looked;
  }

  /** Its rows are read by a figure. */
  readonly isNumeric = $derived.by(() => {
    const { table } = this.#looked();
    return typeof table?.rows[0]?.at[0] === 'number' && table.file !== 'rules';
  });

  /** The further axes, each with the places that it has. */
  readonly choices = $derived.by(() => {
    const { table } = this.#looked();
    if (table === null || table.file === 'rules') return [];
    return table.axes.slice(1).map((name, i) => {
      const places = table.rows.map((row) => row.at[i + 1] ?? '');
      return { name, at: places.filter((place, k) => places.indexOf(place) === k) };
    });
  });

  /** The chosen place on each of them; pollution degree 2 where none was chosen. */
  readonly others: readonly Place[] = $derived.by(() =>
    this.choices.map(({ at }, i) => {
      const chosen = this.#others[i];
      return chosen !== undefined && at.includes(chosen) ? chosen : at.includes(2) ? 2 : (at[0] ?? '');
    }),
  );

  readonly column = $derived.by(() => {
    const columns = this.#looked().table?.columns ?? [];
    const chosen = columns.find((name) => name === this.#column);
    return chosen ?? columns.find((name) => name === 'IIIb' || name === 'reinforced') ?? columns[0] ?? '';
  });

  /** What stands where nothing is typed. */
  readonly standing = $derived.by(() => String(this.#looked().voltage ?? A_MAINS));

  /** The typed value; null where it is no figure. */
  readonly number: number | null = $derived.by(() => {
    const text = this.entry.trim() === '' ? this.standing : this.entry.trim();
    const [, figure, kilo] = /^([\d.,]+)\s*(k?)\s*(?:V.*|Hz|m)?$/i.exec(text) ?? [];
    const value = Number(figure?.replace(',', '.'));
    return figure === undefined || !Number.isFinite(value) ? null : value * (kilo ? 1000 : 1);
  });

  readonly typed = $derived.by(() => {
    const { book, own, table } = this.#looked();
    if (table === null || !this.isNumeric || this.number === null) return null;
    return typedIn(book, own, table, this.number, this.column, this.others);
  });

  readonly plot = $derived.by(() => {
    const { book, own, table, verdict } = this.#looked();
    if (table === null || !this.isNumeric || this.number === null) return null;
    const { number: at, column, others } = this;
    return plotOf(book, own, table, { at, column, others }, verdict);
  });

  chooseColumn(name: string): void {
    this.#column = name;
  }

  /** `place`: as it stands in the list of that axis. */
  choosePlace(axis: number, place: string): void {
    const chosen = this.choices[axis]?.at.find((each) => String(each) === place);
    if (chosen !== undefined) this.#others = this.others.map((each, k) => (k === axis ? chosen : each));
  }
}
