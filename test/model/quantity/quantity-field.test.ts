import { describe, expect, it } from 'vitest';
import { quantityField, type QuantityField } from '#model/quantity/quantity-field.ts';

const LENGTH: QuantityField<'length'> = { dimension: 'length', aboveZero: false, mayBeUnknown: false };
const WIRE = { ...LENGTH, aboveZero: true };

describe('quantityField', () => {
  it('should read a text, a bare number and an interval', () => {
    expect(quantityField('3 mm', LENGTH)).toEqual({ kind: 'known', value: 3e6, plusMinus: 0 });
    expect(quantityField(3, LENGTH)).toEqual({ kind: 'known', value: 3e6, plusMinus: 0 });
    expect(quantityField({ value: 3, plusMinus: '200 um' }, LENGTH)).toEqual({
      kind: 'known',
      value: 3e6,
      plusMinus: 2e5,
    });
  });

  it('should take "unknown" only where the field may be unknown', () => {
    expect(quantityField('unknown', { ...LENGTH, mayBeUnknown: true })).toEqual({
      kind: 'unknown',
      leftOut: false,
    });
    expect(quantityField('unknown', LENGTH).kind).toBe('fault');
  });

  it('should take the ends of the range and refuse what lies beyond', () => {
    expect(quantityField('0 mm', LENGTH).kind).toBe('known');
    expect(quantityField('1 m', LENGTH).kind).toBe('known');
    expect(quantityField('1000.000001 mm', LENGTH).kind).toBe('fault');
    expect(quantityField('-0.000001 mm', LENGTH).kind).toBe('fault');
  });

  it('should refuse a wire of no thickness, also one that rounds to none', () => {
    expect(quantityField('0 mm', WIRE).kind).toBe('fault');
    expect(quantityField('0.4 nm', WIRE).kind).toBe('fault');
    expect(quantityField('1 nm', WIRE).kind).toBe('known');
  });

  it('should refuse an interval with an end outside the range, at plusMinus', () => {
    expect(quantityField({ value: '3 mm', plusMinus: '3 mm' }, LENGTH).kind).toBe('known');
    expect(quantityField({ value: '3 mm', plusMinus: '3.1 mm' }, LENGTH)).toMatchObject({
      path: ['plusMinus'],
    });
    expect(quantityField({ value: '3 mm', plusMinus: '3 mm' }, WIRE)).toMatchObject({ path: ['plusMinus'] });
    expect(quantityField({ value: '1 m', plusMinus: '1 mm' }, LENGTH)).toMatchObject({ path: ['plusMinus'] });
    expect(quantityField({ value: '3 mm', plusMinus: -1 }, LENGTH)).toMatchObject({ path: ['plusMinus'] });
  });

  it('should say where in an interval the fault lies', () => {
    expect(quantityField({ value: '3 V' }, LENGTH)).toMatchObject({ path: ['value'] });
    expect(quantityField({ value: 3, plusMinus: '3 V' }, LENGTH)).toMatchObject({ path: ['plusMinus'] });
    expect(quantityField({ value: 3, plus: 1 }, LENGTH)).toMatchObject({ path: ['plus'] });
  });

  it.each([null, true, [], {}, NaN, Infinity, undefined])('should refuse %s', (input) => {
    expect(quantityField(input, LENGTH).kind).toBe('fault');
  });

  it('should refuse what is neither nothing nor as much as any build has', () => {
    const field = { dimension: 'frequency', aboveZero: false, mayBeUnknown: false } as const;
    for (const [input, path] of [
      ['1e-308 Hz', []],
      [{ value: '50 Hz', plusMinus: '1e-9 Hz' }, ['plusMinus']],
      [{ value: '50 Hz', plusMinus: '49.95 Hz' }, ['plusMinus']],
    ] as const)
      expect(quantityField(input, field)).toMatchObject({
        kind: 'fault',
        expected: expect.stringContaining('what is not 0 is at least 0.1 Hz'),
        path,
      });
    for (const input of ['0 Hz', '0.1 Hz', { value: '50 Hz', plusMinus: '50 Hz' }])
      expect(quantityField(input, field).kind).toBe('known');
  });
});
