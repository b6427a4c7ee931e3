// Through compound from corner to corner: the straight way tells how thick the insulation is, not the way along x and y.

import { describe, expect, it } from 'vitest';
import { mm } from '#units/quantity.ts';
import { shortestPieces } from '#solver/paths/find-pieces.ts';
import type { Region } from '#solver/section/section.ts';
import { metal, sectionOf, solid } from '#test/solver/hand-made.ts';

const JOINT = 5;

/** Stuffs punctured between `a` and `b` by the way with the fewest plies, all of it in compound; null: there is none. */
function punctured(regions: readonly Region[]): string | null {
  const section = { ...sectionOf([-2, -2, 4, 4], regions), potted: true };
  const options = { metric: 'creepage', x: mm(1), leastThickness: mm(0.4), trackingRank: [] } as const;
  const all = shortestPieces(section, options, JOINT, 3).filter(
    ({ between }) => between.includes('a') && between.includes('b'),
  );
  const least = all.sort((p, q) => p.plies - q.plies)[0];
  return least ? least.punctured.map(({ stuff, count }) => `${count} of ${stuff}`).join(', ') : null;
}

const a = metal('a', [-1, -1, 0, 0]);
const b = (x: number, y: number) => metal('b', [x, y, x + 1, y + 1]);
const ply = (y: number, thickness: number, body: number) =>
  solid([-2, y, 4, y + thickness], body, { kind: 'ply', stuff: 2, layer: 1, ply: body, closed: true });

describe('through compound', () => {
  it('should be thin from corner to corner where it is along x and y', () => {
    expect(punctured([a, b(0.1, 0.2)])).toBe('1 of 5');
  });

  it('should be thin where the straight way is, though along x and y it is not', () => {
    // 0.25 + 0.2 = 0.45, straight hypot(0.25, 0.2) = 0.320 mm
    expect(punctured([a, b(0.25, 0.2)])).toBe('1 of 5');
  });

  it('should be strong where the straight way is as long as the least thickness', () => {
    // 0.24, 0.32 and 0.4 are a right triangle
    expect(punctured([a, b(0.239, 0.32)])).toBe('1 of 5');
    expect(punctured([a, b(0.24, 0.32)])).toBeNull();
  });

  it('should count the plies that the straight way passes', () => {
    // from (0, 0) up to (0.35, 0.1) through two plies of 0.05 mm: 0.364 mm, along x and y 0.45
    const plies = [0, 1].map((k) => ply(0.05 * k, 0.05, k + 1));
    expect(punctured([a, b(0.35, 0.1), ...plies])).toBe('1 of 5, 2 of 2');
  });

  it('should go round a third conductor that is in the way', () => {
    // corner to corner 0.36, past the third one's corner at (0.2, 0) 0.2 + hypot(0.05, 0.25) = 0.455
    const third = metal('c', [0.08, 0.001, 0.2, 0.4]);
    expect(punctured([a, b(0.25, 0.25)])).toBe('1 of 5');
    expect(punctured([a, b(0.25, 0.25), third])).toBeNull();
    // round a shorter one: hypot(0.1, 0.02) + hypot(0.15, 0.23) = 0.377
    expect(punctured([a, b(0.25, 0.25), metal('c', [0.08, 0.02, 0.1, 0.4])])).toBe('1 of 5');
  });

  it('should pass no wound block along the axis that it spaces', () => {
    const wall = solid([0.05, -2, 0.1, 4], 9, {
      kind: 'block',
      stuff: 1,
      crossX: 'strong',
      crossY: 'strong',
    });
    expect(punctured([a, b(0.2, 0.2), wall])).toBeNull();
  });
});
