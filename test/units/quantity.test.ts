import { describe, expect, it } from 'vitest';
import { inMm, mm, nm, of, peakOfSine, voltsRms } from '#units/quantity.ts';

describe('quantity', () => {
  it('should make whole nanometres of millimetres, to the nearest one', () => {
    expect(mm(0.07)).toBe(70_000);
    expect(mm(0.0000004)).toBe(0);
    expect(mm(0.0000006)).toBe(1);
    expect(inMm(mm(3.05))).toBe(3.05);
  });

  it('should let no fraction of a nanometre and no endless number in', () => {
    expect(() => nm(0.5)).toThrow(RangeError);
    expect(() => nm(2 ** 53)).toThrow(RangeError);
    for (const value of [NaN, Infinity, -Infinity]) {
      expect(() => of<'V rms'>(value)).toThrow(RangeError);
      expect(() => mm(value)).toThrow(RangeError);
    }
  });

  it('should give the peak of a sine', () => {
    expect(peakOfSine(voltsRms(240))).toBeCloseTo(339.41, 2);
  });
});
