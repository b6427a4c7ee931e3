import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { fileLengthWords } from '#words/text/file-length.ts';
import { inMillimetres, LENGTH_UNITS, tellLengthsIn, unitStep } from '#words/text/length-unit.ts';
import { askedLength, dimension, lengthDown, lengthTaken, lengthUp } from '#words/text/number-words.ts';

afterEach(() => tellLengthsIn(() => 'mm'));

describe('lengths in the unit that the reader chose', () => {
  it('should be told in millimetres until another is chosen', () => {
    expect([lengthDown(4.836), lengthUp(5.6), dimension(3)]).toEqual(['4.83', '5.6', '3.00']);
  });

  it('should be told in inches to a ten-thousandth: 25.4 mm are one', () => {
    tellLengthsIn(() => 'in');
    expect([lengthDown(25.4), dimension(12.7), askedLength(5.6)]).toEqual(['1.0000', '0.5000', '0.2205 in']);
    expect(dimension(0.06)).toBe('0.00236');
  });

  it('should be told in thousandths of an inch to a tenth of one', () => {
    tellLengthsIn(() => 'mil');
    expect([lengthDown(4.83), lengthUp(5.6), dimension(0.06)]).toEqual(['190.1', '220.5', '2.36']);
  });

  it('should never look better than they are, in any unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), fc.constantFrom(...LENGTH_UNITS), (nm, unit) => {
        tellLengthsIn(() => unit);
        const { mm, stepNm } = unitStep();
        const has = Number(lengthDown(nm / 1e6)) * mm * 1e6;
        const asked = Number(lengthUp(nm / 1e6)) * mm * 1e6;
        const takes = Number(lengthTaken(nm / 1e6)) * mm * 1e6;
        expect(has).toBeLessThan(nm + 1e-3);
        expect(has).toBeGreaterThan(nm - stepNm);
        expect(asked).toBeGreaterThan(nm - 1e-3);
        expect(takes).toBeLessThan(nm + stepNm);
      }),
      { seed: 14 },
    );
  });

  it('should stay in millimetres where a paper is written', () => {
    tellLengthsIn(() => 'mil');
    expect(inMillimetres(() => askedLength(5.6))).toBe('5.6 mm');
    expect(() =>
      inMillimetres(() => {
        throw new Error('broken off');
      }),
    ).toThrow('broken off');
    expect(askedLength(5.6)).toBe('220.5 mil');
  });

  it('should tell a length of the file, and leave what is none', () => {
    tellLengthsIn(() => 'mil');
    expect(['0.1016 mm', '3 mm', 'riser'].map(fileLengthWords)).toEqual(['4 mil', '118.11 mil', 'riser']);
  });
});
