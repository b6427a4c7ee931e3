import { describe, expect, it } from 'vitest';

import { citesOf, weakestConfirmed, type Judged } from '#standards/because.ts';
import { tablesOf } from '#books/iec-62368-1/tables.ts';
import { AS_FILED } from '#standards/tables/reader.ts';
import type { OutOfRange } from '#standards/tables/out-of-range.ts';
import { hertz, voltsPeak, voltsRms, type VoltsPeak } from '#units/quantity.ts';

const { voltages } = tablesOf(AS_FILED);

const book = voltages;

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
  const reinforced = (frequency: number, material: string | null = null): number =>
    book.highFrequencyTest(voltsPeak(500), hertz(frequency), 'reinforced', material)?.value ?? 0;

  it('should not be asked at 30 kHz and be asked just above', () => {
    expect(book.highFrequencyTest(voltsPeak(500), hertz(30_000), 'basic', null)).toBeNull();
    const above = book.highFrequencyTest(voltsPeak(500), hertz(30_001), 'basic', null);
    expect(above?.value).toBeCloseTo((1.2 * 500) / 0.346, 6);
  });

  it.each([
    [65_000, 0.346, '0.55 0.47 0.28 0.22 0.21'],
    [100_000, 0.346, 'the same, the column is met'],
    [100_001, 0.28, '0.48 0.40 0.22 0.15 0.15'],
    [300_000, 0.248, '0.45 0.32 0.21 0.13 0.13'],
  ])('should take the mean of mica to glass in the next column up: %d Hz gives %d (%s)', (at, factor) => {
    expect(reinforced(at)).toBeCloseTo((2.4 * 500) / factor, 6);
  });

  it('should take the row that bears the name of the material, in the next column up', () => {
    expect(reinforced(65_000, 'phenolic')).toBeCloseTo((2.4 * 500) / 0.71, 6);
    expect(reinforced(100_001, 'ptfe')).toBeCloseTo((2.4 * 500) / 0.52, 6);
    // PET, polyolefin and glass cloth are none of the table's materials
    for (const id of ['pet', 'polyolefin', 'glass-tape'])
      expect(reinforced(65_000, id)).toBe(reinforced(65_000));
  });

  it('should name every row of the mean and the rule that takes it', () => {
    const found = book.highFrequencyTest(voltsPeak(500), hertz(65_000), 'reinforced', null);
    const cells = found === null ? [] : citesOf(found.because).map(({ cell }) => cell);
    expect(cells).toContain('polystyrene, 0.75 mm, 100 kHz');
    expect(cells).toContain('reduction-unlisted, first');
  });
});
