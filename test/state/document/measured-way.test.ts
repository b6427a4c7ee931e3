import { describe, expect, it } from 'vitest';
import { measuredWay } from '#state/document/measured-way.ts';
import { mm } from '#units/quantity.ts';
import { greenhouse } from '#test/papers/greenhouse.ts';

const plain = greenhouse.sections.find(({ name }) => name === 'plain')!;
const between = (from: readonly [number, number], to: readonly [number, number]) =>
  measuredWay(plain, [mm(from[0]), mm(from[1])], [mm(to[0]), mm(to[1])]);

describe('measuredWay', () => {
  it('should count the plies on the straight way', () => {
    // from the top of P to the foot of S, through three plies of 0.06 mm
    expect(between([5, 0.92], [5, 1.1])).toMatchObject({
      straight: 0.18,
      plies: 3,
      solids: [],
      metal: false,
    });
  });

  it('should go round by the tape edge at the flange where it goes through nothing', () => {
    // 3.00 along the margin, 0.18 up the edges of the tape, 1.65 back: as the judge has it
    expect(between([3, 0.92], [1.65, 1.1]).surface).toBeCloseTo(4.83, 2);
  });

  it('should tell air and metal apart', () => {
    expect(between([2, 3.2], [10, 4])).toMatchObject({ plies: 0, solids: [], metal: false });
    expect(between([0.5, 0.5], [11, 0.5])).toMatchObject({ metal: true, solids: ['block'] });
  });
});
