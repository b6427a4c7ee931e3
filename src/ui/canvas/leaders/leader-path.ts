// The way of one leader line: level from its dot to the bend, slanting to its row, level into it; with a gap where it would
// run through something that one reads or takes hold of.

import type { Plate } from '#drawing/scene/view.ts';

/** Pixels that a line keeps from what it passes. */
const ASIDE = 2;

/** `row`: where it becomes level again, where it ends, and at which height. */
export function leaderPath(
  [x, y]: readonly [number, number],
  bend: number,
  [turn, end, row]: readonly [number, number, number],
  kept: readonly Plate[],
): string {
  const gaps = kept
    .filter(({ top, bottom }) => top - ASIDE < y && y < bottom + ASIDE)
    .map(({ left, right }) => [Math.max(x, left - ASIDE), Math.min(bend, right + ASIDE)] as const)
    .filter(([from, to]) => from < to)
    .sort((a, b) => a[0] - b[0]);
  const level = gaps.map(([from, to]) => `H${from}M${to} ${y}`).join('');
  return `M${x} ${y}${level}H${bend}L${turn} ${row}H${end}`;
}
