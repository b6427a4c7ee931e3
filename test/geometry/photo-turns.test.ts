import { describe, expect, it } from 'vitest';
import { nextTurn, turnRows } from '#geometry/photo-turns.ts';

const at = (x: number, y: number) => ({ x, y });
const lengths = (...points: readonly (readonly [number, number])[]): readonly number[] =>
  turnRows(points.map(([x, y]) => at(x, y))).map((row) => row.length);

describe('turns marked on a photograph', () => {
  it('should lie in rows, whether the next is marked there or back', () => {
    expect(lengths([0, 0], [10, 0], [20, 1], [0, 10], [10, 10])).toEqual([3, 2]);
    expect(lengths([0, 0], [10, 0], [20, 1], [20, 11], [10, 10], [0, 9])).toEqual([3, 3]);
    expect(lengths()).toEqual([]);
    expect(lengths([4, 4])).toEqual([1]);
  });

  it('should be awaited one step on, along a row that leans', () => {
    expect(nextTurn([at(0, 0)])).toBe(null);
    expect(nextTurn([at(0, 0), at(10, 1), at(22, 2)])).toEqual(at(33, 3));
    // of the row that is being marked
    expect(nextTurn([at(0, 0), at(10, 0), at(20, 0), at(20, 10), at(12, 10)])).toEqual(at(4, 10));
  });

  it('should be awaited at the step of the row before where a row begins, away from the end that it begins at', () => {
    const row = [at(0, 0), at(10, 0), at(20, 0)];
    expect(nextTurn([...row, at(20, 10)])).toEqual(at(10, 10));
    expect(nextTurn([...row, at(0, 10)])).toEqual(at(10, 10));
    expect(nextTurn([])).toBe(null);
  });
});
