// The edges of boxes and of the frame: divided where other points already lie on them and as finely as the room beside
// them asks. Millimetres.

import { inMm } from '#units/quantity.ts';

import type { Box, FieldRect } from '#field/field-section.ts';
import { addLine, type Drawing } from './drawing.ts';
import type { PointSet } from './point-set.ts';
import type { SizeTree } from './size-tree.ts';
import type { Edge, Stops } from './stops.ts';

export const thinOf = ({ x0, x1, y0, y1 }: Box): number => Math.min(x1 - x0, y1 - y0) / 1e6;

/** The field piles up at the edge of a foil: there the mesh is finer than the foil is thick. */
export function askCorners(tree: SizeTree, box: Box, frame: FieldRect): void {
  const thin = thinOf(box);
  const size = box.electrode === null ? 1.5 * thin : Math.min(thin, LEAST_BEND * 8) / 4;
  for (const x of [box.x0, box.x1]) {
    for (const y of [box.y0, box.y1]) {
      const inside = x > frame.x0 && x < frame.x1 && y > frame.y0 && y < frame.y1;
      if (inside) tree.ask(inMm(x), inMm(y), size);
    }
  }
}

export function addCorners(points: PointSet, box: Box): void {
  for (const x of [inMm(box.x0), inMm(box.x1)]) {
    for (const y of [inMm(box.y0), inMm(box.y1)]) if (points.inFrame(x, y)) points.add(x, y, -1);
  }
}

/** Corners of thick metal are followed down to this, mm. */
export const LEAST_BEND = 0.01;

export function edgesOf(rect: Pick<Box, 'x0' | 'y0' | 'x1' | 'y1'>, thin: number): readonly Edge[] {
  const [x0, y0, x1, y1] = [rect.x0, rect.y0, rect.x1, rect.y1].map(inMm) as [number, number, number, number];
  return [
    [x0, y0, x1, y0, thin],
    [x1, y0, x1, y1, thin],
    [x1, y1, x0, y1, thin],
    [x0, y1, x0, y0, thin],
  ];
}

/** Points that already lie on the edge, a wire that touches it, the corner of a neighbour, divide it first. */
export function drawEdge(
  { points, lines, tree, fineness }: Drawing,
  edge: Edge,
  most: number,
  stops: Stops,
): void {
  const [x0, y0, x1, y1, thin] = edge;
  const whole = Math.hypot(x1 - x0, y1 - y0);
  if (whole === 0) return;
  const divide = (a: number, b: number): readonly number[] => {
    const middle = (a + b) / 2;
    const [x, y] = [x0 + middle * (x1 - x0), y0 + middle * (y1 - y0)];
    const wanted = Math.min(most, 2 * thin, points.inFrame(x, y) ? tree.sizeAt(x, y) : most);
    const length = (b - a) * whole;
    return length > wanted && length > 1e-4 * most ? [...divide(a, middle), ...divide(middle, b)] : [b];
  };
  const fixed = [...stops.on(edge), 1];
  const places = fixed.flatMap((to, i) => (to > (fixed[i - 1] ?? 0) ? divide(fixed[i - 1] ?? 0, to) : []));
  let [from, before] = [points.inFrame(x0, y0) ? points.add(x0, y0, -1) : -1, 0];
  for (const at of places) {
    const [x, y] = [x0 + at * (x1 - x0), y0 + at * (y1 - y0)];
    const to = points.inFrame(x, y) ? points.add(x, y, -1) : -1;
    if (to !== -1) tree.ask(x, y, fineness.spacing * (at - before) * whole);
    addLine(lines, from, to, -1);
    [from, before] = [to, at];
  }
}
