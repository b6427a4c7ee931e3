// What part of a table's lines is shown: round the values that are looked at, no further than the table goes, and so high
// that the lines, the points of a build and what is asked of them have room.

import type { TableLine } from './table-lines.ts';
import type { TablePoint } from './table-points.ts';

/** The window reaches so many times below and above what is looked at. */
const REACH = 4;

/** From and to so many times below and above what is looked at, no further than the table goes. */
export function windowRound(looked: readonly number[], rows: readonly number[]): readonly [number, number] {
  const known = looked.filter((value) => value > 0);
  const [first, last] = [Math.min(...rows), Math.max(...rows)];
  const from = Math.min(Math.max(first, Math.min(...known) / REACH), last / 2);
  return [from, Math.max(Math.min(last, Math.max(...known) * REACH), from * 2)];
}

/** The least and the greatest length that is shown, with a little room. */
export function heightsOf(
  lines: readonly TableLine[],
  points: readonly TablePoint[],
  asked: number | null,
): readonly [number, number] {
  const heights = [
    ...lines.flatMap((line) => line.points.map(([, mm]) => mm)),
    ...points.flatMap((point) => [point.built ?? 0, point.asked ?? 0]),
    asked ?? 0,
  ].filter((mm) => mm > 0);
  return [Math.min(...heights) / 1.25, Math.max(...heights) * 1.15];
}

/** The rows inside, and where the line enters and leaves. */
export function within(points: TableLine['points'], from: number, to: number): TableLine['points'] {
  const ends = [from, to].flatMap((at) => {
    const mm = valueOn(points, at);
    return mm === null || points.some(([x]) => x === at) ? [] : [[at, mm] as const];
  });
  return [...points.filter(([x]) => x >= from && x <= to), ...ends].sort((a, b) => a[0] - b[0]);
}

/** On the line as it is drawn; null beyond its ends. */
function valueOn(points: TableLine['points'], at: number): number | null {
  const i = points.findIndex(([x]) => x >= at);
  const [upper, lower] = [points[i], points[i - 1]];
  if (upper === undefined) return null;
  if (upper[0] === at) return upper[1];
  if (lower === undefined) return null;
  return lower[1] + ((upper[1] - lower[1]) * (at - lower[0])) / (upper[0] - lower[0]);
}
