// The cross-section: closed axis-aligned rectangles in whole nanometres. Touching, even at a corner, is contact.
// x runs along the axis from the inner face of the left flange, y outward from the tube's outer face.

import type { Nm } from '#units/quantity.ts';
import type { StuffId } from './build.ts';

export interface Rect {
  readonly x0: Nm;
  readonly y0: Nm;
  readonly x1: Nm;
  readonly y1: Nm;
}

/**
 * How one direction of a solid is crossed: measured against the least thickness (thinner counts as one ply, from there
 * up it is strong), always strong, or always as a number of plies.
 */
export type Crossing = 'measured' | 'strong' | number;

export type Region = ConductorRegion | SolidRegion;

export interface ConductorRegion extends Rect {
  readonly kind: 'conductor';
  /** The conductor: id of a circuit, `core`, or the id of a floating screen. */
  readonly conductor: string;
  readonly of: 'winding' | 'lead' | 'link' | 'screen' | 'screen-lead' | 'core';
  /** Index in the file's `layers`; null for the core. */
  readonly layer: number | null;
  /** Bare metal; else enamel or a cover stands on it. */
  readonly bare: boolean;
  /** Part of a lead that crosses back over its own winding. */
  readonly crossing: boolean;
  /** Part of a lead left bare before its sleeve or cover begins. */
  readonly strippedLead: boolean;
  /** This end was stretched by slumping; a screen was pushed along x. */
  readonly stretched: boolean;
}

export interface SolidRegion extends Rect {
  readonly kind: 'ply' | 'block' | 'wireCover' | 'sleeve' | 'moulding' | 'wrap';
  /** Solids of one body have no joint between them. */
  readonly body: number;
  readonly stuff: StuffId;
  readonly layer: number | null;
  /** Position of a ply in its layer, from the tube outward; else null. */
  readonly ply: number | null;
  readonly crossX: Crossing;
  readonly crossY: Crossing;
  /** Joints with other plies of its layer are closed (cemented), or with everything (potted), with proof. */
  readonly closed: boolean;
  /** Extra length of the climb past it along a flange (edges turned up, with evidence). */
  readonly turnUp: Nm;
  /** Pushed along x by slumping. */
  readonly drifted: boolean;
}

/** One layer's band in a section. */
export interface Band {
  readonly layer: number;
  readonly chamber: number;
  readonly kind: 'winding' | 'tape' | 'screen' | 'crossing-lead';
  readonly y0: Nm;
  readonly y1: Nm;
  /** Occupied width of the winding, tape or screen. */
  readonly x0: Nm;
  readonly x1: Nm;
}

/** Some regions of a section. */
export interface RegionPart {
  readonly regions: readonly Region[];
  /** Other sections have the very same part, and no body in it goes on outside. */
  readonly isShared: boolean;
}

export interface Section {
  /** `plain`, `lead P start`, `slumped right`, `lead P start, slumped`, … */
  readonly name: string;
  readonly kind: 'plain' | 'lead';
  readonly slumped: null | 'as-is' | 'left' | 'right';
  /** Only what belongs to these circuits, or to none, has moved; left out: all that could. */
  readonly moved?: readonly string[];
  readonly lays: readonly string[];
  readonly regions: readonly Region[];
  /** The same regions in parts, in their order; left out: they are one part that no other section has. */
  readonly parts?: readonly RegionPart[] | undefined;
  readonly bands: readonly Band[];
  /** Frame of the drawing: everything outside it is no part of the section. */
  readonly frame: Rect;
  /** Void regions of windings' bands in which travel along y counts 0 (slumped sections only). */
  readonly sagging: readonly Rect[];
  /** Everything not solid is closed compound (potted, with proof). */
  readonly potted: boolean;
  readonly chambers: readonly { readonly x0: Nm; readonly x1: Nm }[];
  readonly stackTops: readonly Nm[];
  /** Inner edge of the core above the stack; null where the section has no core outside. */
  readonly coreAbove: Nm | null;
}

/** How one layer fits. */
export interface LayerFit {
  readonly layer: number;
  readonly rows: number;
  readonly turnsPerRow: number;
  readonly height: Nm;
  /** A row is exactly full: a helix needs one turn's width to return. */
  readonly doubtful: boolean;
  /** Not even one turn finds room in the width that the layer has. */
  readonly tooWide: boolean;
}

export interface ChamberFit {
  readonly used: Nm;
  readonly available: Nm;
  readonly layers: readonly LayerFit[];
}
