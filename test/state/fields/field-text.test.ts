import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textOf, valueOf } from '#state/fields/field-text.ts';
import { saysTheSame, understood } from '#state/fields/quantity-echo.ts';

describe('field text', () => {
  it('should read what one types', () => {
    expect(valueOf(' 3 mm ', 'quantity')).toBe('3 mm');
    expect(valueOf('3 mm ± 0.2 mm', 'quantity')).toEqual({ value: '3 mm', plusMinus: '0.2 mm' });
    expect(valueOf('3 +- 0.2', 'quantity')).toEqual({ value: '3', plusMinus: '0.2' });
    expect(valueOf('?', 'quantity')).toBe('unknown');
    expect(valueOf('', 'quantity')).toBeUndefined();
    expect(valueOf('4 kV dc', 'withstand')).toEqual({ value: '4 kV', shape: 'dc' });
    expect(valueOf('3 kV', 'withstand')).toBe('3 kV');
    expect(valueOf('3', 'count')).toBe(3);
    expect(valueOf('3.5', 'count')).toBe('3.5');
    expect(valueOf('10 %', 'share')).toBe(0.1);
    expect([textOf(0.1, 'share'), textOf(0.055, 'share')]).toEqual(['10 %', '5.5 %']);
  });

  it('should come back to the same value by its own text', () => {
    const value = fc.oneof(
      fc.constantFrom('3 mm', '.118"', '2x1.5 mm', 'unknown', '0.8 kg'),
      fc.record({ value: fc.constantFrom('3 mm', '1.65'), plusMinus: fc.constantFrom('0.2 mm', '0.05') }),
    );
    fc.assert(
      fc.property(value, (each) => {
        expect(valueOf(textOf(each), 'quantity')).toEqual(each);
      }),
      { seed: 2611 },
    );
    const direct = { value: '4 kV', plusMinus: '0.1 kV', shape: 'dc' };
    expect(valueOf(textOf(direct), 'withstand')).toEqual(direct);
  });

  it('should say what was understood, and keep still where nothing can be', () => {
    expect(understood('.118"', 'length')).toBe('2.9972 mm');
    expect(understood('2x1.5', 'length')).toBe('3.00 mm');
    expect(understood({ value: '3 mm', plusMinus: '0.2 mm' }, 'length')).toBe('3.00 mm ± 0.20 mm');
    expect(understood('0.8 kg', 'length')).toBe('');
    expect(understood('unknown', 'length')).toBe('');
    expect(understood(undefined, 'length')).toBe('');
  });

  it('should not repeat a figure that differs by noughts only', () => {
    expect(saysTheSame('3 mm', '3.00 mm')).toBe(true);
    expect(saysTheSame('1.65 mm', '1.65 mm')).toBe(true);
    expect(saysTheSame('3', '3.00 mm')).toBe(false);
    expect(saysTheSame('300 mm', '3 mm')).toBe(false);
  });
});
