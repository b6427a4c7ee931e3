// One row of a worked sheet, and the few functions that read the steps of a derivation.

import type { Because, Cite, Confirmed } from '#standards/because.ts';

export interface SheetRow {
  /** One or two words: `table`, `row`, `between`, `rounded`. */
  readonly label: string;
  readonly text: string;
  /** Figure at the end of the row; empty where there is none. */
  readonly value: string;
  /** How well it is known; null for a heading or a figure that follows from the rows above. */
  readonly confirmed: Confirmed | null;
  /** What the derivation arrives at, rather than a step on the way. */
  readonly result?: boolean;
}

/** What a step of one key says. */
export type StepRows = (why: Because) => readonly SheetRow[];

export const row = (label: string, text: string, value: string, confirmed: Confirmed | null): SheetRow => ({
  label,
  text,
  value,
  confirmed,
});

/** A figure of a step; 0 where the step has none of that name. */
export const num = ({ values }: Because, key: string): number => {
  const value = values[key];
  return typeof value === 'number' ? value : 0;
};

export const word = ({ values }: Because, key: string): string => String(values[key] ?? '');

export const confirmedBy = (cite: Cite | undefined): Confirmed | null => cite?.confirmed ?? null;

/** A step that rests on memory anywhere says so. */
export const weakest = ({ cites }: Because): Confirmed | null =>
  confirmedBy(cites.find(({ confirmed }) => confirmed === 'memory') ?? cites[0]);

export const clauseOf = ({ cites }: Because): string =>
  cites[0]?.clause ? ` (clause ${cites[0].clause})` : '';

/** `nextRow` and `next-row` as `next row`. */
export const spaced = (key: string): string =>
  key.replace(/-/g, ' ').replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);

/** What may be asked instead of the interpolated figure; it is never the result. */
export const NEXT_ROW = 'next row';
