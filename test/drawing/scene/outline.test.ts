import { describe, expect, it } from 'vitest';
import { outlineOf } from '#drawing/scene/outline.ts';

const box = (x0: number, y0: number, x1: number, y1: number) => ({ x0, y0, x1, y1 });

/** Twice the signed area; loops run with the filled side on their left. */
const area = (loops: ReturnType<typeof outlineOf>) =>
  loops
    .flatMap((loop) =>
      loop.map(([x, y], k) => {
        const [nx, ny] = loop[(k + 1) % loop.length] ?? [x, y];
        return (x * ny - nx * y) / 2;
      }),
    )
    .reduce((sum, part) => sum + part, 0);

describe('outlineOf', () => {
  it('should give one box back', () => {
    const loops = outlineOf([box(0, 0, 2, 1)]);
    expect(loops.length).toBe(1);
    expect(loops[0]?.length).toBe(4);
    expect(area(loops)).toBe(2);
  });

  it('should drop the joint between two boxes that share a side', () => {
    expect(outlineOf([box(0, 0, 2, 1), box(2, 0, 3, 1)])).toEqual([
      [
        [0, 0],
        [3, 0],
        [3, 1],
        [0, 1],
      ],
    ]);
  });

  it('should keep a hole open', () => {
    const frame = [box(0, 0, 4, 1), box(0, 3, 4, 4), box(0, 1, 1, 3), box(3, 1, 4, 3)];
    expect(outlineOf(frame).length).toBe(2);
    expect(area(outlineOf(frame))).toBe(16 - 4);
  });

  it('should keep two boxes apart that touch at a corner', () => {
    const loops = outlineOf([box(0, 0, 1, 1), box(1, 1, 2, 2)]);
    expect(loops.map((loop) => loop.length)).toEqual([4, 4]);
  });

  it('should not count an overlap twice', () => {
    expect(area(outlineOf([box(0, 0, 2, 2), box(1, 1, 3, 3)]))).toBe(7);
  });
});
