// What a pair of circuits has to stand in use, and where each figure came from: the shapes that this room answers with.
// Voltages are true rms with their direct part, and recurring peaks, at rated supply.

import type { ConverterMode } from '#model/design/voltages.ts';
import type { Because } from '#standards/because.ts';
import type { Hertz, VoltsPeak, VoltsRms } from '#units/quantity.ts';

export type Basis = 'measured' | 'stated' | 'computed' | 'floor';

/** What of a design is set at its best, by the path of the field; all else counts as worst. */
export type BestFields = (field: string) => boolean;

export interface PairStressResult {
  /** In the order of the file's circuits. */
  readonly between: readonly [string, string];
  readonly rms: VoltsRms;
  readonly peak: VoltsPeak;
  /** Highest recurring frequency. */
  readonly frequency: Hertz;
  /** The weakest basis of rms and peak. */
  readonly basis: Basis;
  /** Basis of each figure by itself. */
  readonly from: { readonly rms: Basis; readonly peak: Basis; readonly frequency: Basis };
  /** The part of itself by which each figure may be higher, because it is computed; 0 where it is not. */
  readonly within: { readonly rms: number; readonly peak: number };
  /** Fields that would settle the voltages better, if they were known; none of those that are set at their best. */
  readonly open: readonly OpenVoltage[];
  /** What the converter gives for this pair, also where measured figures win; null where it says nothing. */
  readonly computed: ComputedStress | null;
  readonly because: Because;
  readonly notes: readonly StressNote[];
}

export interface OpenVoltage {
  readonly field: string;
  readonly counted:
    | { readonly as: 'either-mode' | 'marked-voltage' | 'mains-rail' | 'turns-by-voltage' }
    | { readonly as: 'computed'; readonly quantity: 'rms' | 'peak'; readonly value: number };
}

export interface ComputedStress {
  readonly rms: ComputedFigure<VoltsRms>;
  readonly peak: ComputedFigure<VoltsPeak>;
  readonly frequency: Hertz;
}

export interface ComputedFigure<Q> {
  readonly value: Q;
  /** Both figures of these two ends. */
  readonly rms: VoltsRms;
  readonly peak: VoltsPeak;
  /** The two ends that it stands between, one of each circuit in the pair's order. */
  readonly ends: readonly [EndName, EndName];
  /** Name of the variant, or null for the converter's own outputs. */
  readonly variant: string | null;
  readonly line: 'high' | 'low';
  readonly mode: ConverterMode;
  readonly waveform: PairWaveform;
  readonly because: Because;
}

/** One end of a winding, or a rail beside it. */
export interface EndName {
  readonly circuit: string;
  /** Null where the circuit has no winding. */
  readonly winding: string | null;
  readonly at: 'bulk-plus' | 'bulk-minus' | 'switched' | 'return' | 'output-plus' | 'tied';
  /** In which lead of the winding its rectifier is taken to lie; the file does not say, so both are tried. */
  readonly diode: 'plus-lead' | 'return-lead' | null;
}

/**
 * Voltage from the first end to the second over one mains period. In each switching state it is
 * `level + swing x sin(angle of the mains)`; `share` is the part of the switching period, 0 for a spike.
 */
export interface PairWaveform {
  readonly swing: VoltsPeak;
  readonly mainsFrequency: Hertz;
  readonly switchingFrequency: Hertz;
  readonly states: readonly WaveformState[];
}

export interface WaveformState {
  readonly state: SwitchingState;
  readonly share: number;
  readonly level: VoltsPeak;
}

/** `spike`: the moment of turning off, with the clamp's overshoot. `idle`: discontinuous mode, after the energy went out. */
export type SwitchingState = 'on' | 'off' | 'spike' | 'idle';

export type StressNote =
  | {
      readonly kind: 'raised-to-mains';
      readonly quantity: 'rms' | 'peak';
      readonly from: number;
      readonly to: number;
    }
  | { readonly kind: 'peak-raised-to-rms'; readonly from: number; readonly to: number }
  | {
      readonly kind: 'double-barrier';
      readonly quantity: 'rms' | 'peak' | 'frequency';
      readonly as: readonly [string, string];
      readonly to: number;
    }
  /** A voltage is given, the frequency of its parts is not; `entry` is its place in the file's `workingVoltages`. */
  | { readonly kind: 'frequency-not-given'; readonly entry: number; readonly counted: number }
  /** Tied to the mains at its plus pole instead of its return, the circuit would give more than an estimate's width. */
  | { readonly kind: 'other-pole'; readonly circuit: string; readonly rms: number; readonly peak: number }
  /** The converter says nothing of this circuit: it is tied in the worst way. */
  | { readonly kind: 'not-in-converter'; readonly circuit: string }
  /** Several windings lie in the primary circuit: this many turns were counted as the primary's. */
  | { readonly kind: 'primary-turns'; readonly turns: number; readonly by: 'output' | 'fewest' }
  /** Turns and reflected voltage give this circuit another voltage than the file. */
  | {
      readonly kind: 'turns-disagree';
      readonly circuit: string;
      readonly given: number;
      readonly byTurns: number;
    }
  /** The stated figure lies under the computed one, which counts until the stated one is measured. */
  | {
      readonly kind: 'stated-below-computed' | 'measured-unlike-computed';
      readonly quantity: 'rms' | 'peak';
      readonly given: number;
      readonly computed: number;
    }
  /** At the lowest mains the bulk sinks to this between two charges; there the low line is taken. */
  | { readonly kind: 'bulk-valley'; readonly mains: number; readonly bulk: number }
  /** The capacitor would be empty before the next charge: the low line is taken without ripple. */
  | { readonly kind: 'bulk-empty'; readonly mains: number }
  /** No winding of a mains circuit is left to be the primary: nothing could be computed. */
  | { readonly kind: 'no-primary' };
