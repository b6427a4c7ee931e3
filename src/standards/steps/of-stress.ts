// What the steps hold that find working voltages, transients, currents, heat and what a build would break down at.
// V, A, Hz, F, degC; lengths in mm.

type Basis = 'measured' | 'stated' | 'computed' | 'floor';

interface FoundFigure {
  readonly basis: Basis;
  readonly value: number;
}

interface ComputedBetween {
  readonly value: number;
  readonly a: string;
  readonly aAt: string;
  readonly aDiode: string | null;
  readonly b: string;
  readonly bAt: string;
  readonly bDiode: string | null;
  /** The state of the converter in which it stands highest. */
  readonly state: string;
}

export interface StressSteps {
  readonly 'working-voltage': { readonly a: string; readonly b: string; readonly basis: Basis };
  readonly 'working-rms': FoundFigure;
  readonly 'working-peak': FoundFigure;
  readonly 'working-frequency': FoundFigure;
  /** `entry`: its place in the file's `workingVoltages`. */
  readonly 'given-voltage': FoundFigure & { readonly entry: number };
  /** At one place outside the window; `field` gives it. */
  readonly 'place-voltage': {
    readonly field: string;
    readonly rms: number;
    readonly peak: number;
    readonly frequency: number;
  };
  readonly 'given-at-place': FoundFigure & { readonly field: string };
  /** What the file states that the insulation has to withstand of the mains. */
  readonly 'stated-transient': { readonly value: number };
  readonly 'voltage-floor': {
    readonly supply: string;
    readonly rms: number;
    readonly peak: number;
    readonly frequency: number;
  };
  readonly raised: { readonly from: number; readonly to: number };
  readonly 'double-barrier': { readonly from: number; readonly to: number };
  readonly 'estimate-width': { readonly within: number; readonly rms: number; readonly peak: number };
  readonly 'frequency-not-given': { readonly from: number; readonly value: number };
  readonly 'computed-rms': ComputedBetween;
  readonly 'computed-peak': ComputedBetween;
  readonly 'converter-case': {
    readonly variant: string | null;
    readonly mode: string;
    readonly line: string;
    readonly bulk: number;
    readonly reflected: number;
    readonly overshoot: number;
    readonly duty: number;
    readonly frequency: number;
    readonly primary: string;
    readonly turns: number;
  };
  readonly 'local-stress': {
    readonly peak: number;
    readonly rms: number;
    readonly line: string;
    readonly variant: string | null;
    readonly turnA: number;
    readonly turnB: number;
    readonly holds: number | null;
  };
  readonly withstand: { readonly a: string; readonly b: string; readonly value: number };
  readonly 'no-temporary-overvoltage': { readonly supply: string };
  readonly 'no-transient': { readonly a: string; readonly b: string };
  readonly 'supply-as-mains': { readonly supply: string; readonly voltage: number; readonly mains: number };
  /** Solved on the drawn section; `error`: the part by which it may be off. */
  readonly 'field-capacitance': {
    readonly farads: number;
    /** F and mm; null where the field was turned round the tube. */
    readonly perMetre: number | null;
    readonly meanTurn: number | null;
    readonly error: number;
  };
  readonly 'layers-capacitance': {
    readonly farads: number;
    readonly width: number;
    readonly meanTurn: number;
    readonly distance: number;
    readonly permittivity: number;
  };
  readonly 'touch-current-found': {
    readonly mains: number;
    readonly frequency: number;
    readonly plain: number;
    readonly throughBody: number;
    readonly weighed: number;
    readonly rms: number;
    readonly peak: number;
  };
  readonly 'protective-current': { readonly mains: number; readonly value: number };
  readonly 'system-class': { readonly class: number; readonly setBy: string };
  readonly 'class-of': { readonly what: string; readonly field: string; readonly class: number };
  readonly 'heat-limit': { readonly limit: number; readonly allowance: number; readonly value: number };
  readonly 'expected-breakdown': {
    readonly length: number;
    readonly plies: number;
    readonly perPly: number | null;
    readonly enamel: number | null;
    readonly least: number;
    readonly likely: number;
    readonly most: number;
  };
}
