// The neighbourhood of the path, for a close view: the path with a little air, no smaller than can be made sense of.

import type { Scene } from '#drawing/scene/scene.ts';
import type { Box } from '#ui/canvas/viewport/view.ts';

/** Millimetres round the path, and the least width and height of the view. */
const AIR = 0.5;
const LEAST = { width: 4, height: 2 } as const;

/** Null where the section has no path: then the whole is shown. */
export function pathBox({ path }: Scene): Box | null {
  if (path === null) return null;
  const points = path.legs.flatMap(({ from, to }) => [from, to]);
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const across = spread(Math.min(...xs) - AIR, Math.max(...xs) + AIR, LEAST.width);
  const up = spread(Math.min(...ys) - AIR, Math.max(...ys) + AIR, LEAST.height);
  return { x0: across[0], x1: across[1], y0: up[0], y1: up[1] };
}

function spread(from: number, to: number, least: number): readonly [number, number] {
  const lacking = Math.max(0, least - (to - from)) / 2;
  return [from - lacking, to + lacking];
}
