// How a figure was found: a tree of steps, each with the numbers it used and where they were seen.
// Steps hold keys and values only; the sentences are made in `report`.

/** How well a cell is confirmed. `memory` is always shown as such; a verdict resting on it says so. */
export type Confirmed =
  'two-sources' | 'published' | 'secondary' | 'derived' | 'memory' | 'house-rule' | 'stated';

/** Where one figure of a table or rule was seen. `sources` are keys of `tables/sources.json`. */
export interface Cite {
  readonly standard: string;
  readonly edition: string;
  readonly clause: string;
  /** Number of the table in the standard, or null for a rule in words. */
  readonly table: string | null;
  /** Which row and column, in our own short words, e.g. `250 V, PD2 III`. */
  readonly cell: string;
  readonly confirmed: Confirmed;
  readonly sources: readonly string[];
}

/** One step of a derivation. `values` are numbers in the unit that the key of the step fixes, or short words. */
export interface Because {
  readonly step: string;
  readonly values: Readonly<Record<string, string | number | boolean | null>>;
  readonly cites: readonly Cite[];
  readonly from: readonly Because[];
}

/** A figure with its derivation. */
export interface Judged<T> {
  readonly value: T;
  readonly because: Because;
}

export const because = (
  step: string,
  values: Because['values'] = {},
  cites: readonly Cite[] = [],
  from: readonly Because[] = [],
): Because => ({ step, values, cites, from });

export const judged = <T>(value: T, why: Because): Judged<T> => ({ value, because: why });

/** All citations of a derivation, its own first, depth first. */
export function citesOf(why: Because): readonly Cite[] {
  return [...why.cites, ...why.from.flatMap(citesOf)];
}

const RANK: readonly Confirmed[] = [
  'memory',
  'house-rule',
  'derived',
  'secondary',
  'stated',
  'published',
  'two-sources',
];

/** The weakest confirmation that a derivation rests on; `stated` where it cites nothing. */
export function weakestConfirmed(why: Because): Confirmed {
  const all = citesOf(why).map((cite) => cite.confirmed);
  return RANK.find((rank) => all.includes(rank)) ?? 'stated';
}
