// The verdict as it is printed by `judge --json` (format layerwright-verdict/1) and shown on the page.
// Public contract: lengths in mm, voltages in V, frequency in Hz. Fields may be added, none renamed.

import type { SheetRule } from '#books/questions/book.ts';
import type { Because, Confirmed } from '#standards/because.ts';
import type { Condition, CountedAs, TurningFigure } from './assumed.ts';
import type { NotJudged, Remark } from './remark.ts';

export type Grade = 'none' | 'functional' | 'basic' | 'supplementary' | 'double' | 'reinforced';
export type Answer = 'meets' | 'falls-short' | 'not-shown';
export type Metric = 'creepage' | 'clearance';

export interface Verdict {
  readonly format: 'layerwright-verdict/1';
  readonly title: string;
  readonly rules: { readonly id: string; readonly edition: string };
  readonly verdict: Answer;
  /** What the verdict leaves out; with anything in it every wording says "inside the winding window only". */
  readonly notJudged: readonly NotJudged[];
  /** With a floating core: the verdict were it counted with the mains side. */
  readonly coreAsPrimary: CoreAsPrimary | null;
  readonly pairs: readonly PairVerdict[];
  /** Null where nothing touchable faces the mains. */
  readonly touchCurrent: JudgedTouchCurrent | null;
  readonly weakSpots: readonly WeakSpot[];
  readonly fit: Fit;
  readonly remarks: readonly Remark[];
  readonly assumptions: readonly Assumption[];
  /** Least confirmed figure that the verdict rests on. */
  readonly restsOn: Confirmed;
}

/** What a person takes who touches the output, mA. */
export interface JudgedTouchCurrent {
  readonly rms: number;
  readonly peak: number;
  /** Of the rms. */
  readonly limit: number;
  readonly verdict: Answer;
  /** Parts of which no value is given. */
  readonly missing: readonly string[];
  readonly because: Because;
}

export interface CoreAsPrimary {
  readonly verdict: Answer;
  readonly pairs: readonly {
    readonly between: readonly [string, string];
    readonly achieved: Grade;
    readonly verdict: Answer;
    readonly length: number | null;
    readonly required: number | null;
    readonly metric: Metric | null;
  }[];
}

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

/** Where a leg runs: along what, up or down which edge, through which solid. `back`: as it went out, the other way. */
export type LegCourse =
  | { readonly by: 'air' | 'closed-joint' | 'contact' }
  | { readonly by: 'over'; readonly conductor: string }
  | {
      readonly by: 'through';
      readonly what: 'plies' | 'wrap' | 'block' | 'sleeve' | 'cover' | 'wall';
    }
  | {
      readonly by: 'along';
      readonly what: 'margin' | 'tape' | 'former' | 'sleeve' | 'cover' | 'surface';
      readonly back: boolean;
    }
  | {
      readonly by: 'up' | 'down';
      readonly what: 'tape-edges-at-flange' | 'tape-edge' | 'flange' | 'block';
    };

export interface PathLeg {
  readonly kind: 'surface' | 'air' | 'through' | 'closed-joint' | 'over';
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly length: number;
  readonly plies: number;
  /** Null where nothing is known but where it lies. */
  readonly course: LegCourse | null;
  /** Its piece is shorter than X and ends on a conductor that floats: its length adds nothing. Left out: it counts. */
  readonly counts?: false;
}

/** Shortest whole path of one metric that punctures at most `plies` plies, over all sections. */
export interface PrintedPath {
  readonly metric: Metric;
  readonly plies: number;
  readonly length: number | null;
  readonly grade: Grade | null;
  readonly section: string | null;
  /** Floating conductors that it runs over. */
  readonly over: readonly string[];
  readonly points: readonly (readonly [number, number])[];
  readonly legs: readonly PathLeg[];
  readonly pieces: readonly {
    readonly between: readonly [string, string];
    readonly length: number;
    /** What of the length counts: nothing where it is shorter than X. */
    readonly counted: number;
    readonly plies: number;
  }[];
  readonly required: { readonly basic: number | null; readonly reinforced: number | null } | null;
}

