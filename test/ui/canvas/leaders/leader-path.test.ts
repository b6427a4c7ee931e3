import { describe, expect, it } from 'vitest';
import { leaderPath } from '#ui/canvas/leaders/leader-path.ts';

const flag = { left: 60, right: 92, top: 40, bottom: 62 };

describe('leaderPath', () => {
  it('should go level to the bend and slanting to its row', () => {
    expect(leaderPath([10, 50], 100, [120, 130, 80], [])).toBe('M10 50H100L120 80H130');
  });

  it('should leave out what it would run through', () => {
    expect(leaderPath([10, 50], 100, [120, 130, 80], [flag])).toBe('M10 50H58M94 50H100L120 80H130');
    expect(leaderPath([10, 70], 100, [120, 130, 80], [flag])).toBe('M10 70H100L120 80H130');
  });
});
