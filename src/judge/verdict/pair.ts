// What was judged between two circuits. Lengths in millimetres, voltages in volts.

import type { SheetRule } from '#books/questions/book.ts';
import type { Because } from '#standards/because.ts';
import type { Grade, Metric } from '#units/terms.ts';
import type { Answer } from './answer.ts';
import type { Condition } from './assumed.ts';
import type { PathLeg, PrintedPath } from './path.ts';

export interface PairVerdict {
  readonly between: readonly [string, string];
  readonly needed: Grade;
  readonly achieved: Grade;
  /** Achieved with every unknown at its best; what is enough at worst is left as it is. */
  readonly achievedAtBest: Grade;
  readonly verdict: Answer;
  /** Circuits of the pair of which nothing is drawn: there is nothing to judge, and no grade is reached. */
  readonly undrawn: readonly string[];
  /** Figures that are asked for and that the rule book's tables do not have: then nothing is shown. */
  readonly beyond: readonly ('clearance' | 'creepage' | 'test' | 'solid')[];
  /** Outer parts that may bridge the pair: the file does not say where they lie. */
  readonly unplaced: readonly string[];
  readonly stress: PairStress;
  /** Null where nothing is asked. */
  readonly required: Required | null;
  readonly paths: readonly PrintedPath[];
  /** Which of the paths decides, by its place in `paths`; null where no path is left. */
  readonly limiting: Limiting | null;
  /** What limits it whatever the unknowns are; null unless it falls short with every unknown at its best. */
  readonly proven: Proven | null;
  readonly because: Because;
}

/** A path, a part that bridges the pair, or a distance outside the window, by its place in the file. */
export type Proven =
  | Limiting
  | { readonly bridge: string; readonly grade: Grade; readonly because: Because }
  | {
      readonly outside: number;
      readonly what: readonly string[];
      readonly metric: Metric;
      readonly length: number | null;
      readonly required: number | null;
      readonly grade: Grade;
      readonly because: Because;
    };

/** What holds the pair at its achieved grade. */
export interface Limiting {
  readonly metric: Metric | 'bridge';
  /** Length that counts, mm; null for solids and bridges. */
  readonly length: number | null;
  readonly required: number | null;
  readonly grade: Grade;
  readonly section: string | null;
  readonly points: readonly (readonly [number, number])[];
  readonly legs: readonly PathLeg[];
  readonly plies: number;
  readonly over: readonly string[];
  /** What the distances outside the window are called that it runs along. */
  readonly outside: readonly string[];
  /** Id of the part where a bridge holds the pair. */
  readonly bridge: string | null;
  /** What it stands on that nobody knows: `if the lead climbs the flange`. Empty where it was all measured. */
  readonly conditions: readonly Condition[];
  readonly because: Because;
}

export interface PairStress {
  readonly rms: number;
  readonly peak: number;
  readonly frequency: number;
  /** Required withstand voltage (transient), V peak. */
  readonly withstand: number;
  readonly basis: 'measured' | 'stated' | 'computed' | 'floor';
  readonly because: Because;
}

/** Null figures are out of the book's range: nothing reaches them. */
export interface RequiredDistance {
  readonly basic: number | null;
  readonly reinforced: number | null;
  readonly because: Because;
}

export interface Required {
  readonly clearance: RequiredDistance;
  readonly creepage: RequiredDistance & { readonly materialGroup: string };
  readonly throughInsulation: {
    readonly leastThickness: number;
    readonly plies: SheetRule;
    /** Supplementary insulation, where the book has a rule of its own for it. */
    readonly supplementary?: { readonly leastThickness: number; readonly plies: number };
    readonly because: Because;
  };
  readonly test: {
    /** Of the grade that is needed. */
    readonly peak: number | null;
    readonly rms: number | null;
    readonly dc: number | null;
    readonly seconds: number;
    /** Of the basic grade, for single plies. */
    readonly basicPeak: number | null;
    readonly reinforcedPeak: number | null;
    /** Of supplementary insulation, where the book has a level of its own for it. */
    readonly supplementaryPeak?: number | null;
    /** Level of the grade that is needed where the frequency is above 30 kHz; null below. */
    readonly highFrequencyPeak: number | null;
    readonly because: Because;
  };
  /** Where the book tells patients from operators: the distances of both, and which was judged. */
  readonly byMeans?: {
    readonly judged: 'patient' | 'operator';
    readonly patient: MeansDistances;
    readonly operator: MeansDistances;
  };
}

export interface MeansDistances {
  readonly clearance: RequiredDistance;
  readonly creepage: RequiredDistance;
}
