// Points in the room that no outline fills: a ring round each wire first, then the middles of the empty squares.

import { inMm } from '#units/quantity.ts';

import type { FieldSection } from '#field/field-section.ts';
import { AIR } from './body-map.ts';
import { countAround, direction, type Drawing } from './drawing.ts';

/** Metal needs none, and covers have their rings. */
export function fillIn(drawing: Drawing, section: FieldSection): void {
  const { points, tree, map } = drawing;
  tree.hold(points.x, points.y);
  const put = (x: number, y: number, distance: number): void => {
    if (!points.inFrame(x, y) || !tree.isFree(x, y, distance, points.x, points.y)) return;
    if (map.electrodeAt(x, y) !== -1) return;
    const here = map.at(x, y);
    if (here !== AIR && section.bodies[here >> 1]!.shape === 'disc') return;
    const count = points.x.length;
    const id = points.add(x, y, -1);
    if (id === count) tree.put(id, x, y);
  };
  for (const body of section.bodies) {
    if (body.shape !== 'disc') continue;
    const count = countAround(drawing.fineness, body);
    const over = inMm(body.overall) / 2;
    const step = (2 * Math.PI * over) / count;
    for (let i = 0; i < count; i++) {
      const [dx, dy] = direction(i, count);
      put(inMm(body.x) + (over + 0.9 * step) * dx, inMm(body.y) + (over + 0.9 * step) * dy, 0.6 * step);
    }
  }
  for (const [x, y, size] of tree.emptyLeaves()) put(x, y, 0.55 * size);
}
