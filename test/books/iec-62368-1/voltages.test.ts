import { describe, expect, it } from 'vitest';

import { citesOf, weakestConfirmed, type Judged } from '#standards/because.ts';
import { ruleBook, type Book } from '#books/book.ts';
import type { OutOfRange } from '#standards/out-of-range.ts';
import { hertz, voltsPeak, voltsRms, type VoltsPeak } from '#units/quantity.ts';

const book = ruleBook('iec-62368-1') as Book;

function level(answer: Judged<VoltsPeak> | OutOfRange): number {
  if ('kind' in answer) throw new Error(answer.says);
  return answer.value;
}

describe('test voltages', () => {
  it('should ask 2.5 and 4.0 kV for a transient of 2.5 kV', () => {
    expect(level(book.testByTransient(voltsPeak(2500), 'basic'))).toBe(2500);
    expect(level(book.testByTransient(voltsPeak(2500), 'reinforced'))).toBe(4000);
  });

  it('should interpolate between rows and take the first row below it', () => {
    // (4.0 + 6.0) / 2 between 2.5 and 4 kV
    expect(level(book.testByTransient(voltsPeak(3250), 'reinforced'))).toBeCloseTo(5000, 9);
    expect(level(book.testByTransient(voltsPeak(100), 'reinforced'))).toBe(500);
    expect(level(book.testByWorkingPeak(voltsPeak(100), 'basic'))).toBe(430);
  });

  it('should multiply above the last row', () => {
    expect(level(book.testByTransient(voltsPeak(20_000), 'reinforced'))).toBe(30_000);
    expect(level(book.testByWorkingPeak(voltsPeak(20_000), 'basic'))).toBe(26_000);
  });

  it('should enter the temporary overvoltage by the mains without interpolation', () => {
    expect(level(book.temporaryOvervoltage(voltsRms(250)))).toBe(2000);
    expect(level(book.temporaryOvervoltage(voltsRms(251)))).toBe(2500);
    expect(level(book.testByTemporaryOvervoltage(voltsRms(240), 'reinforced'))).toBe(4000);
    expect(level(book.testByTemporaryOvervoltage(voltsRms(251), 'basic'))).toBe(2500);
    expect(book.testByTemporaryOvervoltage(voltsRms(601), 'basic')).toMatchObject({ kind: 'out-of-range' });
  });

  it('should say how long a type test and a routine test last', () => {
    expect(book.testSeconds.value).toBe(60);
    expect(book.routineTest.value).toEqual({ secondsLeast: 1, secondsMost: 4, levelShare: 0.9 });
    expect(weakestConfirmed(book.testSeconds.because)).toBe('published');
  });
});

describe('high-frequency test', () => {
  it('should not be asked at 30 kHz and be asked just above', () => {
    expect(book.highFrequencyTest(voltsPeak(500), hertz(30_000), 'basic', null)).toBeNull();
    const above = book.highFrequencyTest(voltsPeak(500), hertz(30_001), 'basic', null);
    // lowest thin film at 30 kHz: 0.61
    expect(above?.value).toBeCloseTo((1.2 * 500) / 0.61, 1);
  });

  it('should take the lowest thin film at each frequency where the material has no row', () => {
    const found = book.highFrequencyTest(voltsPeak(500), hertz(65_000), 'reinforced', null);
    // halfway from 0.61 at 30 kHz to 0.39 at 100 kHz: 0.50
    expect(found?.value).toBeCloseTo((2.4 * 500) / 0.5, 6);
    const cells = found === null ? [] : citesOf(found.because).map(({ cell }) => cell);
    expect(cells).toContain('polycarbonate film, 0.03 mm, 100 kHz');
  });

  it('should take the row of a material that has one', () => {
    const found = book.highFrequencyTest(voltsPeak(500), hertz(100_000), 'basic', 'polyethylene');
    expect(found?.value).toBeCloseTo(600 / 0.28, 6);
    expect(() => book.highFrequencyTest(voltsPeak(500), hertz(100_000), 'basic', 'oak')).toThrow('oak');
  });
});
