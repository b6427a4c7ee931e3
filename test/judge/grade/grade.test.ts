import { describe, expect, it } from 'vitest';
import { reaches } from '#standards/ladder.ts';
import { BASIC_AND_SUPPLEMENTARY, BASIC_ONLY, FUNCTIONAL, REINFORCED } from '#books/questions/insulation.ts';
import { distanceInsulation, inSeries } from '#judge/grade/grade.ts';
import { mm } from '#units/quantity.ts';

describe('inSeries', () => {
  it('should be reinforced where any insulation is', () => {
    expect(inSeries([FUNCTIONAL, REINFORCED])).toBe('reinforced');
  });

  it('should be double only where one is basic and another supplementary', () => {
    expect(inSeries([BASIC_ONLY, BASIC_AND_SUPPLEMENTARY])).toBe('double');
    expect(inSeries([BASIC_AND_SUPPLEMENTARY, BASIC_AND_SUPPLEMENTARY])).toBe('double');
    expect(inSeries([BASIC_ONLY, BASIC_ONLY])).toBe('basic');
    expect(inSeries([BASIC_AND_SUPPLEMENTARY, FUNCTIONAL])).toBe('supplementary');
  });

  it('should be functional where none is basic', () => {
    expect(inSeries([FUNCTIONAL, FUNCTIONAL])).toBe('functional');
  });
});

describe('distanceInsulation', () => {
  it('should reach a grade exactly at the distance asked', () => {
    expect(distanceInsulation(mm(5), mm(2.5), mm(5))).toEqual(REINFORCED);
    expect(distanceInsulation(mm(4.999), mm(2.5), mm(5))).toEqual(BASIC_AND_SUPPLEMENTARY);
    expect(distanceInsulation(mm(2.499), mm(2.5), mm(5))).toEqual(FUNCTIONAL);
  });

  it('should reach nothing where the book has no figure', () => {
    expect(distanceInsulation(mm(100), null, null)).toEqual(FUNCTIONAL);
  });
});

describe('reaches', () => {
  it('should let double serve where reinforced is asked, and basic never for supplementary', () => {
    expect(reaches('double', 'reinforced')).toBe(true);
    expect(reaches('supplementary', 'reinforced')).toBe(false);
    expect(reaches('basic', 'supplementary')).toBe(false);
    expect(reaches('none', null)).toBe(true);
  });
});
