// Sheets in plies, and what a solid was shown to stand.

import type { Known, Reading, Unknown } from '#model/quantity/reading.ts';
import type { Nm, VoltsDc, VoltsRms } from '#units/quantity.ts';

/** Plies of one sheet material. Given figures win over the table's. */
export interface Sheet {
  readonly material: string | null;
  readonly plies: number | Unknown;
  /** Whole tape, for geometry; null: by the material. */
  readonly plyThickness: Reading<Nm> | null;
  /** Base film, for strength. */
  readonly film: Known<Nm> | null;
  readonly plyWithstand: Withstand | Unknown;
}

/** What a solid was shown to stand for 60 s. */
export type Withstand =
  | { readonly kind: 'rms'; readonly value: VoltsRms; readonly plusMinus: VoltsRms }
  | { readonly kind: 'dc'; readonly value: VoltsDc; readonly plusMinus: VoltsDc };
