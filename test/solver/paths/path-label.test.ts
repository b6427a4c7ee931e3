// What a path has picked up, packed into one number, against the same kept as a plain list.

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  alongWorst,
  begun,
  betterBy,
  CLASSES,
  countOf,
  hopped,
  noMoreThan,
  pliesOf,
  plyOf,
  withHop,
  withMaterial,
  withPlies,
} from '#solver/paths/path-label.ts';
import { countAll, type Counting, packed } from '#solver/paths/ply-count.ts';
import { MANY } from '#solver/network/pieces.ts';

const picked = fc.record({
  counts: fc.array(fc.integer({ min: 0, max: MANY }), { minLength: CLASSES, maxLength: CLASSES }),
  better: fc.integer({ min: 0, max: 3 }),
  hop: fc.boolean(),
});
type Picked = typeof picked extends fc.Arbitrary<infer T> ? T : never;

const codeOf = ({ counts, better, hop }: Picked): number =>
  withHop(
    withMaterial(
      withPlies(
        begun(3),
        counts.reduce((sum, count, cls) => sum + plyOf(cls, count), 0),
      ),
      better,
    ),
    hop,
  );

const countsOf = (code: number) => Array.from({ length: CLASSES }, (_, cls) => countOf(code, cls));

describe('the code of a path', () => {
  it('should give back what was put in', () => {
    fc.assert(
      fc.property(picked, (what) => {
        const code = codeOf(what);
        expect(countsOf(code)).toEqual(what.counts);
        expect([betterBy(code), hopped(code)]).toEqual([what.better, what.hop]);
        expect(betterBy(alongWorst(code))).toBe(0);
        expect(countsOf(alongWorst(code))).toEqual(what.counts);
        expect(pliesOf(code)).toBe(
          Math.min(
            MANY,
            what.counts.reduce((a, b) => a + b),
          ),
        );
      }),
    );
  });

  it('should have no more than another where that holds of every field', () => {
    fc.assert(
      fc.property(picked, picked, (a, b) => {
        const counts = a.counts.every((count, cls) => count <= b.counts[cls]!);
        const expected = counts && a.better <= b.better && (!a.hop || b.hop);
        expect(noMoreThan(codeOf(a), codeOf(b))).toBe(expected);
      }),
    );
  });

  it('should add plies up to the most that are told apart, leaving material and hop', () => {
    fc.assert(
      fc.property(picked, picked, (a, b) => {
        const sum = withPlies(codeOf(a), codeOf({ ...b, better: 0, hop: false }));
        expect(countsOf(sum)).toEqual(a.counts.map((count, cls) => Math.min(MANY, count + b.counts[cls]!)));
        expect([betterBy(sum), hopped(sum)]).toEqual([a.better, a.hop]);
      }),
    );
  });

  it('should keep the worse material', () => {
    expect(betterBy(withMaterial(withMaterial(begun(3), 2), 1))).toBe(1);
    expect(betterBy(withMaterial(withMaterial(begun(3), 1), 2))).toBe(1);
  });
});

describe('counting', () => {
  const grading: Counting = {
    classes: [0, null, 1],
    enough: [],
    byRank: true,
  };

  it('should count what is worth something, each class by itself', () => {
    const code = packed(
      [
        { stuff: 0, count: 1 },
        { stuff: 1, count: 3 },
        { stuff: 2, count: 2 },
      ],
      grading,
    );
    expect(countsOf(code)).toEqual([1, 2, 0, 0, 0, 0]);
  });

  it('should count plies of any stuff together for printing and look for no more than asked', () => {
    const all = countAll(3);
    const two = [
      { stuff: 4, count: 1 },
      { stuff: 9, count: 1 },
    ];
    expect(countOf(packed(two, all), 0)).toBe(2);
    expect(all.enough).toEqual([4]);
  });

  it('should count nothing where nothing is punctured', () => {
    expect(packed(null, grading)).toBe(0);
  });

  it('should count many plies as many, each listed by itself', () => {
    const all = countAll(3);
    for (const plies of [5, 8, 9, 15, 16, 17, 250, 320]) {
      const code = packed(
        Array.from({ length: plies }, () => ({ stuff: 2, count: 1 })),
        all,
      );
      expect(code, `${plies} plies`).toBe(plyOf(0, MANY));
    }
  });
});
