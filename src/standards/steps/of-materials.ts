// What the steps hold that find a wire's size or what a solid stands. Lengths in mm, voltages in V.

interface WireSize {
  readonly conductor: number;
  readonly grade: number;
  /** The conductor of the row that was read, and whether it is this one. */
  readonly row: number;
  readonly exact: boolean;
  readonly overall: number;
}

export interface MaterialSteps {
  readonly 'film-breakdown': {
    readonly tape: string;
    readonly film: number;
    readonly row: number;
    readonly value: number;
  };
  readonly 'round-wire': WireSize & {
    readonly minIncrease: number;
    readonly breakdown: number | null;
    readonly specimen: string | null;
  };
  readonly 'fully-insulated-wire': WireSize & { readonly leastBreakdown: number };
  readonly 'fully-insulated-strength': {
    readonly conductor: number;
    readonly increase: number;
    readonly perMicrometre: number;
    readonly value: number;
  };
  readonly 'layer-insulated-wire': {
    readonly conductor: number;
    readonly growth: number;
    readonly value: number;
  };
  readonly 'litz-bundle': {
    readonly strands: number;
    readonly serving: string;
    readonly packing: number;
    readonly growth: number;
    readonly value: number;
  };
  readonly 'bare-wire': { readonly field: string };
  readonly 'stated-diameter': { readonly field: string };
  /** Nobody knows it; `value` in mm is what it is counted as. */
  readonly 'unknown-diameter': { readonly field: string; readonly value: number };
  readonly 'wire-cover': { readonly winding: string; readonly layers: number };
  readonly 'full-cover': {
    readonly winding: string;
    readonly grade: number | null;
    readonly breakdown: number | null;
    readonly peak: number | null;
  };
  /** `shape`: rms or dc, as it was stated. */
  readonly 'stated-withstand': {
    readonly field: string;
    readonly value: number;
    readonly shape: string;
    readonly peak: number;
  };
  readonly 'taken-to-stand': { readonly field: string };
  readonly 'film-share': {
    readonly material: string | null;
    readonly breakdown: number;
    readonly share: number;
    readonly peak: number;
  };
  readonly 'no-strength': { readonly material: string | null };
  readonly 'margin-block': { readonly field: string };
  readonly sleeve: { readonly field: string; readonly wall: number };
  readonly moulding: { readonly material: string | null; readonly group: string };
  readonly 'closed-joint': { readonly proven: boolean };
}
