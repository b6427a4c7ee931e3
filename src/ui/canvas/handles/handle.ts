// A handle: one edge of the drawing that has a size in the design file. Where the edge stands gives the size and back:
// value = sign * (position - origin), in whole nanometres. A handle knows nothing of pixels.

import type { Drawable } from '#drawing/scene/scene.ts';
import type { Edit } from '#state/fields/edit.ts';
import { inMm, mm, nm, type Nm } from '#units/quantity.ts';

/** The section as judged; the drawing room gets its shape through `report`. */
export type DrawnSection = Drawable['sections'][number];

/** What a handle belongs to in the list beside the drawing. */
export type Part = number | 'former' | 'core';

export interface Handle {
  /** Path of the field, which names the handle too; an edge drawn twice adds where. */
  readonly id: string;
  readonly path: string;
  readonly part: Part;
  readonly axis: 'x' | 'y';
  readonly at: Nm;
  /** Span of the edge in the other direction. */
  readonly span: readonly [Nm, Nm];
  readonly origin: Nm;
  readonly sign: 1 | -1;
  readonly value: Nm;
  readonly plusMinus: Nm;
  readonly least: Nm;
  readonly most: Nm;
  /** `left margin of layer 3`. */
  readonly label: string;
  /** The file says that nobody knows; the value is what the drawing counts it as. */
  readonly isUnknown: boolean;
}

/** Lengths in a design file end at a metre. */
export const LONGEST: Nm = mm(1000);
/** What must be left between two margins that meet. */
export const LEAST_ROOM: Nm = mm(0.01);

/** `+ 0` turns -0 into 0. */
export const valueAt = (handle: Handle, position: number): Nm =>
  nm(handle.sign * (position - handle.origin) + 0);

export const positionOf = (handle: Handle, value: number): Nm => nm(handle.origin + handle.sign * value);

export const limited = (handle: Handle, value: Nm): Nm =>
  nm(Math.max(handle.least, Math.min(handle.most, value)));

/** A length as the design file writes it: `1.65 mm`. */
export const lengthText = (value: Nm): string => `${inMm(value)} mm`;

/** The change of the file that gives the handle this value; a half-width stays, as far as the value allows. */
export function editsOf(handle: Handle, value: Nm): readonly Edit[] {
  const text = lengthText(value);
  const plusMinus = nm(Math.min(handle.plusMinus, value));
  return [
    { path: handle.path, value: plusMinus === 0 ? text : { value: text, plusMinus: lengthText(plusMinus) } },
  ];
}
