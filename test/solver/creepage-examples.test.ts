// The examples of how creepage and clearance are measured, on sections drawn by hand with upright faces.
// Source of every case: the worked figures of IEC 60664-1 and its family (grooves, ribs, joints, recessed screws),
// with the arithmetic beside them. The two V-grooves cannot be drawn with rectangles and are left out.

import { describe, expect, it } from 'vitest';
import { shortestPieces } from '#solver/paths/find-pieces.ts';
import type { Metric } from '#units/terms.ts';
import type { Region, Section, SolidRegion } from '#solver/section/section.ts';
import { inMm, mm } from '#units/quantity.ts';
import { metal, sectionOf, solid } from './hand-made.ts';

/** Depth of the slab that everything stands on: far from any path. */
const DEEP = 20;

function lengthOf(
  section: Section,
  metric: Metric,
  x: number,
  between: readonly string[] = ['a', 'b'],
): number {
  const options = { metric, x: mm(x), leastThickness: mm(0.4), trackingRank: [] };
  const pieces = shortestPieces(section, options, 0, 0).filter((piece) =>
    between.every((end) => piece.between.includes(end)),
  );
  return Math.min(...pieces.map((piece) => inMm(piece.length)));
}

/** Two conductors flush with a surface of this length, which `cut` shapes. */
function surface(length: number, cut: readonly SolidRegion[]): Section {
  const ends: readonly Region[] = [metal('a', [-1, -3, 0, 0]), metal('b', [length, -3, length + 1, 0])];
  const below = solid([-1, -DEEP, length + 1, -4]);
  return sectionOf([-1, -DEEP, length + 1, 4], [below, ...cut, ...ends]);
}

/** A groove in the middle of the surface. */
function grooved(length: number, width: number, depth: number): Section {
  const [left, right] = [(length - width) / 2, (length + width) / 2];
  return surface(length, [
    solid([-1, -4, left, 0]),
    solid([right, -4, length + 1, 0]),
    solid([left, -4, right, -depth]),
  ]);
}

