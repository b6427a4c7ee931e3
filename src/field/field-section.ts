// What the field solver is asked: bodies in a frame, every one metal or a solid of known permittivity.
// x runs along the axis, y outward; lengths come in whole nanometres. Where bodies overlap, metal counts before solids,
// a disc before a box, a later body before an earlier one. What no body fills is `background`.
// An edge of the frame that no metal covers lets no flux through: the picture goes on there as in a mirror.

import type { Nm } from '#units/quantity.ts';

export interface FieldSection {
  readonly frame: FieldRect;
  /** Relative permittivity of what no body fills; 1 is air. */
  readonly background: number;
  readonly bodies: readonly Body[];
  /** A round shell of metal instead of the frame's edges. */
  readonly shell: Shell | null;
  /** The y of the axis that everything is turned round; null: a plane section, answers are for a metre of depth. */
  readonly axis: Nm | null;
  /** Names of the conductors; electrodes point here. Two of one name belong together and may touch. */
  readonly conductors: readonly string[];
  /** The conductor of each electrode: one turn is an electrode, the winding's circuit its conductor. */
  readonly electrodes: readonly number[];
}

export interface FieldRect {
  readonly x0: Nm;
  readonly y0: Nm;
  readonly x1: Nm;
  readonly y1: Nm;
}

export type Body = Disc | Box;

/** A wire: metal within, enamel or a cover round it. */
export interface Disc {
  readonly shape: 'disc';
  readonly x: Nm;
  readonly y: Nm;
  /** Diameters of the metal and over all. */
  readonly metal: Nm;
  readonly overall: Nm;
  readonly electrode: number;
  /** Relative permittivity of what covers it. */
  readonly permittivity: number;
}

export interface Box extends FieldRect {
  readonly shape: 'box';
  /** Null: a solid. */
  readonly electrode: number | null;
  /** Relative permittivity; of no meaning for metal. */
  readonly permittivity: number;
}

export interface Shell {
  readonly x: Nm;
  readonly y: Nm;
  readonly radius: Nm;
  readonly electrode: number;
}
