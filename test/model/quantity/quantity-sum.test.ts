import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantitySum } from '#model/quantity/quantity-sum.ts';

const figure = (text: string) => {
  const found = quantitySum(text, 'length');
  return found.kind === 'figure' ? found.value : found.why;
};

describe('quantitySum', () => {
  it.each([
    ['2*0.06+0.025 mm', 0.145],
    ['3.2 mm - 0.4', 2.8],
    ['(1.5 + 2.5) / 2', 2],
    ['1/8 in', 3.175],
    ['1/8"', 3.175],
    ['3*60 µm', 0.18],
    ['3 * (60 um + 5 um)', 0.195],
    ['2*0,06', 0.12],
    ['12.8 mm / 2 - 0.8', 5.6],
    ['-(1 mm) + 3', 2],
    ['6 mm / 2 mm', 3],
  ])('should read %s as %d mm', (text, mm) => {
    expect(figure(text)).toBe(mm);
  });

  it.each([
    ['2 mm * 3 mm', 'two of a length multiplied'],
    ['1 / (2 mm)', 'divided by a length'],
    ['3 V + 1 mm', 'no unit of a length: V'],
    ['1/0', 'it divides by nothing'],
    ['2^3', 'only numbers'],
    ['sqrt(4)', 'only numbers'],
    ['a = 3', 'only numbers'],
    ['[1, 2]', 'only numbers'],
    ['1:5', 'only numbers'],
    ['import("fs")', 'only numbers'],
    ['1 +', 'not a sum'],
    ['1,500 + 2', 'a comma before three digits'],
    [`${'1+'.repeat(45)}1`, 'longer than'],
    [`${'('.repeat(70)}1`, 'not a sum'],
  ])('should refuse %s and say why', (text, why) => {
    expect(figure(text)).toContain(why);
  });

  it('should not take a sum of degrees for a temperature', () => {
    expect(quantitySum('100 degC + 30 K', 'temperature').kind).toBe('bad');
    expect(quantitySum('100 + 30', 'temperature')).toEqual({ kind: 'figure', value: 130 });
  });

  it('should answer anything that is typed, and never with what is no number', () => {
    const signs = fc.string({ unit: fc.constantFrom(...'0123456789.,+-*/() mxn"eE'), maxLength: 30 });
    fc.assert(
      fc.property(signs, (text) => {
        const found = quantitySum(text, 'length');
        expect(found.kind === 'bad' || Number.isFinite(found.value)).toBe(true);
      }),
      { seed: 21, numRuns: 300 },
    );
  });
});
