// Turns marked one by one on a photograph: the rows that they lie in, in the order in which they were marked, and where the next
// one is likely to lie. A row ends where the next mark goes back, or aside more than along.

import type { PicturePoint } from './photo-span.ts';

export function turnRows(points: readonly PicturePoint[]): readonly (readonly PicturePoint[])[] {
  const rows: PicturePoint[][] = [];
  for (const point of points) {
    const row = rows.at(-1);
    if (row === undefined || !goesOn(row, point)) rows.push([point]);
    else row.push(point);
  }
  return rows;
}

/**
 * One step on in the last row, as wide as its steps are on the whole. A row just begun takes the step of the row before, away
 * from the end that it begins at. Null before there are two marks.
 */
export function nextTurn(points: readonly PicturePoint[]): PicturePoint | null {
  const rows = turnRows(points);
  const [before = [], row = []] = [rows.at(-2), rows.at(-1)];
  const last = row.at(-1);
  if (last === undefined) return null;
  const own = stepOf(row);
  const step = own ?? stepOf(before);
  if (step === null) return null;
  const way = own !== null || far(last, before[0]) < far(last, before.at(-1)) ? 1 : -1;
  return { x: last.x + way * step.x, y: last.y + way * step.y };
}

/** Mean step from mark to mark; null where there is only one. */
function stepOf(row: readonly PicturePoint[]): PicturePoint | null {
  const [first, last] = [row[0], row.at(-1)];
  const steps = row.length - 1;
  if (first === undefined || last === undefined || steps < 1) return null;
  return { x: (last.x - first.x) / steps, y: (last.y - first.y) / steps };
}

const far = (from: PicturePoint, to: PicturePoint = from): number => Math.hypot(to.x - from.x, to.y - from.y);

/** A single mark has no direction yet: whatever comes next lies in its row. */
function goesOn(row: readonly PicturePoint[], next: PicturePoint): boolean {
  const [before, last] = [row.at(-2), row.at(-1)];
  if (before === undefined || last === undefined) return true;
  const [x, y] = [last.x - before.x, last.y - before.y];
  const [dx, dy] = [next.x - last.x, next.y - last.y];
  return x * dx + y * dy > Math.abs(x * dy - y * dx);
}
