// What the path finder answers: the pieces between every two conductors of a section.

import type { Metric } from '#units/terms.ts';
import type { Nm } from '#units/quantity.ts';
import type { StuffId } from '#solver/section/build.ts';

/** Options that shape a path; `rules` hands them in with their citation. */
export interface PathOptions extends SolidOptions {
  readonly metric: Metric;
  /** Air gaps narrower than this are bridged (creepage only; clearance goes through air of any length). */
  readonly x: Nm;
}

/** Those that say how solids are passed, whatever the metric. */
export interface SolidOptions {
  /** A run through one solid from this thickness up is strong. */
  readonly leastThickness: Nm;
  /** Rank of the tracking group of each stuff, 0 best; index is the stuff. */
  readonly trackingRank: readonly number[];
  /** From which length on a closed joint is strong; left out: from the least thickness. */
  readonly closedFrom?: number;
  /** By stuff: from which length on a run through it is strong; left out: from the least thickness. */
  readonly runs?: readonly (readonly RunStep[])[];
}

/** A run shorter than `below` nanometres counts as one ply of `as`; steps rise, and a run past the last is strong. */
export interface RunStep {
  readonly below: number;
  readonly as: StuffId;
}

/** Number of plies of one stuff that a piece punctures. */
export interface Punctured {
  readonly stuff: StuffId;
  readonly count: number;
}

/** A search tells counts up to here apart. */
export const MANY = 4;

/** One leg of a piece. */
export interface Leg {
  readonly kind: 'surface' | 'air' | 'through' | 'closed-joint';
  readonly from: readonly [Nm, Nm];
  readonly to: readonly [Nm, Nm];
  readonly length: Nm;
  /** Stuff punctured (kind `through`, `closed-joint`). */
  readonly stuff: StuffId | null;
  readonly plies: number;
}

/** A shortest piece between two conductors: no other is shorter with no more of what the search counts. */
export interface Piece {
  readonly between: readonly [string, string];
  readonly length: Nm;
  /** All plies punctured. */
  readonly plies: number;
  readonly punctured: readonly Punctured[];
  /** Worst tracking rank of the solids that it runs along; 0 where it runs along none. */
  readonly rank: number;
  /** First and last point. */
  readonly from: readonly [Nm, Nm];
  readonly to: readonly [Nm, Nm];
  /** The legs in order from the first conductor of `between`; worked out only when asked for. */
  readonly trace: () => readonly Leg[];
}
