import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { photoScale, scaled } from '#geometry/photo-scale.ts';
import {
  angleSpan,
  distanceSpan,
  levelling,
  widthSpan,
  withinHalfTurn,
  type PicturePoint,
  type Span,
} from '#geometry/photo-span.ts';

const SEED = { seed: 20260217, numRuns: 500 };
const coordinate = fc.double({ min: 0, max: 1600, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate });
/** A pick that misses by at most 1 px. */
const miss = fc
  .record({
    far: fc.double({ min: 0, max: 1, noNaN: true }),
    way: fc.double({ min: 0, max: 7, noNaN: true }),
  })
  .map(({ far, way }) => ({ x: far * Math.cos(way), y: far * Math.sin(way) }));
const off = (a: PicturePoint, by: PicturePoint): PicturePoint => ({ x: a.x + by.x, y: a.y + by.y });
const holds = ({ value, plusMinus }: Span, truth: number): boolean =>
  Math.abs(value - truth) <= plusMinus + 1e-9;

describe('photo span', () => {
  it('should hold the true distance wherever both ends were picked within the half-width', () => {
    fc.assert(
      fc.property(point, point, miss, miss, (a, b, byA, byB) =>
        holds(distanceSpan(off(a, byA), off(b, byB), 1), distanceSpan(a, b, 0).value),
      ),
      SEED,
    );
  });

  it('should be no wider than the picking makes it', () => {
    const worst = distanceSpan({ x: -1, y: 0 }, { x: 101, y: 0 }, 1);
    expect(worst.value - worst.plusMinus).toBe(100);
  });

  it('should hold the true width of a strip at every angle, however its edges were picked', () => {
    const strip = fc.record({
      width: fc.double({ min: 4, max: 400, noNaN: true }),
      turn: fc.double({ min: 0, max: 3, noNaN: true }),
      along: fc.tuple(
        fc.double({ min: -300, max: -60, noNaN: true }),
        fc.double({ min: 60, max: 300, noNaN: true }),
        fc.double({ min: -300, max: -60, noNaN: true }),
        fc.double({ min: 60, max: 300, noNaN: true }),
      ),
    });
    fc.assert(
      fc.property(strip, fc.tuple(miss, miss, miss, miss), ({ width, turn, along }, misses) => {
        const at = (s: number, across: number): PicturePoint => ({
          x: 800 + s * Math.cos(turn) - across * Math.sin(turn),
          y: 600 + s * Math.sin(turn) + across * Math.cos(turn),
        });
        const [a, b, c, d] = along.map((s, i) => off(at(s, i < 2 ? 0 : width), misses[i]!));
        // picked from the other end: edges have no direction
        const found = widthSpan([a!, b!], [d!, c!], 1);
        expect(found !== null && holds(found, width)).toBe(true);
      }),
      SEED,
    );
  });

  it('should hold the true width where every point was picked as far outside as may be', () => {
    const edge = (y: number): readonly [PicturePoint, PicturePoint] => [
      { x: 0, y },
      { x: 100, y },
    ];
    expect(holds(widthSpan(edge(-1), edge(41), 1)!, 40)).toBe(true);
    expect(holds(widthSpan(edge(1), edge(39), 1)!, 40)).toBe(true);
  });

  it('should give no width for edges that lean, stand on a point, or are shorter than the picking', () => {
    const a = { x: 0, y: 0 };
    const b = { x: 100, y: 0 };
    expect(widthSpan([a, b], [a, { x: 50, y: 50 }], 1)).toBeNull();
    expect(widthSpan([a, a], [a, b], 1)).toBeNull();
    expect(
      widthSpan(
        [a, { x: 1, y: 0 }],
        [
          { x: 0, y: 9 },
          { x: 1, y: 9 },
        ],
        1,
      ),
    ).toBeNull();
  });

  it('should widen by the taper that picking cannot explain', () => {
    const level = widthSpan(
      [
        { x: 0, y: 0 },
        { x: 200, y: 0 },
      ],
      [
        { x: 0, y: 40 },
        { x: 200, y: 40 },
      ],
      1,
    )!;
    const taper = widthSpan(
      [
        { x: 0, y: 0 },
        { x: 200, y: 0 },
      ],
      [
        { x: 0, y: 30 },
        { x: 200, y: 50 },
      ],
      1,
    )!;
    expect(level.value).toBe(40);
    expect(taper.plusMinus - level.plusMinus).toBeGreaterThan(5);
  });

  it('should hold the true angle', () => {
    fc.assert(
      fc.property(point, point, point, fc.tuple(miss, miss, miss), (a, corner, b, misses) => {
        const truth = angleSpan(a, corner, b, 0);
        const found = angleSpan(off(a, misses[0]), off(corner, misses[1]), off(b, misses[2]), 1);
        return truth === null || found === null || holds(found, truth.value);
      }),
      SEED,
    );
    expect(angleSpan({ x: 9, y: 0 }, { x: 0, y: 0 }, { x: 0, y: 9 }, 0)).toEqual({ value: 90, plusMinus: 0 });
    expect(angleSpan({ x: 1, y: 0 }, { x: 0, y: 0 }, { x: 0, y: 9 }, 1)).toBeNull();
  });

  it('should turn a line level by the smaller turn, whichever end was picked first', () => {
    expect(levelling({ x: 0, y: 0 }, { x: 10, y: 10 })).toBeCloseTo(-45);
    expect(levelling({ x: 10, y: 10 }, { x: 0, y: 0 })).toBeCloseTo(-45);
    expect(levelling({ x: 0, y: 0 }, { x: -10, y: 0 })).toBe(0);
    expect(levelling({ x: 3, y: 3 }, { x: 3, y: 3 })).toBeNull();
  });
});

describe('a turn', () => {
  it('should come within half a turn', () => {
    expect([-180, 180, 181, 270, 450, -450].map(withinHalfTurn)).toEqual([180, 180, -179, -90, 90, -90]);
  });
});

describe('photo scale', () => {
  it('should hold the true length from uncertain pixels and an uncertain scale', () => {
    const lengths = fc.record({
      perPixel: fc.double({ min: 0.002, max: 0.1, noNaN: true }),
      known: fc.double({ min: 60, max: 1500, noNaN: true }),
      error: fc.double({ min: -0.02, max: 0.02, noNaN: true }),
      measured: fc.double({ min: 3, max: 1500, noNaN: true }),
    });
    fc.assert(
      fc.property(
        lengths,
        fc.tuple(miss, miss, miss, miss),
        ({ perPixel, known, error, measured }, misses) => {
          const at = (x: number, i: number): PicturePoint => off({ x, y: 0 }, misses[i]!);
          const told = { value: known * perPixel * (1 + error), plusMinus: known * perPixel * 0.02 };
          const scale = photoScale(told, at(0, 0), at(known, 1), 1);
          const found = scaled(distanceSpan(at(0, 2), at(measured, 3), 1), scale!);
          expect(holds(found, measured * perPixel)).toBe(true);
        },
      ),
      SEED,
    );
  });

  it('should give no scale from points on each other or a length that may be nothing', () => {
    const ten = { value: 10, plusMinus: 0 };
    expect(photoScale(ten, { x: 0, y: 0 }, { x: 1, y: 1 }, 1)).toBeNull();
    expect(photoScale({ value: 1, plusMinus: 1 }, { x: 0, y: 0 }, { x: 99, y: 0 }, 1)).toBeNull();
  });
});
