// The former, the core and the conductors outside the window.

import type { Known, Reading, Unknown } from '#model/quantity/reading.ts';
import type { Nm } from '#units/quantity.ts';
import type { Sheet } from './sheet.ts';

export interface Former {
  readonly height: Known<Nm>;
  readonly wall: Wall | Unknown;
  readonly flange: Reading<Nm>;
  /** Id in the table of formers; unknown counts as tracking group IIIb. */
  readonly material: string | Unknown;
  /** Tube, flanges and dividers are separate pieces: the seams between them are open. */
  readonly split: boolean;
  readonly chambers: readonly { readonly width: Known<Nm> }[];
  readonly dividers: readonly Known<Nm>[];
  /** Gives the length of a turn; null where nobody measured it. */
  readonly tube: Tube | null;
}

/** The tube's outer face, on which the first layer lies. */
export interface Tube {
  readonly shape: 'round' | 'rectangular';
  readonly width: Known<Nm>;
  readonly depth: Known<Nm>;
}

/** A moulded tube, or one wound from plies. */
export type Wall =
  { readonly kind: 'moulded'; readonly thickness: Known<Nm> } | ({ readonly kind: 'plies' } & Sheet);

export interface Core {
  /** `floating`, the id of a circuit, or unknown (also when left out). */
  readonly bond: string | Unknown;
  readonly outerGap: Reading<Nm>;
  /** Tape round the core. */
  readonly wrap: Sheet | null;
}

/** An outer band, a clip: a conductor outside the window. */
export interface Part {
  readonly id: string;
  readonly bond: string;
  readonly touches: readonly string[];
}
