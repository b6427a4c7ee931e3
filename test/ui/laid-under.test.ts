import { describe, expect, it } from 'vitest';
import { matrixOf } from '#ui/pages/photographs/under/laid-under.ts';

describe('a photograph under the section', () => {
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
});
