import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { multiples, rulerSteps, stepAtLeast } from '#drawing/marks/ruler-steps.ts';

describe('rulerSteps', () => {
  it('should count whole millimetres with tenths between them at a working scale', () => {
    expect(rulerSteps(66.7, 26)).toEqual({ piece: 1, fine: 0.1, number: 1 });
  });

  it('should leave out what would run together', () => {
    expect(rulerSteps(22, 26)).toEqual({ piece: 1, fine: 0.2, number: 2 });
    expect(rulerSteps(2, 26)).toEqual({ piece: 5, fine: null, number: 20 });
  });

  it('should number tenths only in a close view', () => {
    expect(rulerSteps(400, 26).number).toBe(0.1);
    expect(rulerSteps(140, 26).number).toBe(1);
  });
});

describe('rulerSteps in inches', () => {
  it('should count in twentieths of an inch and fifty thousandths, with finer ticks between', () => {
    expect(rulerSteps(66.7 * 25.4, 26, 'in')).toEqual({ piece: 0.05, fine: 0.005, number: 0.05 });
    expect(rulerSteps(66.7 * 0.0254, 26, 'mil')).toEqual({ piece: 50, fine: 5, number: 50 });
  });
});

describe('stepAtLeast', () => {
  it('should be 1, 2 or 5 times a power of ten, and the smallest such that is long enough', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1e4, noNaN: true }), (length) => {
        const step = stepAtLeast(length);
        const first = Number(step.toExponential(6).split('e')[0]);
        expect([1, 2, 5]).toContain(first);
        expect(step).toBeGreaterThanOrEqual(length);
        expect(step / (first === 5 ? 2.5 : 2)).toBeLessThan(length);
      }),
      { seed: 12 },
    );
  });
});

describe('multiples', () => {
  it('should begin and end inside the ruler', () => {
    expect(multiples(0.1, 0.25, 0.61)).toEqual([0.3, 0.4, 0.5, 0.6]);
    expect(multiples(1, 0, 3)).toEqual([0, 1, 2, 3]);
    expect(multiples(1, 0.2, 0.8)).toEqual([]);
    expect(multiples(5, -10, 10)).toEqual([-10, -5, 0, 5, 10]);
  });
});
