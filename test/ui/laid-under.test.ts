import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laidOnTwo, matrixOf, placeOf } from '#ui/pages/photographs/laid-under.ts';

const pixel = fc.record({ x: fc.integer({ min: 0, max: 4000 }), y: fc.integer({ min: 0, max: 3000 }) });

describe('a photograph under the section', () => {
  it('should lay both ends of the known length on the flanges, however the picture was held', () => {
    fc.assert(
      fc.property(pixel, pixel, fc.double({ min: 1, max: 40, noNaN: true }), (a, b, width) => {
        fc.pre(Math.hypot(a.x - b.x, a.y - b.y) > 10);
        const laying = laidOnTwo(
          [a, b],
          [
            [0, 2],
            [width, 2],
          ],
        );
        const [left, right] = [placeOf(laying, a), placeOf(laying, b)];
        for (const [found, wanted] of [
          [left, [0, 2]],
          [right, [width, 2]],
        ] as const) {
          expect(found[0]).toBeCloseTo(wanted[0] ?? NaN, 6);
          expect(found[1]).toBeCloseTo(wanted[1] ?? NaN, 6);
        }
      }),
      { seed: 1411, numRuns: 300 },
    );
  });

  it('should put each pixel on the screen where the view puts its millimetres', () => {
    // 100 px/mm, 0.01 mm a pixel: one to one; y = 0 lies at row 500
    const view = { scale: 100, stretch: 1, left: 40, base: 500 };
    expect(matrixOf({ x: 0, y: 3, scale: 0.01, turn: 0, mirrored: false }, view)).toBe(
      'matrix(1.000000, 0.000000, 0.000000, 1.000000, 40.000000, 200.000000)',
    );
    expect(matrixOf({ x: 0, y: 3, scale: 0.01, turn: 90, mirrored: false }, { ...view, stretch: 2 })).toBe(
      'matrix(0.000000, 2.000000, -1.000000, 0.000000, 40.000000, -100.000000)',
    );
  });

  it('should mirror about its own edge', () => {
    const laying = { x: 5, y: 1, scale: 0.01, turn: 0, mirrored: true };
    expect(placeOf(laying, { x: 100, y: 0 })).toEqual([4, 1]);
  });
});
