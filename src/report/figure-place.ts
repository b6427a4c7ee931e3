// Where the figure of a path stands across the drawing: over its longest leg, but never on the turns it ends at.

import type { Point } from './outline.ts';
import type { StaffPath } from './staff.ts';

/** Pixels between the figure and the conductor. */
const GAP = 6;

/** Middle of the figure in pixels; `half` is half its width there. */
export function figureMiddle(
  { legs }: Pick<StaffPath, 'legs'>,
  toX: (mm: number) => number,
  half: number,
): number {
  const [first, last] = [legs[0], legs.at(-1)];
  if (first === undefined || last === undefined) return toX(0);
  const longest = legs.reduce((a, b) => (b.length > a.length ? b : a));
  const middle = toX((longest.from[0] + longest.to[0]) / 2);
  const [end, before]: readonly [Point, Point] =
    first.from[1] > last.to[1] ? [first.from, first.to] : [last.to, last.from];
  // the path comes from one side, so the conductor lies on the other
  if (end[0] > before[0]) return Math.min(middle, toX(end[0]) - half - GAP);
  if (end[0] < before[0]) return Math.max(middle, toX(end[0]) + half + GAP);
  return middle;
}
