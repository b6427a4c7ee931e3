// What is asked of a part that bridges two circuits, and what the answer holds.

import type { OvervoltageCategory, Grade } from '#units/terms.ts';
import type { Because, Judged } from '#standards/because.ts';
import type { Nm, VoltsRms } from '#units/quantity.ts';

export type CapacitorClass = 'Y1' | 'Y2' | 'Y4' | 'X1' | 'X2' | 'none' | 'unknown';

/** What a rule book says of parts. */
export interface PartTables {
  readonly capacitorGrade: (
    safetyClass: CapacitorClass,
  ) => Judged<'none' | 'functional' | 'basic' | 'reinforced'>;
  /** No part of the class is rated higher; null where the class has none. */
  readonly capacitorRatedAtMost: (safetyClass: CapacitorClass) => Judged<VoltsRms> | null;
  /** Inside a part without approval. */
  readonly leastThickness: () => Judged<Nm>;
  /** Up to which mains and category one part earns the grade of its class. */
  readonly singlePart: Judged<{ readonly mainsMost: VoltsRms; readonly categoryMost: number }>;
}

export interface BridgeQuestion {
  /** A grade from basic up is asked between its two circuits. */
  readonly barrier: boolean;
  /** Whom the barrier protects, where the book asks it; left out: the patient. */
  readonly means?: 'patient' | 'operator';
  /** Working voltage of the pair. */
  readonly rms: VoltsRms;
  readonly mains: VoltsRms;
  readonly category: OvervoltageCategory;
  /** Null where the book has no figure: then no distance reaches it. */
  readonly required: { readonly clearance: Reach; readonly creepage: Reach } | null;
  /** Whether what the file leaves open of a field is counted at its best. */
  readonly isBest: (key: OpenKey) => boolean;
}

/** What a file may leave open of a part. */
export type OpenKey = 'safetyClass' | 'approval' | 'clearance' | 'creepage' | 'working';

export interface Reach {
  readonly basic: Nm;
  readonly reinforced: Nm;
}

export type Unsafe = 'class' | 'rating' | 'single-part';

export interface BridgeGrade {
  readonly id: string;
  readonly between: readonly [string, string];
  readonly grade: Grade;
  /** Why one fault of this part would put the mains on the other side; null where it would not. */
  readonly unsafe: Unsafe | null;
  /** No rating is given, so that it is taken to be high enough. */
  readonly ratingAssumed: boolean;
  /** The distance round it that is too short for the grade that the part itself has; null where none is. */
  readonly short: ShortDistance | null;
  readonly because: Because;
}

export interface ShortDistance {
  readonly metric: 'clearance' | 'creepage';
  /** Null: the file leaves it out. */
  readonly length: Nm | null;
  readonly required: Nm;
}

/** What a kind of part says before its rating is asked. */
export interface PartGrade {
  readonly grade: Grade;
  readonly unsafe: Unsafe | null;
  readonly short: ShortDistance | null;
  readonly because: readonly Because[];
}
