// Layers from the tube outward: windings, tapes, screens, with their margins.

import type { Known, Reading, Unknown } from '#model/quantity/reading.ts';
import type { Nm } from '#units/quantity.ts';
import type { Side } from '#units/terms.ts';
import type { Sheet, Withstand } from './sheet.ts';
import type { Lead } from './winding.ts';

export type Layer = WindingLayer | TapeLayer | ScreenLayer;

export interface WindingLayer {
  readonly kind: 'winding';
  readonly chamber: number;
  readonly winding: string;
  readonly turns: number | Unknown;
  readonly strands: number;
  readonly spread: boolean;
  readonly margins: Margins;
  /** A measured position along x inside the chamber; wins over the margins. */
  readonly extent: { readonly from: Known<Nm>; readonly to: Known<Nm> } | null;
  /** Lies in the band of the layer before it. */
  readonly beside: boolean;
}

export interface TapeLayer extends Sheet {
  readonly kind: 'tape';
  readonly chamber: number;
  /** Plies that cannot be parted. */
  readonly bonded: boolean;
  /** The joints between its plies are closed; needs `surroundings.proof`. */
  readonly cemented: boolean;
  readonly inset: Record<Side, Known<Nm>>;
  readonly margins: Margins;
  /** Edges turned up the flange; earns credit only when `evidence` names the field. */
  readonly turnUp: Known<Nm> | null;
}

export interface ScreenLayer {
  readonly kind: 'screen';
  readonly chamber: number;
  /** Null: floating. */
  readonly circuit: string | null;
  readonly id: string | null;
  readonly thickness: Known<Nm>;
  /** The ends overlap, with plies of tape between. */
  readonly overlap: Sheet | null;
  readonly inset: Record<Side, Known<Nm>>;
  readonly margins: Margins;
  /** Null: floating, so that there is none. */
  readonly lead: Lead | 'not-judged' | Unknown | null;
}

export type Margins = Record<Side, Margin>;

export interface Margin {
  readonly width: Reading<Nm>;
  readonly filled: boolean;
  readonly height: Known<Nm> | null;
  readonly moulded: boolean;
  readonly material: string | null;
  readonly withstand: Withstand | Unknown;
}
