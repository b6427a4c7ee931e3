// What the field says of a build, as `field --json` prints it (format layerwright-field/1). Public contract: fields may be
// added, none renamed. Lengths in mm, volts are peak, field strength in V/mm, capacitances in farads.

import type { Confirmed } from '#standards/because.ts';

export interface FieldReport {
  readonly format: 'layerwright-field/1';
  readonly title: string;
  readonly section: string;
  /** Why there is no field; null where there is one. */
  readonly none: NoField | null;
  /** Turned round the axis of a round tube, instead of a plane section times the mean turn. */
  readonly turned: boolean;
  readonly capacitances: readonly FieldCapacitance[];
  /** The same between circuits alone, what floats taken out: it passes the field on. */
  readonly effective: readonly FieldCapacitance[];
  /** Between every two windings, everything else held; empty where every circuit has one winding only. */
  readonly windings: readonly WindingCapacitance[];
  readonly cases: readonly ReportedCase[];
  /** Where discharge would start, least margin first. */
  readonly gaps: readonly FieldGap[];
  /** Peak across its own pair at which discharge starts in the first of the gaps; null without any. */
  readonly inceptionPeak: number | null;
  readonly division: readonly DividedPart[];
  readonly switching: readonly SwitchingCharge[];
  /** What capacitances may be off by, as a part, from two resolutions: the worst of those over a fiftieth of the largest, which
   * are the ones the mesh is made for; each has its own `error` besides. Null without a field, or after a first look on one mesh. */
  readonly error: number | null;
  readonly altitude: number;
  readonly permittivities: readonly {
    readonly what: string;
    readonly value: number;
    readonly confirmed: Confirmed;
  }[];
  /** Points of the finer mesh. */
  readonly points: number;
}

export type NoField =
  | {
      readonly kind: 'touching';
      readonly between: readonly [string, string];
      readonly at: readonly [number, number];
    }
  | { readonly kind: 'alone' }
  | { readonly kind: 'too-many-turns'; readonly turns: number; readonly most: number };

export interface FieldCapacitance {
  readonly between: readonly [string, string];
  readonly farads: number;
  /** Null where the field was turned round an axis. */
  readonly perMetre: number | null;
  /** Null where one mesh alone was looked at. */
  readonly error: number | null;
  readonly meanTurn: number | null;
  /** Farads, of all facing layers of the two as parallel plates; null where none was made. */
  readonly estimate: number | null;
}

export interface WindingCapacitance {
  /** Ids of the windings. */
  readonly between: readonly [string, string];
  readonly farads: number;
  /** Part by which it may be off; null where one mesh alone was looked at. */
  readonly error: number | null;
  /** Null where the field was turned round an axis. */
  readonly meanTurn: number | null;
}

export interface ReportedCase {
  readonly between: readonly [string, string];
  readonly peak: number;
  readonly byTurn: boolean;
  readonly coreTied: string | null;
  /** At what the core stands; null where there is none in the section. */
  readonly core: number | null;
  readonly strongest: number;
}

export interface FieldGap {
  readonly between: readonly [string, string];
  /** The middle of the field line. */
  readonly at: readonly [number, number];
  readonly points: readonly (readonly [number, number])[];
  readonly length: number;
  readonly peak: number;
  /** Part by which that may be off, by what the coarser mesh says; null where one mesh alone was looked at. */
  readonly error: number | null;
  readonly holds: number;
  /** What it holds by what it carries. */
  readonly margin: number;
  /** Layers of the file at its two ends; null for the former, the core and the frame. */
  readonly layers: readonly [number | null, number | null];
  readonly ends: readonly [GapEnd, GapEnd];
  /** Peak across its own pair at which it would discharge. */
  readonly startsAt: number;
  /** Peak of the pair's proving test; null where none is asked. */
  readonly test: number | null;
  /** What sets the limit: the length of the gap, or the field at the wire. */
  readonly by: 'paschen' | 'peek';
}

export type GapEnd = 'turn' | 'ply' | 'block' | 'former' | 'wrap' | 'screen' | 'core' | 'frame';

/** From metal to metal through the first gap. */
export interface DividedPart {
  readonly what: GapEnd | 'air' | 'enamel';
  readonly layer: number | null;
  readonly ply: number | null;
  readonly length: number;
  readonly volts: number;
}

/** Charge driven onto what may be touched by a volt of switching at the primary's switched end. */
export interface SwitchingCharge {
  readonly onto: string;
  /** Farads: coulombs a volt. */
  readonly farads: number;
  /** Part by which it may be off; null where one mesh alone was looked at. */
  readonly error: number | null;
  /** With every bonded screen left to float: what it would be without them. Null where there is none. */
  readonly withoutScreens: number | null;
  /** A through it for each volt rms of the fundamental; null where no frequency is given. */
  readonly amperesPerVolt: number | null;
}
