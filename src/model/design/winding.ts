// Windings: their wire, leads and links.

import type { Known, Reading, Unknown } from '#model/quantity/reading.ts';
import type { Nm } from '#units/quantity.ts';
import type { Side } from '#units/terms.ts';
import type { Withstand } from './sheet.ts';

export type WireKind = 'bare' | 'enamelled' | 'fully-insulated' | 'layer-insulated' | 'litz';

export interface Wire {
  readonly kind: WireKind | Unknown;
  readonly conductor: Reading<Nm> | null;
  /** Enamel 1 to 3; fully insulated wire 3 to 9. */
  readonly grade: number | Unknown;
  readonly insulationLayers: 1 | 2 | 3 | Unknown;
  readonly approval: 'wire-annex' | 'none' | Unknown;
  /** Wins over the tables. */
  readonly overallDiameter: Known<Nm> | null;
  /** What the cover was shown to stand. */
  readonly withstand: Withstand | Unknown;
  /** Litz: number of strands in one wire, each of `conductor` diameter, and whether it is served. */
  readonly litzStrands: number | null;
  readonly served: boolean;
}

export interface Winding {
  readonly id: string;
  readonly circuit: string;
  readonly wire: Wire;
  /** End turns bonded or taped down; earns credit only when `evidence` names the field. */
  readonly anchored: boolean;
  readonly leads: WindingLeads | 'not-judged' | Unknown;
  /** One per gap between layers of this winding that others lie in; unknown where left out although there are gaps. */
  readonly links: readonly Link[] | Unknown;
}

export interface WindingLeads {
  readonly start: Lead | Unknown;
  readonly finish: Lead | Unknown;
}

export interface Lead {
  readonly at: Side | Unknown;
  readonly exit: Side | Unknown;
  readonly way: 'slot' | 'riser' | 'top' | Unknown;
  readonly sleeve: Sleeve | null | Unknown;
  /** Length along the lead outside the flange from where it is bare. */
  readonly bareFrom: Reading<Nm>;
  /** Plies of the next tape between a lead that crosses back and its own winding. */
  readonly crossTape: number;
  /** Distance round the circumference to other leads at the same side. */
  readonly apart: Known<Nm> | null;
}

export interface Sleeve {
  readonly material: string | null;
  readonly wall: Reading<Nm>;
  /** How far it reaches inside the flange's inner face. */
  readonly into: Reading<Nm>;
  readonly withstand: Withstand | Unknown;
}

export interface Link {
  readonly side: Side | Unknown;
  readonly way: 'riser' | Unknown;
  readonly sleeve: Sleeve | null | Unknown;
}
