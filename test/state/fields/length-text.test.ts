import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { shownLength, summedLength, takenLength } from '#state/fields/length-text.ts';
import { LENGTH_UNITS, tellLengthsIn } from '#words/text/length-unit.ts';

afterEach(() => tellLengthsIn(() => 'mm'));

describe('a length typed into a field', () => {
  it.each(LENGTH_UNITS)(
    'should be in the file in millimetres, whatever unit stands behind it: %s',
    (unit) => {
      tellLengthsIn(() => unit);
      expect(['0.1 in', '4 mil', '3 mm', '.118"', '5 thou'].map(takenLength)).toEqual([
        '2.54 mm',
        '0.1016 mm',
        '3 mm',
        '2.9972 mm',
        '0.127 mm',
      ]);
    },
  );

  it('should be read in the shown unit where it has none', () => {
    expect(takenLength('3')).toBe('3');
    tellLengthsIn(() => 'mil');
    expect(takenLength('4')).toBe('0.1016 mm');
    tellLengthsIn(() => 'in');
    expect(takenLength('.1')).toBe('2.54 mm');
  });

  it('should keep its interval, what nobody knows, a wire gauge and what cannot be read', () => {
    tellLengthsIn(() => 'mil');
    expect(takenLength('100 ± 4')).toEqual({ value: '2.54 mm', plusMinus: '0.1016 mm' });
    expect(['?', '26 AWG', '3 apples', ''].map(takenLength)).toEqual([
      'unknown',
      '26 AWG',
      '3 apples',
      undefined,
    ]);
  });

  it('should take a sum of bare numbers in the shown unit', async () => {
    tellLengthsIn(() => 'mil');
    expect(await summedLength('2*2')).toBe('0.1016 mm');
    expect(await summedLength('1 mm + 0.1 in')).toBe('3.54 mm');
    expect(await summedLength('2/0')).toBe('');
  });
});

describe('a length of the file on the page', () => {
  it('should stand as the file has it while the page shows millimetres', () => {
    expect([3, '3 mm', { value: '3 mm', plusMinus: '0.2 mm' }, 'unknown'].map(shownLength)).toEqual([
      '3',
      '3 mm',
      '3 mm ± 0.2 mm',
      '?',
    ]);
  });

  it('should follow the shown unit', () => {
    tellLengthsIn(() => 'in');
    expect(
      [25.4, '2.54 mm', { value: '5.08 mm', plusMinus: '0.254 mm' }, 'unknown'].map(shownLength),
    ).toEqual(['1 in', '0.1 in', '0.2 in ± 0.01 in', '?']);
  });

  it('should come back as it was typed, to the digits shown', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (hundredths) => {
        tellLengthsIn(() => 'mil');
        const typed = `${hundredths / 100} mil`;
        expect(shownLength(takenLength(typed))).toBe(typed);
      }),
      { seed: 14 },
    );
  });
});