describe('creepage examples', () => {
  it.each([
    // name, length, width, depth, X, clearance, creepage
    ['groove narrower than X: straight across', 6, 0.8, 3, 1.0, 6, 6],
    ['groove just narrower than X', 6, 0.99, 3, 1.0, 6, 6],
    ['groove as wide as X: 6 + 2 x 3', 6, 1.0, 3, 1.0, 6, 12],
    ['groove wider than X: 6 + 2 x 1.75', 6, 2.5, 1.75, 1.0, 6, 9.5],
    ['the same under pollution degree 3: 1.2 < 1.5', 6, 1.2, 2, 1.5, 6, 6],
    ['X cut to a third of 2.4: 2.4 + 2 x 1.5', 2.4, 0.85, 1.5, 0.8, 2.4, 5.4],
  ])('should measure a %s', (_, length, width, depth, x, clearance, creepage) => {
    const section = grooved(length, width, depth);
    expect(lengthOf(section, 'clearance', x)).toBeCloseTo(clearance, 4);
    expect(lengthOf(section, 'creepage', x)).toBeCloseTo(creepage, 4);
  });

  it('should measure a flat surface straight', () => {
    const section = surface(6, [solid([-1, -4, 7, 0])]);
    expect(lengthOf(section, 'clearance', 1)).toBeCloseTo(6, 4);
    expect(lengthOf(section, 'creepage', 1)).toBeCloseTo(6, 4);
  });

  it('should bridge the narrow mouth of an undercut groove', () => {
    const section = surface(6, [
      solid([-1, -4, 1.5, 0]),
      solid([4.5, -4, 7, 0]),
      solid([1.5, -4, 4.5, -2]),
      solid([1.5, -1, 2.6, 0]),
      solid([3.4, -1, 4.5, 0]),
    ]);
    expect(lengthOf(section, 'clearance', 1)).toBeCloseTo(6, 4);
    expect(lengthOf(section, 'creepage', 1)).toBeCloseTo(6, 4);
  });

  it('should go over a rib: 2 sqrt(2.5^2 + 2^2) + 1 through air, 2.5 + 2 + 1 + 2 + 2.5 along it', () => {
    const section = surface(6, [solid([-1, -4, 7, 0]), solid([2.5, 0, 3.5, 2])]);
    expect(lengthOf(section, 'clearance', 1)).toBeCloseTo(7.403124, 4);
    expect(lengthOf(section, 'creepage', 1)).toBeCloseTo(10, 4);
  });

  it('should cross two grooves narrower than X at a joint straight', () => {
    // an inserted block, 1 mm wide, with a groove of 0.7 at either side and an uncemented joint under it
    const section = surface(6, [
      solid([-1, -4, 1.8, 0]),
      solid([4.2, -4, 7, 0]),
      solid([1.8, -4, 4.2, -2]),
      solid([2.5, -2, 3.5, 0], 1),
    ]);
    expect(lengthOf(section, 'clearance', 1)).toBeCloseTo(6, 4);
    expect(lengthOf(section, 'creepage', 1)).toBeCloseTo(6, 4);
  });

  it('should bridge the narrow of two grooves and follow the wide one: 6 + 2 x 2', () => {
    const section = surface(6, [
      solid([-1, -4, 1.4, 0]),
      solid([4.5, -4, 7, 0]),
      solid([1.4, -4, 4.5, -2]),
      solid([2.0, -2, 3.0, 0]),
    ]);
    expect(lengthOf(section, 'clearance', 1)).toBeCloseTo(6, 4);
    expect(lengthOf(section, 'creepage', 1)).toBeCloseTo(10, 4);
  });

  it.each([
    ['wide: 1.5 + 5 through air, 1.5 + 2 + 5 along the recess', 1.5, 6.5, 8.5],
    ['narrow: 0.6 + 5 for both', 0.6, 5.6, 5.6],
  ])('should measure from a screw head in a recess with a gap that is %s', (_, gap, clearance, creepage) => {
    const end = gap + 5;
    const section = sectionOf(
      [-1, -DEEP, end + 1, 4],
      [
        solid([-1, -DEEP, end + 1, -2]),
        solid([gap, -2, end, 0]),
        metal('a', [-1, -2, 0, 0]),
        metal('b', [end, -2, end + 1, 0]),
      ],
    );
    expect(lengthOf(section, 'clearance', 1)).toBeCloseTo(clearance, 4);
    expect(lengthOf(section, 'creepage', 1)).toBeCloseTo(creepage, 4);
  });

  it('should give the two parts beside a floating part, whose own 10 mm count nothing: 2.0 + 4.0', () => {
    const section = sectionOf(
      [-1, -DEEP, 17, 4],
      [
        solid([-1, -DEEP, 17, 0]),
        metal('a', [-1, -3, 0, 0]),
        metal('float', [2, -3, 12, 4]),
        metal('b', [16, -3, 17, 0]),
      ],
    );
    for (const metric of ['clearance', 'creepage'] as const) {
      expect(lengthOf(section, metric, 1, ['a', 'float'])).toBeCloseTo(2, 4);
      expect(lengthOf(section, metric, 1, ['float', 'b'])).toBeCloseTo(4, 4);
      expect(lengthOf(section, metric, 1)).toBe(Infinity);
    }
  });

  it.each([
    ['on both sides: 3.0 + 3 x 0.025 + 3.0', 3, 6.075],
    ['on the secondary only: 0 + 3 x 0.025 + 3.0', 0, 3.075],
  ])('should run over margins %s', (_, margin, length) => {
    const plies = [0, 1, 2].map((ply) => solid([0, 1 + ply * 0.025, 12, 1.025 + ply * 0.025], 10 + ply));
    const block = margin > 0 ? [solid([0, 0, margin, 1], 1)] : [];
    const section = sectionOf(
      [-1, -DEEP, 20, 4],
      [
        solid([-1, -DEEP, 20, 0]),
        solid([-1, 0, 0, 4]),
        // the other side is out of reach
        solid([12, 0, 20, 4]),
        ...block,
        ...plies,
        solid([0, 1.075, 3, 2.075], 2),
        metal('a', [margin, 0, 8, 1]),
        solid([8, 0, 12, 1], 3),
        metal('b', [3, 1.075, 8, 2.075]),
        solid([8, 1.075, 12, 2.075], 4),
      ],
    );
    expect(lengthOf(section, 'creepage', 1)).toBeCloseTo(length, 4);
    expect(lengthOf(section, 'clearance', 1)).toBeCloseTo(length, 4);
  });
});
