// The two rows of a table between which a figure was taken, for the small line drawn under the worked sheet.

import type { Because } from '#standards/because.ts';
import { plain } from '#words/text/number-words.ts';
import { axisUnit, quantityWords } from '#words/text/quantity-words.ts';

export interface BetweenRows {
  readonly lower: string;
  readonly upper: string;
  /** The figure found between them, and what the table was entered with. */
  readonly found: string;
  readonly at: string;
  /** Place between the rows, 0 at the lower, 1 at the upper. */
  readonly share: number;
}

/** The interpolation that decides, which is the first of a derivation; null where a row was met. */
export function betweenRows(why: Because): BetweenRows | null {
  for (const each of why.from) {
    const inner = betweenRows(each);
    if (inner !== null) return inner;
  }
  if (why.step !== 'table-value' || !why.values.interpolated) return null;
  const { unit, at, lowerAt, lower, upperAt, upper, raw } = why.values;
  const along = axisUnit(why.values.along);
  if (upperAt <= lowerAt) return null;
  const end = (place: number, figure: number): string =>
    `${quantityWords(place, along)}: ${quantityWords(figure, unit)}`;
  return {
    lower: end(lowerAt, lower),
    upper: end(upperAt, upper),
    found: plain(raw),
    at: quantityWords(at, along),
    share: (at - lowerAt) / (upperAt - lowerAt),
  };
}
