// The drawing of one section as plain data: what lies where, in millimetres, under role names instead of colours.
// x runs along the axis, y outward from the tube (upward on paper). All writers (SVG, DXF and the page's canvas) draw this.

import type { Judgement } from '#judge/judging/judge.ts';
import type { PathLeg } from '#judge/verdict/path.ts';
import type { Metric } from '#units/terms.ts';
import type { CircuitLook } from '#words/design/circuit-look.ts';
import type { Box, Point } from './outline.ts';
import type { MaterialKey } from './palette.ts';

export interface Scene {
  readonly section: string;
  /** `Plain section` and `no lead in it, nothing slumped`. */
  readonly title: string;
  readonly says: string;
  /** Everything drawn, the core's frame included. */
  readonly frame: Box;
  readonly looks: readonly CircuitLook[];
  /** In the order of painting. */
  readonly areas: readonly Area[];
  readonly turns: readonly TurnCircle[];
  /** One letter on each winding, screen and lead-out that has a circuit. */
  readonly letters: readonly Letter[];
  /** Where each layer of the file lies, for leader lines and for picking. */
  readonly layers: readonly LayerPlace[];
  /** Spans of the two rulers: chamber width and stack height. */
  readonly rulers: { readonly x: readonly [number, number]; readonly y: readonly [number, number] };
  /** The path that was asked for, where it lies on this section. */
  readonly path: PathScale | null;
  /** Limiting paths of the other pairs on this section. */
  readonly otherPaths: readonly PathScale[];
  readonly flags: readonly Flag[];
  readonly notes: readonly Note[];
  readonly unknowns: readonly UnknownPlace[];
}

/** A filled figure with one outline, holes included. */
export interface Area {
  readonly id: string;
  /** `counted`: room round a lead in which the worst case counts bare metal. */
  readonly kind: MaterialKey | 'turns' | 'lead' | 'counted' | 'screen';
  readonly layer: number | null;
  /** Id of a circuit; null for solids, the core and what floats. */
  readonly circuit: string | null;
  readonly loops: readonly (readonly Point[])[];
  readonly bounds: Box;
  /** Nobody measured or saw it: drawn dashed, as it was counted. */
  readonly isUnknown?: boolean;
}

export interface TurnCircle {
  readonly x: number;
  readonly y: number;
  /** Diameters. */
  readonly overall: number;
  readonly conductor: number;
  readonly circuit: string;
  readonly layer: number;
}

export interface Letter {
  readonly at: Point;
  readonly letter: string;
  readonly circuit: string;
  readonly layer: number | null;
}

export interface LayerPlace extends Box {
  readonly layer: number;
  readonly chamber: number;
  readonly kind: 'winding' | 'tape' | 'screen';
}

/** What a drawing is made from, for the rooms that do not see the rules. */
export type Drawable = Judgement;

export interface SceneChoices {
  /** The pair whose limiting path is drawn; null: the worst pair. */
  readonly pair?: readonly [string, string] | null;
  /** Draws the path of this spot (its place in `weakSpots`) instead. */
  readonly spot?: number | null;
  /** Draws this one of the pair's printed paths instead of its limiting one. */
  readonly printed?: number | null;
  /** How many flags of spots on other sections are shown. */
  readonly elsewhere?: number;
}

export interface Flag {
  /** 1 is the worst. */
  readonly number: number;
  readonly at: Point;
  /** Where the body of the flag stands, seen from its tip. */
  readonly stands: 'left' | 'right';
  /** The spot is on the section that is drawn. */
  readonly here: boolean;
  readonly section: string;
  /** It falls short; else it is not shown. */
  readonly short: boolean;
}

export interface Note {
  readonly text: string;
  readonly at: Point;
  /** A dimension line with two arrows; null for words alone. */
  readonly line: readonly [Point, Point] | null;
  /** In the tube's wall, as far as that is thick enough; or above what it speaks of. */
  readonly place: 'wall' | 'beside' | 'above';
}

export interface UnknownPlace {
  readonly text: string;
  readonly at: Point;
  /** Its words stand below the sign, not in the figure. */
  readonly beside: boolean;
}

export interface PathScale {
  readonly between: readonly [string, string];
  readonly metric: Metric;
  readonly legs: readonly PathLeg[];
  /** Straight pieces of at most a millimetre of counted length, filled and hollow in turn. */
  readonly pieces: readonly ScalePiece[];
  /** Legs that count no length: over a conductor, across a void into which the tape sags, of a piece that is too short. */
  readonly uncounted: readonly { readonly leg: number; readonly from: Point; readonly to: Point }[];
  readonly punctures: readonly Puncture[];
  readonly ends: readonly [Point, Point];
  readonly shortfall: Shortfall | null;
  readonly length: number;
  readonly required: number | null;
  /** Its pair falls short: drawn in pencil, else in ink. */
  readonly short: boolean;
}

export interface ScalePiece {
  readonly leg: number;
  readonly from: Point;
  readonly to: Point;
  readonly filled: boolean;
  /** It ends a whole millimetre. */
  readonly tick: boolean;
}

/** A ply or other thin solid crossed: where, in which direction, and how many it counts as. */
export interface Puncture {
  readonly leg: number;
  readonly from: Point;
  readonly to: Point;
  readonly plies: number;
}

export interface Shortfall {
  readonly from: Point;
  /** Cut off at the last face of the chambers; `missing` keeps the whole. */
  readonly to: Point;
  readonly missing: number;
  /** The place lies in the chamber and nearer than the path is long: it can be shown. Else only the figure tells it. */
  readonly isPlace: boolean;
}