export type SpotKind =
  | 'unsafe-bridge'
  | 'weak-bridge'
  | 'touch-current'
  | 'touching'
  | 'enamel-only'
  | 'overfull'
  | 'hot'
  | 'core-bridge'
  | 'lead-crossing'
  | 'bare-lead'
  | 'lead-in-margin'
  | 'uncovered-tape-edge'
  | 'drifting-tape'
  | 'loose-end'
  | 'narrow-margin'
  | 'few-plies'
  | 'weak-ply'
  | 'thin-wall'
  | 'short-creepage'
  | 'short-clearance';

export interface WeakSpot {
  readonly kind: SpotKind;
  readonly between: readonly [string, string] | null;
  readonly section: string;
  /** Where the flag stands, mm. */
  readonly at: readonly [number, number];
  /** It is there whatever the unknowns are. */
  readonly proven: boolean;
  /** Mirror places of the same cause. */
  readonly also: readonly (readonly [number, number])[];
  /** Indices in the file's `layers`. */
  readonly layers: readonly number[];
  readonly metric: Metric | null;
  readonly length: number | null;
  readonly required: number | null;
  readonly achieved: Grade;
  readonly needed: Grade | null;
  readonly verdict: Answer;
  /** What it stands on that nobody knows; empty where it is proven. */
  readonly conditions: readonly Condition[];
  readonly points: readonly (readonly [number, number])[];
  /** What `words` makes its sentence of, and the one on what would mend it. */
  readonly cause: SpotCause;
}

/** What a spot comes from, beside its kind, its grades and its lengths. */
export type SpotCause =
  | { readonly of: 'path'; readonly plies: number; readonly over: readonly string[] }
  | { readonly of: 'bridge'; readonly bridge: SpotBridge }
  | {
      readonly of: 'heat';
      readonly hottest: number;
      readonly plusMinus: number;
      readonly limit: number;
      readonly made: { readonly thermalClass: number; readonly of: readonly string[] } | null;
      readonly open: { readonly method: boolean; readonly thermalClass: boolean };
    }
  | {
      readonly of: 'touch-current';
      /** V */
      readonly mains: number;
      /** mA */
      readonly rms: number;
      readonly limit: number;
      readonly missing: readonly string[];
    }
  | { readonly of: 'stack' }
  | { readonly of: 'turn'; readonly layer: number };

export interface SpotBridge {
  readonly id: string;
  readonly grade: Grade;
  readonly unsafe: 'class' | 'rating' | 'single-part' | null;
  /** mm */
  readonly short: {
    readonly metric: Metric;
    readonly length: number | null;
    readonly required: number;
  } | null;
}

export interface Fit {
  readonly height: { readonly used: number; readonly available: number };
  readonly chambers: readonly {
    readonly used: number;
    readonly layers: readonly {
      readonly layer: number;
      readonly rows: number;
      readonly turnsPerRow: number;
      readonly height: number;
      readonly doubtful: boolean;
      /** Not even one turn finds room in the width that the layer has. */
      readonly tooWide: boolean;
    }[];
  }[];
}

export interface Assumption {
  /** Path of the field. */
  readonly field: string;
  /** The pair that a voltage belongs to; null where it is not of one pair. */
  readonly between: readonly [string, string] | null;
  /** What it was counted as. */
  readonly counted: CountedAs;
  /** Set alone at its best it changes a pair's verdict. */
  readonly decides: boolean;
  /** What it would have to be for that; null where it decides nothing. */
  readonly figure: TurningFigure | null;
  /** Verdict over all with this one at its best; null where it shapes nothing. */
  readonly atBest: Answer | null;
  readonly kind: 'unknown' | 'default' | 'house-rule' | 'interval';
}
