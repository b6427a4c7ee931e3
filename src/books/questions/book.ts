// What a rule book is asked, in the judge's words. Every answer carries its derivation, down to the table and the clause.
// Which books there are stands in `shelf.ts`; the procedure of a book lies in its own folder, its figures in `tables`.

import type { Circuit } from '#model/design.ts';
import type { Bridge } from '#model/design/outside.ts';
import type { Supply } from '#model/design/supply.ts';
import type { Confirmed, Judged } from '#standards/because.ts';
import type { Grade, Role } from '#units/terms.ts';
import type { Rule, Rules } from '#standards/tables/rules-in-words.ts';
import type { Table } from '#standards/tables/table.ts';
import type { Amperes, Celsius, Hertz, Nm, Seconds, VoltsPeak } from '#units/quantity.ts';
import type { Insulation } from './insulation.ts';
import type { Question, Required, Transients } from './required.ts';
import type { National } from './national.ts';
import type { BridgeGrade, BridgeQuestion } from '#books/shared/parts/bridge-grade.ts';
import type { Crossed, LevelsOf } from './solid.ts';

export interface Book extends SolidAnswers, HeatAnswers {
  readonly id: string;
  readonly edition: string;
  readonly title: string;
  /** What its verdicts are about where that is not all; null: all that is judged. */
  readonly scope: string | null;
  /** The book's own words for grades, where it has others. */
  readonly gradeWords: Readonly<Partial<Record<Grade, string>>>;
  /** It tells patients from operators. */
  readonly asksMeans: boolean;
  /** Every table that it reads, those of other standards among them, and its rules in words. */
  readonly tables: readonly Table[];
  readonly rules: Rules;
  /** How it is read where its text is thin, or what it says besides, for one pair. */
  readonly remarks: (asked: Question) => readonly BookRemark[];
  /** What the market changes that the build is sold in; null: the file names none. */
  readonly national: (market: string | null) => National | null;
  /** Null: nothing is asked between these two. The order of the roles is the same thing. */
  readonly neededGrade: (a: Role, b: Role) => Judged<Grade | null>;
  /** What the mains brings between two circuits. */
  readonly transients: (supply: Supply, a: Circuit, b: Circuit) => Transients;
  /** Distances, test levels and bridged gaps between two circuits. */
  readonly required: (asked: Question) => Required;
  readonly sheets: () => Judged<SheetRule>;
  /** What solids crossed one after another are worth, each rule an insulation of its own, in series with the others. */
  readonly solids: (crossed: readonly Crossed[], levels: LevelsOf) => readonly Judged<Insulation>[];
  /** What a part that bridges two circuits is worth, and whether one fault of it is unsafe. */
  readonly part: (bridge: Bridge, asked: BridgeQuestion) => BridgeGrade;
  readonly testSeconds: Judged<Seconds>;
  /** Null where the book asks none. */
  readonly routineTest: Judged<{
    readonly secondsLeast: Seconds;
    readonly secondsMost: Seconds;
    /** Part of the type-test level. */
    readonly levelShare: number;
  }> | null;
  /** Null where the book has none, or nobody here has seen it. */
  readonly touchCurrentLimits: TouchCurrentLimits | null;
  /** The highest frequency for which the tables give distances along surfaces. */
  readonly highestFrequency: Hertz;
}

/** How many sheets that can be parted are reinforced: whichever of the rules they meet; null: the book has no such rule. */
export interface SheetRule {
  /** So many that each stand the test. */
  readonly alone: number | null;
  /** So many of which any two together do. */
  readonly anyTwo: number | null;
  /** So many of together so much film. */
  readonly film?: { readonly plies: number; readonly together: Nm };
  /** For supplementary insulation, where that is not the same. */
  readonly supplementary?: number;
}

export type BookRemark =
  | { readonly kind: 'reads'; readonly rule: Rule }
  /** What another standard's rows would ask, where that is more; lengths. */
  | {
      readonly kind: 'other-rows';
      readonly rule: Rule;
      readonly metric: 'clearance' | 'creepage';
      readonly own: Nm;
      readonly other: Nm;
      readonly confirmed: Confirmed;
    };

/** What solids of a build are shown to stand, and from which thickness up they are strong. */
export interface SolidAnswers {
  /** Of one solid layer; as far as it shows the test, it is strong from there. At least a nanometre. */
  readonly leastThickness: () => Judged<Nm>;
  /** Of supplementary insulation, where the book has another for it. */
  readonly leastSupplementary?: () => Judged<Nm>;
  /** Raised test that makes a cemented joint or a potted void solid. */
  readonly proofFactor: Judged<number>;
  /** Part of a film's short-time breakdown that is counted as its withstand; a house rule. */
  readonly filmShare: Judged<number>;
  readonly wireLayers: (layers: 1 | 2 | 3) => Judged<CoverEarns>;
  /**
   * What the type test shows of one cover with so many certified layers: half of two twisted wires, peak. Null: the book
   * has no such test, so that only a stated withstand counts.
   */
  readonly coverShown: (layers: 1 | 2 | 3) => Judged<VoltsPeak | null>;
  /**
   * What a millimetre of a moulding or film is shown to stand, V peak: the share of a film's strength times the field of
   * the table, in which a material has a row that bears its name, else another counts in its place.
   */
  readonly shownPerMm: (material: string | null) => Judged<number>;
}

export type CoverEarns = 'nothing' | 'basic' | 'basic and supplementary' | 'reinforced';

/** Without classes heat is not judged. */
export interface HeatAnswers {
  /** Classes for which the book has limits, rising. */
  readonly thermalClasses: readonly number[];
  /** Highest temperature in normal use; null where the thermal class has no row. */
  readonly insulationTemperature: (thermalClass: number) => Judged<Celsius> | null;
  readonly windingTemperatureOverload: (thermalClass: number, state: OverloadState) => Judged<Celsius> | null;
  /** What a winding's limit is lowered by where a thermocouple reads it, in kelvin. */
  readonly thermocoupleAllowance: Judged<number>;
}

export type OverloadState = 'unprotected' | 'firstHour' | 'afterFirstHour' | 'mean';

export interface TouchCurrentLimits {
  readonly normal: Judged<TouchCurrentLimit>;
  readonly singleFault: Judged<TouchCurrentLimit>;
  readonly protectiveConductor: Judged<Amperes>;
}

export interface TouchCurrentLimit {
  readonly rms: Amperes;
  readonly peak: Amperes;
  readonly dc: Amperes;
}
