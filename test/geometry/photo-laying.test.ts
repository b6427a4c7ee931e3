import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laidOnTwo, pictureAt, placeOf } from '#geometry/photo-laying.ts';

const pixel = fc.record({ x: fc.integer({ min: 0, max: 4000 }), y: fc.integer({ min: 0, max: 3000 }) });

describe('a photograph laid on a section', () => {
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

  it('should mirror about its own edge', () => {
    const laying = { x: 5, y: 1, scale: 0.01, turn: 0, mirrored: true };
    expect(placeOf(laying, { x: 100, y: 0 })).toEqual([4, 1]);
  });

  it('should find the pixel again that lies at a place', () => {
    const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const laid = fc.record({
      x: figure(-5, 5),
      y: figure(-5, 5),
      scale: figure(0.002, 0.1),
      turn: figure(-180, 180),
      mirrored: fc.boolean(),
    });
    fc.assert(
      fc.property(laid, pixel, (laying, at) => {
        const found = pictureAt(laying, placeOf(laying, at));
        expect(found.x).toBeCloseTo(at.x, 6);
        expect(found.y).toBeCloseTo(at.y, 6);
      }),
      { seed: 1412, numRuns: 300 },
    );
  });
});
