// Puts one question to one book, without a build: mains against something touchable, plain values unless changed.

import type { Book } from '#books/questions/book.ts';
import type { Answered, Both, Means, Question, Required } from '#books/questions/required.ts';
import type { Circuit } from '#model/design.ts';
import type { Supply } from '#model/design/supply.ts';
import { known } from '#model/quantity/reading.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import type { Grade, OvervoltageCategory, PollutionDegree, Role } from '#units/terms.ts';
import { hertz, metres, voltsPeak, voltsRms } from '#units/quantity.ts';

export interface Plain {
  readonly rms: number;
  readonly peak: number;
  readonly frequency: number;
  readonly mains: number;
  readonly category: OvervoltageCategory;
  readonly pollutionDegree: PollutionDegree;
  readonly altitude: number;
  readonly means: Means;
  readonly needed: Grade;
  readonly role: Role;
  readonly market: string | null;
}

const PLAIN: Plain = {
  rms: 240,
  peak: 339,
  frequency: 50,
  mains: 240,
  category: 2,
  pollutionDegree: 2,
  altitude: 0,
  means: 'patient',
  needed: 'reinforced',
  role: 'touchable',
  market: null,
};

const circuit = (id: string, role: Role): Circuit => ({ id, name: id, role, means: null });

export function questionOf(book: Book, changes: Partial<Plain> = {}): Question {
  const plain = { ...PLAIN, ...changes };
  const supply: Supply = {
    kind: 'ac',
    voltage: known(voltsRms(plain.mains)),
    lowest: { kind: 'unknown', leftOut: true },
    tolerance: 0.1,
    frequency: known(hertz(50)),
    overvoltageCategory: plain.category,
    transient: null,
    categoryStated: true,
    market: plain.market,
  };
  const between = [circuit('pri', 'mains'), circuit('out', plain.role)] as const;
  return {
    between,
    needed: plain.needed,
    supply,
    pollutionDegree: plain.pollutionDegree,
    altitude: metres(plain.altitude),
    altitudeFrom: null,
    rms: voltsRms(plain.rms),
    peak: voltsPeak(plain.peak),
    frequency: hertz(plain.frequency),
    transients: book.transients(supply, ...between),
    means: plain.means,
  };
}

export const ask = (book: Book, changes: Partial<Plain> = {}): Required =>
  book.required(questionOf(book, changes));

/** Basic and reinforced, lengths in mm or volts peak; null where the book has no figure. */
export const figures = (both: Both<Answered<number>>, unit = 1e6): readonly (number | null)[] =>
  [both.basic, both.reinforced].map((one) => (isOutOfRange(one) ? null : one.value / unit));

/** As printed in a book: a test in whole volts rms. */
export const testRms = (both: Both<Answered<number>>): readonly (number | null)[] =>
  figures(both, Math.SQRT2).map((value) => (value === null ? null : Math.round(value)));
