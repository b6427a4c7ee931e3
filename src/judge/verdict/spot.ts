// A weak spot: where on which section a pair falls short or is not shown, and why.

import type { Grade, Metric } from '#units/terms.ts';
import type { Answer } from './answer.ts';
import type { Condition } from './assumed.ts';

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
  | {
      readonly of: 'path';
      readonly plies: number;
      readonly over: readonly string[];
      /** It is a screen that drifts, not a tape. */
      readonly screen: boolean;
      /** The lead that it ends on, `P start`; null: none, or either of two. */
      readonly lead: string | null;
      /** The way runs in that lead's sleeve. */
      readonly sleeved: boolean;
    }
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
      /** Where the capacitance of the windings is from; null where none is counted. */
      readonly windings: 'estimate' | 'field' | null;
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
