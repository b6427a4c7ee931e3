// A rule book as functions over its tables: every answer carries where it was seen. Which books there are stands in
// `ruleBookIds`; a new one is a folder of tables and a file beside `iec-62368-1.ts`.
//
// Steps of the derivations made in this room, with the units of their values (lengths mm, altitude m, else V, A, degC):
//   table-value          quantity, unit, along, at, interpolated; rowAt, row | lowerAt, lower, upperAt, upper, raw,
//                        nextRow (what a laboratory may take instead of interpolating); value
//   factor-beyond-table  at, factor, value        pollution-factor   pd, factor, before, product, value
//   reinforced-factor    factor, basic, value, nextRow                high-frequency-value  peak, frequency, row, raw
//   high-frequency-test  peak, factor, reduction, value               field-reduction  material, thickness, frequency, column, value
//   field-reduction-mean first, last, rows, frequency, column, value
//   bridging-width, wire-layers, capacitor, needed-grade, touch-current, temperature-limit   what was asked, value
//   rule                 rule (its id in rules.json) and its figures as printed there
//   film-breakdown       tape, film, row, value   round-wire, fully-insulated-wire  conductor, grade, row, exact, overall
//   fully-insulated-strength  conductor, increase, perMicrometre, value
//   layer-insulated-wire conductor, growth, value litz-bundle  strands, serving, packing, growth, value
//   not-high-frequency, not-needed, out-of-range                      what was asked

import type { Hertz } from '#units/quantity.ts';
import type { BecauseOf } from '#standards/because.ts';
import type { Distances } from '#books/iec-62368-1/distances.ts';
import { iec623681 } from '#books/iec-62368-1/iec-62368-1.ts';
import type { Solids } from '#books/iec-62368-1/solids.ts';
import type { Voltages } from '#books/iec-62368-1/voltages.ts';

export interface Book extends Distances, Voltages, Solids {
  readonly id: string;
  readonly edition: string;
  readonly title: string;
  /** A rule in words as a step of a derivation, by its id in the book's `rules.json`; throws on an unknown id. */
  readonly rule: (id: string) => BecauseOf<'rule'>;
  /** At and under this frequency the tables for high frequency are not asked. */
  readonly highFrequencyAbove: number;
  /** The highest for which the tables give distances along surfaces. */
  readonly highestFrequency: Hertz;
}

const BOOKS: readonly Book[] = [iec623681];

export const ruleBookIds: readonly string[] = BOOKS.map(({ id }) => id);

export const ruleBook = (id: string): Book | null => BOOKS.find((book) => book.id === id) ?? null;
