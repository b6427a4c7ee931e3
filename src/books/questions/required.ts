// What a rule book is asked of two circuits, and what it answers. Null figures are out of the book's range: then nothing
// reaches them.

import type { Circuit } from '#model/design.ts';
import type { Supply } from '#model/design/supply.ts';
import type { Because, Judged } from '#standards/because.ts';
import type { Grade, MaterialGroup, PollutionDegree } from '#units/terms.ts';
import type { OutOfRange } from '#standards/tables/out-of-range.ts';
import type { Hertz, Metres, Nm, VoltsPeak, VoltsRms } from '#units/quantity.ts';

/** A figure, or why the book has none. */
export type Answered<T> = Judged<T> | OutOfRange;

export interface Both<T> {
  readonly basic: T;
  readonly reinforced: T;
}

export interface Transients {
  /** Required withstand voltage; 0 where no transient is counted. */
  readonly withstand: Answered<VoltsPeak>;
  readonly temporaryOvervoltage: Answered<VoltsPeak>;
  /** With which the tables of the mains were entered. */
  readonly mains: VoltsRms;
}

export interface Question {
  readonly between: readonly [Circuit, Circuit];
  /** Null: nothing is asked between them. */
  readonly needed: Grade | null;
  readonly supply: Supply;
  readonly pollutionDegree: PollutionDegree;
  readonly altitude: Metres;
  /** Why it counts, where the market says so; null: the file does, or its default. */
  readonly altitudeFrom: Because | null;
  /** What stands between them, as it is counted now. */
  readonly rms: VoltsRms;
  readonly peak: VoltsPeak;
  readonly frequency: Hertz;
  readonly transients: Transients;
  /** Whom the insulation protects, where the book asks it. */
  readonly means: Means;
}

export type Means = 'patient' | 'operator';

export interface Required {
  readonly clearance: Both<Answered<Nm>>;
  readonly creepage: (group: MaterialGroup) => Both<Answered<Nm>>;
  /** Electric strength test, peak; `supplementary` where the book has a level of its own for it. */
  readonly test: Both<Answered<VoltsPeak>> & { readonly supplementary?: Answered<VoltsPeak> };
  /** Why the book has no rule for solids here; null where it has. Then no solid counts, and at best every one does. */
  readonly noSolids: OutOfRange | null;
  /** Level for solids of a material (null: of none that is named) at high frequency; null where none is asked. */
  readonly highFrequencyTest: (material: string | null) => Both<Judged<VoltsPeak> | null>;
  /** Gaps narrower than this are bridged. */
  readonly x: Judged<Nm>;
}
