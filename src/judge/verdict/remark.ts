// What is worth saying although it lowers no grade, and what a verdict leaves out: kinds with their figures. `words`
// makes the sentences. Lengths in mm, voltages in V; layers by their place in the file.

import type { Confirmed } from '#standards/because.ts';

export type Remark =
  | { readonly kind: 'no-barrier' }
  | { readonly kind: 'low-supply'; readonly voltage: number }
  | {
      readonly kind: 'end-turns';
      readonly layer: number;
      readonly winding: string;
      readonly sides: readonly ('left' | 'right')[];
    }
  | { readonly kind: 'fit-doubtful' | 'earthed-screen'; readonly layer: number }
  | { readonly kind: 'covered-wire-crossing'; readonly winding: string; readonly end: 'start' | 'finish' }
  | { readonly kind: 'mains-outermost'; readonly winding: string }
  | { readonly kind: 'interpolated'; readonly between: readonly [string, string]; readonly nextRow: number }
  | { readonly kind: 'meets-by-climb'; readonly between: readonly [string, string]; readonly climb: number }
  | {
      readonly kind: 'stated-below-computed' | 'measured-unlike-computed';
      /** As the circuits are called. */
      readonly names: readonly [string, string];
      readonly quantity: 'rms' | 'peak';
      readonly given: number;
      readonly computed: number;
    }
  | {
      readonly kind: 'confirmed-by-user';
      readonly standard: string;
      readonly table: string | null;
      readonly cell: string;
      readonly clause: string;
      readonly on: string;
    }
  /** Confirmed by the user, but it names nothing that is read here. */
  | {
      readonly kind: 'confirmed-nowhere';
      readonly standard: string;
      readonly table: string;
      readonly cell: string;
      readonly missing: 'standard' | 'table' | 'cell';
    }
  | BookRemark;

/** What the rule book says besides; `book`: its title. */
export interface BookRemark {
  readonly kind: `book-${string}`;
  readonly book: string;
  readonly note:
    | { readonly as: 'scope'; readonly scope: string }
    | { readonly as: 'reads'; readonly rule: string }
    | {
        readonly as: 'other-rows';
        readonly metric: 'creepage' | 'clearance';
        readonly own: number;
        readonly other: number;
        readonly names: readonly [string, string];
        readonly fromMemory: boolean;
      }
    | ({ readonly as: 'market'; readonly market: string } & MarketNote);
}

/** What the market changes; `stated`: what the file says of it, which counts; altitudes in m. */
export type MarketNote =
  | {
      readonly what: 'altitude';
      readonly altitude: number;
      readonly stated: number | null;
      readonly known: Confirmed;
    }
  /** No national adoption of the book was seen: the file's, or its default, counts. */
  | { readonly what: 'no-altitude'; readonly altitude: number }
  | { readonly what: 'mains'; readonly volts: number; readonly known: Confirmed }
  | { readonly what: 'category'; readonly category: number; readonly known: Confirmed };

/** What the verdict leaves out. */
export type NotJudged =
  | {
      readonly what:
        | 'below-the-innermost'
        | 'outside'
        | 'parts-near'
        | 'heat'
        | 'heat-in-normal-use'
        | 'enamel-class'
        | 'unnamed-class';
    }
  | { readonly what: 'leads' | 'stripped-ends' | 'link'; readonly winding: string }
  /** `of`: the end as it is called. */
  | { readonly what: 'lead' | 'stripped-end'; readonly of: string }
  | { readonly what: 'undrawn'; readonly circuit: string };
