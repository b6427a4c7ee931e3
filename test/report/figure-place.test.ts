import { describe, expect, it } from 'vitest';
import { figureMiddle } from '#report/figure-place.ts';
import type { PathLeg } from '#rules/verdict.ts';

const leg = (from: PathLeg['from'], to: PathLeg['to']): PathLeg => ({
  kind: 'surface',
  from,
  to,
  length: Math.hypot(to[0] - from[0], to[1] - from[1]),
  plies: 0,
  says: 'along the margin',
});
const toX = (mm: number): number => 100 + 50 * mm;

describe('figureMiddle', () => {
  it('should stand over the longest leg where the turns leave room', () => {
    const legs = [leg([6, 1], [0, 1]), leg([0, 1], [0, 1.2]), leg([0, 1.2], [5, 1.2])];
    expect(figureMiddle({ legs }, toX, 40)).toBe(toX(3));
  });

  it('should give way to the turns at the outer end, on either side', () => {
    const left = [leg([3, 1], [0, 1]), leg([0, 1], [0, 1.2]), leg([0, 1.2], [1.5, 1.2])];
    expect(figureMiddle({ legs: left }, toX, 40)).toBe(toX(1.5) - 46);
    const right = [leg([10.5, 1.2], [12, 1.2]), leg([12, 1.2], [12, 1]), leg([12, 1], [9, 1])];
    expect(figureMiddle({ legs: right }, toX, 40)).toBe(toX(10.5) + 46);
  });
});
