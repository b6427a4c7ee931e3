import { describe, expect, it } from 'vitest';
import { flagsOf } from '#drawing/compose/scene-flags.ts';
import { greenhouseVerdict } from '#test/papers/greenhouse.ts';

const frame = { x0: -1, y0: -1, x1: 13, y1: 6 };
const [narrow, drifting, bare] = greenhouseVerdict.weakSpots as [Spot, Spot, Spot];
type Spot = (typeof greenhouseVerdict.weakSpots)[number];

describe('flags of a section', () => {
  it('should be filled for spots on it and hollow for so many of the others', () => {
    const numbered = (most: number) =>
      flagsOf([narrow, drifting, bare], 'plain', frame, most).map(({ number, here }) => [number, here]);
    expect(numbered(3)).toEqual([
      [1, true],
      [2, false],
      [3, false],
    ]);
    expect(numbered(1)).toEqual([
      [1, true],
      [2, false],
    ]);
  });

  it('should point at no place for what belongs to none', () => {
    const pins = { ...narrow, section: 'outside' };
    const hot = { ...narrow, between: null };
    const flags = flagsOf([pins, hot, narrow], 'plain', frame, 3);
    expect(flags.map(({ number }) => number)).toEqual([3]);
  });
});
