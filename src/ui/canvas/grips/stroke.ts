// Drawing a layer on the section: from which surface a stroke may start, and where its ends settle. A stroke starts on the
// tube of an empty chamber, or close to the top of what lies there; a mere click takes the whole width.

import type { Scene } from '#drawing/scene/scene.ts';
import { toDrawingX, toDrawingY, toScreenY, type View } from '#drawing/scene/view.ts';
import { inMm } from '#units/quantity.ts';
import type { DrawnSection } from '#ui/canvas/handles/handle.ts';

/** The top of what lies in a chamber, mm. */
export interface Surface {
  readonly chamber: number;
  readonly x0: number;
  readonly x1: number;
  readonly y: number;
}

export interface Stroke extends Surface {
  /** Where it began and where the hand is, mm from the left face. */
  readonly from: number;
  readonly to: number;
}

export interface Ends {
  readonly left: string;
  readonly right: string;
}

const NEAR_PX = 14;
const GRID = 0.05;
/** Shorter than this it was a click. */
const LEAST_PX = 8;

export function surfaceAt(
  section: DrawnSection,
  scene: Scene,
  view: View,
  column: number,
  row: number,
): Surface | null {
  const x = toDrawingX(view, column);
  const chamber = section.chambers.findIndex((face) => x >= inMm(face.x0) && x <= inMm(face.x1));
  const face = section.chambers[chamber];
  if (face === undefined) return null;
  const lies = scene.layers.filter((each) => each.chamber === chamber);
  const y = Math.max(0, ...lies.map(({ y1 }) => y1));
  const above = toScreenY(view, y) - row;
  const isOn =
    lies.length === 0 ? toDrawingY(view, row) > 0 || above > -NEAR_PX : above >= 1 && above <= NEAR_PX;
  return isOn ? { chamber, x0: inMm(face.x0), x1: inMm(face.x1), y } : null;
}

/** Margins that the stroke leaves; equal ones where they nearly are. */
export function endsOf({ x0, x1, from, to }: Stroke, view: View): Ends {
  if (Math.abs(to - from) * view.scale < LEAST_PX) return { left: '', right: '' };
  const within = (x: number): number => Math.max(x0, Math.min(x1, x));
  const [a, b] = [within(Math.min(from, to)), within(Math.max(from, to))];
  const left = onGrid(a - x0);
  const right = onGrid(x1 - b);
  const isEqual = Math.abs(left - right) * view.scale < LEAST_PX;
  return { left: text(left), right: text(isEqual ? left : right) };
}

const onGrid = (length: number): number => Math.round(length / GRID) * GRID;

const text = (length: number): string => (length < GRID / 2 ? '' : `${length.toFixed(2)} mm`);
