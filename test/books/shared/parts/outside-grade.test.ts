import { describe, expect, it } from 'vitest';

import type { Outside } from '#model/design/outside.ts';
import { known, leftOut } from '#model/quantity/reading.ts';
import { gradeOfOutside } from '#books/shared/parts/outside-grade.ts';
import { mm } from '#units/quantity.ts';

const REQUIRED = {
  clearance: { basic: mm(1.5), reinforced: mm(3) },
  creepage: { basic: mm(2.5), reinforced: mm(5) },
};

const entry = (clearance: number | null, creepage: number | null): Outside => ({
  between: ['pri', 'out'],
  what: 'pin rows',
  clearance: clearance === null ? null : known(mm(clearance)),
  creepage: creepage === null ? null : known(mm(creepage)),
  materialGroup: leftOut,
  working: null,
});

const grade = (clearance: number | null, creepage: number | null) =>
  gradeOfOutside(entry(clearance, creepage), REQUIRED).grade;

describe('gradeOfOutside', () => {
  it('should take the lower of clearance and creepage, exactly at a bound included', () => {
    expect(grade(3, 5)).toBe('reinforced');
    expect(grade(3, 4.999999)).toBe('basic');
    expect(grade(1.499999, 8)).toBe('functional');
  });

  it('should judge by the one figure that is given', () => {
    expect(grade(3, null)).toBe('reinforced');
    expect(grade(null, 2.5)).toBe('basic');
    expect(grade(null, null)).toBeNull();
  });

  it('should reach nothing where the book has no figure', () => {
    expect(gradeOfOutside(entry(9, 9), null).grade).toBe('functional');
  });
});
