// Which pieces the finder offers where solids end alike, and where a third conductor touches the end of a piece.

import { describe, expect, it } from 'vitest';
import { countAll } from '#solver/paths/ply-count.ts';
import { findPieces, networkOf, shortestPieces } from '#solver/paths/find-pieces.ts';
import type { Region } from '#solver/section/section.ts';
import { inMm, mm } from '#units/quantity.ts';
import { metal, sectionOf, solid } from '#test/solver/hand-made.ts';

const options = {
  metric: 'creepage',
  x: mm(0.3),
  leastThickness: mm(0.4),
  trackingRank: [0],
} as const;

function lengthBetween(one: string, other: string, regions: readonly Region[], plies: number): number {
  const pieces = shortestPieces(sectionOf([-1, -2, 5, 4], regions), options, 0, plies);
  const lengths = pieces
    .filter(({ between, plies: count }) => count <= plies && between.includes(one) && between.includes(other))
    .map(({ length }) => inMm(length));
  return Math.min(Infinity, ...lengths);
}

describe('shortest pieces', () => {
  it('should pierce a thin solid at its edge beside a strong one that is as high', () => {
    const strong = solid([0, 1, 1, 1.45], 1);
    const thin = solid([1, 1, 1.1, 1.45], 2, { crossX: 'strong', crossY: 1 });
    const ends = [metal('a', [0, 0, 1.1, 1]), metal('b', [0, 1.45, 1, 2])];
    expect(lengthBetween('a', 'b', [strong, thin, ...ends], 1)).toBe(0);
    expect(lengthBetween('a', 'b', [thin, strong, ...ends], 1)).toBe(0);
  });

  it('should start where a third conductor touches as well as end there', () => {
    const bar = solid([-1, -2, 5, 0]);
    // under `a` and in contact with it, so that both lie at the only corner that the way to `b` has
    const third = metal('c', [0, -0.5, 1, 0]);
    const a = metal('a', [0, 0, 1, 1]);
    const b = metal('b', [2, 0, 3, 1]);
    expect(lengthBetween('a', 'b', [bar, third, a, b], 0)).toBe(1);
    expect(lengthBetween('a', 'b', [bar, b, third, a], 0)).toBe(1);
  });

  it('should see a straight line as long as the longest that is asked for: hypot(3, 4)', () => {
    const section = sectionOf(
      [-1, -2, 8, 9],
      [solid([-1, -2, 8, 0]), solid([4, 0, 8, 5]), metal('a', [0, 0, 1, 1]), metal('b', [4, 5, 8, 6])],
    );
    const within = (longest: number) => {
      const net = networkOf(section, options, 0, mm(longest));
      const limits = { metric: 'clearance', x: mm(0.3), length: [mm(longest)], window: null } as const;
      const pieces = findPieces(net, countAll(0), limits);
      return pieces
        .filter(({ between }) => between.includes('a') && between.includes('b'))
        .map(({ length }) => inMm(length));
    };
    expect(within(5)).toEqual([5]);
    expect(within(4.999)).toEqual([]);
  });

  it('should climb the face of a solid beside a void that sags for nothing', () => {
    // corner (1, 2) of `a`, up 0.5 and left 1 to the flange's face, up that for nothing to its rim, 1 mm over it
    const section = {
      ...sectionOf(
        [0, 0, 10, 10],
        [metal('a', [2, 1, 4, 2]), metal('b', [0, 4, 0.5, 5]), solid([0, 0, 1, 4])],
      ),
      sagging: [{ x0: mm(1), y0: mm(2.5), x1: mm(10), y1: mm(4) }],
    };
    const options = { metric: 'clearance', x: mm(1), leastThickness: mm(0.4), trackingRank: [] } as const;
    const [piece] = shortestPieces(section, options, 9, 0).filter(({ between }) => !between.includes('core'));
    expect(piece!.length / mm(1)).toBeCloseTo(Math.hypot(1, 0.5) + 0.5, 3);
  });
});
