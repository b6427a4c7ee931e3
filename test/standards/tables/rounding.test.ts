import { describe, expect, it } from 'vitest';

import { roundUp } from '#standards/tables/rounding.ts';
import type { Rounding } from '#standards/tables/table.ts';
import { mm, nm } from '#units/quantity.ts';

const RULE: Rounding = {
  way: 'up',
  steps: [
    { upTo: 0.5, to: 0.01 },
    { upTo: null, to: 0.1 },
  ],
};

describe('roundUp', () => {
  it('should leave a value on a step alone', () => {
    for (const value of [0.07, 0.5, 0.6, 2.4, 4.8]) expect(roundUp(mm(value), RULE)).toBe(mm(value));
  });

  it('should go up by a whole step from one nanometre over', () => {
    expect(roundUp(nm(mm(0.07) + 1), RULE)).toBe(mm(0.08));
    expect(roundUp(nm(mm(0.5) + 1), RULE)).toBe(mm(0.6));
    expect(roundUp(nm(mm(2.4) + 1), RULE)).toBe(mm(2.5));
    expect(roundUp(nm(mm(2.5) - 1), RULE)).toBe(mm(2.5));
  });

  it('should use the fine step up to its bound', () => {
    expect(roundUp(mm(0.491), RULE)).toBe(mm(0.5));
    expect(roundUp(mm(0.481), RULE)).toBe(mm(0.49));
    expect(roundUp(nm(0), RULE)).toBe(0);
  });
});
