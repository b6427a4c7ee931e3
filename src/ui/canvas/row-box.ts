// What is looked at while the row of a layer is open: the layer near enough to count plies, at the end that limits.

import type { Scene } from '#drawing/scene/scene.ts';
import type { Plate } from '#drawing/scene/view.ts';
import type { Box } from '#ui/canvas/viewport/view.ts';

/** Pixels per millimetre: a ply of 0.06 is six pixels high. */
export const ROW_SCALE = 100;

/** Null where the layer is not in this section. */
export function rowBox(scene: Scene, layer: number, room: Plate, stretch: number): Box | null {
  const shown = scene.layers.find((each) => each.layer === layer);
  if (shown === undefined) return null;
  const { frame, path } = scene;
  const wide = (room.right - room.left) / ROW_SCALE;
  const high = (room.bottom - room.top) / (ROW_SCALE * stretch);
  const ends = path?.legs.flatMap(({ from, to }) => [from[0], to[0]]) ?? [];
  const middle = (frame.x0 + frame.x1) / 2;
  const limit = ends.length === 0 ? frame.x0 : ends.reduce((sum, x) => sum + x, 0) / ends.length;
  const [x0, x1] = within(limit < middle ? frame.x0 : frame.x1, wide, frame.x0, frame.x1);
  const [y0, y1] = within((shown.y0 + shown.y1) / 2, high, frame.y0, frame.y1);
  return { x0, y0, x1, y1 };
}

/** A stretch of this length about a place, kept inside; where it is longer, the whole lies in its middle. */
function within(place: number, length: number, from: number, to: number): readonly [number, number] {
  if (length >= to - from) return [(from + to - length) / 2, (from + to + length) / 2];
  const start = Math.min(to - length, Math.max(from, place - length / 2));
  return [start, start + length];
}
