// What was counted without being known, what it would have to be, and what a path stands on that nobody knows: kinds with
// their figures. `words` makes the sentences. Lengths in mm, voltages in V, frequency in Hz.

import type { Cite } from '#standards/because.ts';

/** What needs no figure. */
export type PlainlyCounted =
  | 'anywhere'
  | 'as-between-windings'
  | 'as-the-mains'
  | 'certified'
  | 'cover-earns-nothing'
  | 'current-not-shown'
  | 'each-side'
  | 'either-mode'
  | 'enamelled'
  | 'film-under-least'
  | 'floating-or-tied'
  | 'full-row'
  | 'left-out'
  /** A record of several figures, some of which are missing: as if it were not there. */
  | 'in-part'
  | 'mains-rail'
  | 'marked-voltage'
  | 'no-approval'
  | 'no-length'
  | 'no-safety-part'
  | 'no-sleeve'
  | 'no-strength'
  | 'one-ply'
  | 'patient'
  | 'pollution-2'
  | 'rated-enough'
  | 'riser'
  | 'tenth-more'
  | 'thermocouple'
  | 'tracking-iiib'
  | 'turns-by-voltage'
  | 'unsleeved-riser'
  | 'unsleeved-risers'
  | 'unshown-ply'
  | 'worse-end';

/** What an open field was counted as. */
export type CountedAs =
  | { readonly as: PlainlyCounted }
  | { readonly as: 'computed'; readonly quantity: 'rms' | 'peak'; readonly value: number }
  | { readonly as: 'floor'; readonly quantity: 'rms' | 'peak'; readonly value: number }
  | { readonly as: 'frequency'; readonly hertz: number }
  | { readonly as: 'grade' | 'lowest-grade'; readonly grade: number }
  | { readonly as: 'overall' | 'ply'; readonly mm: number }
  /** V peak. */
  | { readonly as: 'type-test' | 'stated-test' | 'per-mm'; readonly peak: number }
  /** A share of a table's figure, V rms. */
  | { readonly as: 'share-of-table'; readonly share: number; readonly rms: number }
  /** What the market that the file names lays down; altitude in m. */
  | {
      readonly as: 'market';
      readonly market: string;
      readonly quantity: 'altitude' | 'category';
      readonly value: number;
      readonly cite: Cite;
    }
  /** As it stands in the file. */
  | { readonly as: 'value'; readonly value: string };

export const plainly = (as: PlainlyCounted): CountedAs => ({ as });

/** What an open field would have to be for the verdict to turn; `best`: the best that such a field may be. */
export interface TurningFigure {
  readonly at:
    | { readonly as: 'best' }
    | { readonly as: 'width' | 'thickness'; readonly mm: number }
    | { readonly as: 'frequency'; readonly hertz: number }
    | { readonly as: 'voltage'; readonly volts: number };
  /** Not by itself. */
  readonly together: boolean;
}

/** What a path stands on that nobody knows. Layers counted from 1. */
export type Condition =
  | { readonly if: 'reaches-flange'; readonly layer: number; readonly side: 'left' | 'right' }
  | { readonly if: 'one-ply' | 'full-row'; readonly layer: number }
  | { readonly if: 'ply-stands'; readonly layer: number; readonly counted: CountedAs }
  | { readonly if: 'enamelled' | 'cover-earns-nothing' | 'cover-as-shown'; readonly winding: string }
  | {
      readonly if:
        | 'thin-wall'
        | 'thin-flange'
        | 'core-tied'
        | 'core-near'
        | 'no-sleeve'
        | 'thin-sleeve'
        | 'short-sleeve'
        | 'no-strength'
        | 'riser'
        | 'that-side'
        | 'bare-riser'
        | 'no-distance'
        | 'at-the-rim'
        | 'worst-tracking';
    }
  | { readonly if: 'counted'; readonly field: string; readonly counted: CountedAs };
