// What a rule book is asked, in the judge's words. Every answer carries its derivation, down to the table and the clause.
// Which books there are stands in `shelf.ts`; the procedure of a book lies in its own folder, its figures in `tables`.

import type { Circuit, Supply } from '#model/design.ts';
import type { BecauseOf, Judged } from '#standards/because.ts';
import type { Hertz, Seconds } from '#units/quantity.ts';
import type { Insulation } from './insulation.ts';
import type { Crossed, LevelsOf } from './solid.ts';
import type { Solids } from './iec-62368-1/solids.ts';
import type { Question, Required, Transients } from './required.ts';

export interface Book extends Omit<Solids, 'plyRule' | 'bondedPlies'>, Limits {
  readonly id: string;
  readonly edition: string;
  readonly title: string;
  /** What the mains brings between two circuits. */
  readonly transients: (supply: Supply, a: Circuit, b: Circuit) => Transients;
  /** Distances, test levels and bridged gaps between two circuits. */
  readonly required: (asked: Question) => Required;
  /** How many sheets that can be parted: each standing the test, or so many of which any two together do. */
  readonly sheets: () => Judged<{ readonly alone: number; readonly anyTwo: number | null }>;
  /** What solids crossed one after another are worth, each rule an insulation of its own, in series with the others. */
  readonly solids: (crossed: readonly Crossed[], levels: LevelsOf) => readonly Judged<Insulation>[];
  /** A rule in words as a step of a derivation, by its id in the book's `rules.json`; throws on an unknown id. */
  readonly rule: (id: string) => BecauseOf<'rule'>;
}

/** What holds whatever is asked. */
export interface Limits {
  readonly testSeconds: Judged<Seconds>;
  readonly routineTest: Judged<{
    readonly secondsLeast: Seconds;
    readonly secondsMost: Seconds;
    /** Part of the type-test level. */
    readonly levelShare: number;
  }>;
  /** The highest frequency for which the tables give distances along surfaces. */
  readonly highestFrequency: Hertz;
}
