// The verdict as it is printed by `judge --json` (format layerwright-verdict/1) and shown on the page.
// Public contract: lengths in mm, voltages in V, frequency in Hz. Fields may be added, none renamed.

import type { Because, Confirmed } from '#standards/because.ts';
import type { Grade, Metric } from '#units/terms.ts';
import type { Answer } from './answer.ts';
import type { CountedAs, TurningFigure } from './assumed.ts';
import type { PairVerdict } from './pair.ts';
import type { NotJudged, Remark } from './remark.ts';
import type { WeakSpot } from './spot.ts';

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
  /** Where the capacitance of the windings comes from; null where none is counted. */
  readonly windings: 'estimate' | 'field' | null;
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
