// Voltages that the file states, and the converter that others are computed from.

import type { Known, Unknown } from '#model/quantity/reading.ts';
import type { Farads, Hertz, Seconds, VoltsDc, VoltsPeak, VoltsRms, Watts } from '#units/quantity.ts';

export interface Converter {
  readonly mode: ConverterMode | Unknown;
  readonly switchingFrequency: Known<Hertz>;
  readonly reflectedVoltage: Known<VoltsPeak>;
  readonly clampOvershoot: Known<VoltsPeak>;
  readonly rail: Rail | Unknown;
  /** Part of the switching period that the switch conducts, where the file gives it. */
  readonly duty: number | null;
  /** Null where the file does not give it: the bulk is then taken to be free of ripple. */
  readonly bulk: BulkCapacitor | null;
  readonly outputs: readonly ConverterOutput[];
  readonly variants: readonly ConverterVariant[];
}

export type ConverterMode = 'continuous' | 'discontinuous';

/** What the converter is fed from: the rectified mains, or a rail behind a power-factor stage at its own voltage. */
export type Rail =
  { readonly kind: 'mains' } | { readonly kind: 'boosted'; readonly voltage: Known<VoltsDc> };

/** The capacitor behind the mains rectifier, at the lowest mains that the device is marked for. */
export interface BulkCapacitor {
  readonly lowestMains: Known<VoltsRms>;
  readonly capacitance: Known<Farads>;
  /** Given out by all outputs together. */
  readonly power: Known<Watts>;
  /** Part of the power taken in. */
  readonly efficiency: number;
  /** For how long the rectifier conducts, in each half period. */
  readonly chargingTime: Known<Seconds>;
}

export interface ConverterOutput {
  readonly circuit: string;
  readonly voltage: Known<VoltsDc>;
}

export interface ConverterVariant {
  readonly name: string;
  readonly outputs: readonly ConverterOutput[];
  readonly switchingFrequency: Known<Hertz> | null;
  /** Null where the variant states none of its own. */
  readonly reflectedVoltage: Known<VoltsPeak> | null;
  readonly clampOvershoot: Known<VoltsPeak> | null;
  /** Turns of windings that differ from the file's layers, by the winding's id. */
  readonly turns: Readonly<Record<string, number>>;
}

export interface WorkingVoltage extends GivenVoltage {
  readonly between: readonly [string, string];
}

/** A working voltage that was measured or stated, of a pair or of one place. */
export interface GivenVoltage {
  readonly rms: Known<VoltsRms> | null;
  readonly peak: Known<VoltsPeak> | null;
  readonly frequency: Known<Hertz> | null;
  readonly basis: 'measured' | 'stated';
}
