// One row of a worked sheet, and the few functions that the words of the steps share.

import type { BecauseOf, Because, Cite, Confirmed, StepKind } from '#standards/because.ts';
import { plain } from '#words/text/number-words.ts';

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

/** What the steps of one kind say. `last`: it is the outermost one, whose figure is what was asked. */
export type StepWords<K extends StepKind> = (why: BecauseOf<K>, last: boolean) => readonly SheetRow[];

/** Words for every step of a room: one that is forgotten does not compile. */
export type WordsFor<All> = { readonly [K in keyof All & StepKind]: StepWords<K> };

export const row = (
  label: string,
  text: string,
  value = '',
  confirmed: Confirmed | null = null,
): SheetRow => ({ label, text, value, confirmed });

export const confirmedBy = (cite: Cite | undefined): Confirmed | null => cite?.confirmed ?? null;

/** A step that rests on memory anywhere says so. */
export const weakest = ({ cites }: Pick<Because, 'cites'>): Confirmed | null =>
  confirmedBy(cites.find(({ confirmed }) => confirmed === 'memory') ?? cites[0]);

export const clauseOf = ({ cites }: Pick<Because, 'cites'>): string =>
  cites[0]?.clause ? ` (clause ${cites[0].clause})` : '';

export const product = (a: number, b: number): string => `${plain(a)} × ${plain(b)}`;

/** What may be asked instead of the interpolated figure; it is never the result. */
export const NEXT_ROW = 'next row';
