// Sections for the field's tests, in millimetres.

import type { Box, Disc, FieldSection } from '#field/field-section.ts';
import { finished } from '#field/solve/finished.ts';
import { solveField, type FieldQuestion, type SolvedField } from '#field/solve/solve-field.ts';
import { mm, nm } from '#units/quantity.ts';

export const box = (
  [x0, y0, x1, y1]: readonly [number, number, number, number],
  electrode: number | null,
  permittivity = 1,
): Box => ({ shape: 'box', x0: mm(x0), y0: mm(y0), x1: mm(x1), y1: mm(y1), electrode, permittivity });

export const disc = (
  [x, y]: readonly [number, number],
  metal: number,
  electrode: number,
  overall = metal,
  permittivity = 1,
): Disc => ({
  shape: 'disc',
  x: mm(x),
  y: mm(y),
  metal: mm(metal),
  overall: mm(overall),
  electrode,
  permittivity,
});

/** Conductors `a` and `b`, an electrode each, unless told otherwise. */
export const section = (
  [x0, y0, x1, y1]: readonly [number, number, number, number],
  bodies: FieldSection['bodies'],
  more: Partial<FieldSection> = {},
): FieldSection => ({
  frame: { x0: mm(x0), y0: mm(y0), x1: mm(x1), y1: mm(y1) },
  background: 1,
  bodies,
  shell: null,
  axis: null,
  conductors: ['a', 'b'],
  electrodes: [0, 1],
  ...more,
});

export const shell = (radius: number, electrode: number): FieldSection['shell'] => ({
  x: nm(0),
  y: nm(0),
  radius: mm(radius),
  electrode,
});

export const FINE = { around: 32, spacing: 1.2 };

/** One volt on the first electrode, unless told otherwise. */
export function solved(of: FieldSection, more: Partial<FieldQuestion> = {}): SolvedField {
  const electrodes = Float64Array.from(of.electrodes, (_, i) => (i === 0 ? 1 : 0));
  const states = [{ electrodes, floating: [] }];
  const answer = finished(solveField({ section: of, states, fineness: FINE, resolutions: 2, ...more }));
  if (answer.kind !== 'solved') throw new Error(answer.kind);
  return answer;
}
