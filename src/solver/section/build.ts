// A complete build, as the solver wants it: every figure known, no table to look up, lengths in whole nanometres.
// `rules` fills it from a design, with the unknowns set at their worst or at their best.
// x runs along the axis from the inner face of the left flange, y outward from the tube's outer face.

import type { Side } from '#units/terms.ts';
import type { Nm } from '#units/quantity.ts';

/**
 * What a solid is made of, as far as grading tells solids apart; `rules` knows what an id stands for.
 * Solids of one stuff are alike in material, thickness, strength and tracking group.
 */
export type StuffId = number;

export interface Build {
  readonly height: Nm;
  readonly wall: BuildWall;
  readonly flange: Nm;
  readonly split: boolean;
  /** Stuff of tube, flanges and dividers. */
  readonly moulding: StuffId;
  readonly chambers: readonly Nm[];
  readonly dividers: readonly Nm[];
  readonly outerGap: Nm;
  readonly wrap: BuildSheet | null;
  readonly layers: readonly BuildLayer[];
  /** Every way in which a lead, link or screen lead may lie; alternatives of an unknown stand side by side. */
  readonly lays: readonly Lay[];
  /** Only sections with a lay of this circuit and one of these groups, for pairs of other circuits; left out: every section. */
  readonly past?: { readonly circuit: string; readonly groups: readonly string[] };
  /** Potted, with proof: every joint, surface and void is closed. */
  readonly potted: boolean;
  /** Stuff that a closed joint counts as: one ply of unknown strength. */
  readonly closedJoint: StuffId;
}

export type BuildWall =
  { readonly kind: 'moulded'; readonly thickness: Nm } | ({ readonly kind: 'plies' } & BuildSheet);

export interface BuildSheet {
  readonly plies: number;
  readonly plyThickness: Nm;
  readonly stuff: StuffId;
}

export type BuildLayer = BuildWindingLayer | BuildTapeLayer | BuildScreenLayer;

interface Placed {
  /** Index in the file's `layers`. */
  readonly index: number;
  readonly chamber: number;
  readonly margins: Record<Side, BuildMargin>;
}

export interface BuildMargin {
  readonly width: Nm;
  readonly filled: boolean;
  /** Null: as high as the layer. */
  readonly height: Nm | null;
  /** Solid in every direction; else tape wound in turns: strong along x, and along y as many plies as it has turns. */
  readonly moulded: boolean;
  /** Thickness of one turn of the tape that a margin is wound of. */
  readonly turn: Nm;
  readonly stuff: StuffId;
}

export interface BuildWindingLayer extends Placed {
  readonly kind: 'winding';
  readonly winding: string;
  readonly circuit: string;
  /** Wound into the band of the winding before it, side by side with it. */
  readonly beside?: boolean;
  readonly turns: number;
  readonly strands: number;
  readonly spread: boolean;
  /** Side of the start lead, where a layer that is not spread begins. */
  readonly startsAt: Side;
  readonly wire: BuildWire;
  readonly anchored: boolean;
  /** Measured from the chamber's left face; wins over the margins. */
  readonly extent: { readonly from: Nm; readonly to: Nm } | null;
}

export interface BuildWire {
  readonly overall: Nm;
  /** Diameter of the metal: drawn, and nothing is measured from it. Null where it is not known or is a bundle. */
  readonly metal: Nm | null;
  /** Null where the wire counts as bare for distances (bare, enamelled, litz, cover that earns nothing). */
  readonly cover: BuildCover | null;
  /** Bare metal; else an enamel stands on it, which is remembered for contacts. */
  readonly bare: boolean;
  /** Ends that nothing holds slump; those of wire with a certified cover of three layers do not. */
  readonly slumps: boolean;
}

export interface BuildCover {
  readonly thickness: Nm;
  /** Plies that crossing it counts as; null: strong. */
  readonly plies: number | null;
  readonly stuff: StuffId;
}

export interface BuildTapeLayer extends Placed, BuildSheet {
  readonly kind: 'tape';
  readonly inset: Record<Side, Nm>;
  /** Joints between its plies are closed (with proof). */
  readonly cemented: boolean;
  /** Edges turned up the flange, with evidence; else 0. */
  readonly turnUp: Nm;
}

export interface BuildScreenLayer extends Placed {
  readonly kind: 'screen';
  /** Null: floating. */
  readonly circuit: string | null;
  /** Name of the conductor where it floats. */
  readonly id: string;
  readonly thickness: Nm;
  readonly overlap: BuildSheet | null;
  readonly inset: Record<Side, Nm>;
}

/** One lead-out, link or screen lead laid into a section. */
export interface Lay {
  /** Names the section, e.g. `P start`, `P link 1`, `screen 2 lead`. */
  readonly name: string;
  /** Lays that are alternatives of one unknown share a group and never share a section. */
  readonly group: string;
  readonly circuit: string;
  /** Position in `layers` of the build of the layer it leaves. */
  readonly layer: number;
  readonly at: Side;
  readonly exit: Side;
  readonly way: 'slot' | 'riser';
  readonly wire: BuildWire;
  readonly sleeve: BuildSleeve | null;
  readonly crossTape: number;
  /** A link climbs only to this layer (position in `layers`); null: to the rim. */
  readonly upTo: number | null;
  readonly kind: 'lead' | 'link' | 'screen-lead';
  /** Stated distance round the circumference to other leads: such a lead shares no section. Null: none stated. */
  readonly apart: Nm | null;
}

export interface BuildSleeve {
  readonly wall: Nm;
  readonly into: Nm;
  readonly stuff: StuffId;
}
