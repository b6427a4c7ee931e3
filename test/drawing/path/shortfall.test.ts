import { describe, expect, it } from 'vitest';
import { shortfallOf } from '#drawing/path/shortfall.ts';
import type { PathLeg } from '#judge/verdict/path.ts';

const leg = (from: [number, number], to: [number, number]): PathLeg => ({
  kind: 'surface',
  from,
  to,
  length: Math.hypot(to[0] - from[0], to[1] - from[1]),
  plies: 0,
  course: null,
});
const shortfall = (required: number | null, ...legs: readonly PathLeg[]) => {
  const length = legs.reduce((sum, each) => sum + each.length, 0);
  const path = { between: ['a', 'b'], metric: 'creepage', section: 'plain', short: true } as const;
  return shortfallOf({ ...path, legs, length, required }, [0, 12]);
};

describe('shortfallOf', () => {
  it('should go on beyond the shorter margin, whichever end it is', () => {
    const [long, climb, short] = [leg([3, 1], [0, 1]), leg([0, 1], [0, 2]), leg([0, 2], [1, 2])];
    expect(shortfall(6, long, climb, short)).toEqual({ from: [1, 2], to: [2, 2], missing: 1, isPlace: true });
    const back = [leg([1, 2], [0, 2]), leg([0, 2], [0, 1]), leg([0, 1], [3, 1])];
    expect(shortfall(6, ...back)).toEqual({ from: [1, 2], to: [2, 2], missing: 1, isPlace: true });
  });

  it('should go inward from the nearer flange where no margin is', () => {
    expect(shortfall(3, leg([0, 1], [0, 2]))?.to).toEqual([2, 2]);
    expect(shortfall(3, leg([12, 1], [12, 2]))?.to).toEqual([10, 2]);
  });

  it('should stay between the flanges and keep the whole figure', () => {
    expect(shortfall(30, leg([0, 1], [0, 2]))).toEqual({
      from: [0, 2],
      to: [12, 2],
      missing: 29,
      isPlace: false,
    });
  });

  it('should promise nothing of a margin where the way goes through plies, over the core or by contact', () => {
    const level = leg([3, 1], [0, 1]);
    expect(shortfall(6, level, { ...leg([0, 1], [0, 2]), kind: 'through', length: 0, plies: 1 })).toBeNull();
    expect(shortfall(6, level, { ...leg([0, 1], [0, 2]), kind: 'over', length: 0 })).toBeNull();
    expect(shortfall(6, leg([3, 1], [3, 1]))).toBeNull();
  });

  it('should be nothing where the path is long enough or nothing is asked', () => {
    expect(shortfall(1, leg([0, 1], [0, 2]))).toBeNull();
    expect(shortfall(null, leg([0, 1], [0, 2]))).toBeNull();
  });
});
