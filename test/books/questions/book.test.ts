import { describe, expect, it } from 'vitest';

import { citesOf, type Judged } from '#standards/because.ts';
import { tablesOf } from '#books/iec-62368-1/tables.ts';
import { AS_FILED } from '#standards/tables/reader.ts';
import { ruleBook, ruleBookIds } from '#books/shelf.ts';
import type { OutOfRange } from '#standards/tables/out-of-range.ts';
import { hertz, inMm, metres, mm, voltsPeak, voltsRms, type Nm } from '#units/quantity.ts';

const { distances, voltages } = tablesOf(AS_FILED);

const book = { ...distances, ...voltages };

function inRange<T>(answer: Judged<T> | OutOfRange): Judged<T> {
  if ('kind' in answer) throw new Error(answer.says);
  return answer;
}

const distance = (answer: Judged<Nm> | OutOfRange): number => inMm(inRange(answer).value);

describe('ruleBook', () => {
  it('should know its books by id and answer null to any other', () => {
    expect(ruleBookIds).toContain('iec-62368-1');
    expect(ruleBook('iec-62368-1')?.edition).toBe('3 (2018)');
    expect(ruleBook('no-such-book')).toBeNull();
  });

  it('should give the printed creepage at 250 V and twice it for reinforced', () => {
    expect(distance(book.creepageByRms(voltsRms(250), 2, 'IIIa', 'basic'))).toBe(2.5);
    expect(distance(book.creepageByRms(voltsRms(250), 2, 'IIIb', 'reinforced'))).toBe(5);
    expect(distance(book.creepageByRms(voltsRms(250), 3, 'IIIa', 'basic'))).toBe(4);
    expect(distance(book.creepageByRms(voltsRms(250), 3, 'IIIb', 'reinforced'))).toBe(8);
  });

  it('should round 281 V up to 2.9 before doubling it to 5.8', () => {
    const found = inRange(book.creepageByRms(voltsRms(281), 2, 'IIIa', 'reinforced'));
    expect(inMm(found.value)).toBe(5.8);
    expect(found.because.values).toMatchObject({ basic: 2.9, nextRow: 6.4 });
    expect(found.because.from[0]?.values).toMatchObject({
      raw: 2.81,
      lowerAt: 250,
      upperAt: 320,
      nextRow: 3.2,
    });
    expect(citesOf(found.because).map(({ cell }) => cell)).toContain('250 V rms, PD 2, IIIa');
  });

  it('should leave a value that is exactly a step unrounded', () => {
    expect(distance(book.creepageByRms(voltsRms(240), 2, 'IIIa', 'basic'))).toBe(2.4);
    expect(distance(book.creepageByRms(voltsRms(240), 2, 'IIIa', 'reinforced'))).toBe(4.8);
  });

  it('should give the reported clearances for a required withstand of 2500 V', () => {
    expect(distance(book.clearanceByWithstand(voltsPeak(2500), 2, 'basic'))).toBe(1.5);
    expect(distance(book.clearanceByWithstand(voltsPeak(2500), 2, 'reinforced'))).toBe(3);
  });

  it('should round again after the altitude factor', () => {
    const factor = inRange(book.altitudeFactor(metres(5000))).value;
    expect(factor).toBe(1.48);
    expect(inMm(book.roundDistanceUp(mm(1.5 * factor)))).toBe(2.3);
    expect(inMm(book.roundDistanceUp(mm(3 * factor)))).toBe(4.5);
    expect(inRange(book.altitudeFactor(metres(0))).value).toBe(1);
  });

  it('should read the mains transient without interpolation', () => {
    expect(inRange(book.mainsTransient(voltsRms(240), 2)).value).toBe(2500);
    expect(inRange(book.mainsTransient(voltsRms(300), 2)).value).toBe(2500);
    expect(inRange(book.mainsTransient(voltsRms(300.1), 2)).value).toBe(4000);
    expect(inRange(book.mainsTransient(voltsRms(150), 3)).value).toBe(2500);
    expect(book.mainsTransient(voltsRms(601), 2)).toMatchObject({ kind: 'out-of-range' });
  });

  it('should give 0.14 mm at 600 V peak above 30 kHz and nothing above 2000 V', () => {
    expect(distance(book.clearanceHighFrequency(voltsPeak(500), 2, 'reinforced'))).toBe(0.14);
    expect(distance(book.clearanceHighFrequency(voltsPeak(1200), 2, 'basic'))).toBe(1.68);
    expect(distance(book.clearanceHighFrequency(voltsPeak(1200), 3, 'basic'))).toBe(2.4);
    expect(book.clearanceHighFrequency(voltsPeak(2001), 2, 'basic')).toMatchObject({ kind: 'out-of-range' });
  });

  it('should never round an interpolated figure past the next row, which may be taken instead', () => {
    // 12 V lies between 0.40 and 0.42 mm: 0.416, which rounds up to 0.5
    const between = inRange(book.creepageByRms(voltsRms(12), 2, 'IIIa', 'basic'));
    expect(between.value).toBe(mm(0.42));
    expect(inRange(book.creepageByRms(voltsRms(12), 2, 'IIIa', 'reinforced')).value).toBe(mm(0.84));
  });

  it('should take the next row up in voltage for creepage at high frequency', () => {
    const at65 = inRange(book.creepageHighFrequency(voltsPeak(480), hertz(65_000), 2, 'basic'));
    // 0.183 x 1.2 = 0.2196, up to 0.3
    expect(at65.value).toBe(mm(0.3));
    expect(inRange(book.creepageHighFrequency(voltsPeak(480), hertz(65_000), 2, 'reinforced')).value).toBe(
      mm(0.6),
    );
    // between 100 and 200 kHz: (0.6 + 1.15) / 2 = 0.875, x 1.2 = 1.05, up to 1.1
    expect(inRange(book.creepageHighFrequency(voltsPeak(1000), hertz(150_000), 2, 'basic')).value).toBe(
      mm(1.1),
    );
  });

  it('should take a frequency column alone exactly at its bound', () => {
    const at = (peak: number, frequency: number): number | null => {
      const { value } = inRange(book.creepageHighFrequency(voltsPeak(peak), hertz(frequency), 2, 'basic'));
      return value === null ? null : inMm(value);
    };
    // 3.15 x 1.2 = 3.78 and 8.2 x 1.2 = 9.84; one hertz more has no value
    expect(at(1600, 100_000)).toBe(3.8);
    expect(at(1200, 400_000)).toBe(9.9);
    expect(book.creepageHighFrequency(voltsPeak(1600), hertz(100_001), 2, 'basic')).toMatchObject({
      kind: 'out-of-range',
    });
  });

  it('should tell a blank that asks nothing from one that has no value', () => {
    expect(inRange(book.creepageHighFrequency(voltsPeak(150), hertz(150_000), 2, 'basic')).value).toBeNull();
    expect(inRange(book.creepageHighFrequency(voltsPeak(150), hertz(30_000), 2, 'basic')).value).toBeNull();
    expect(book.creepageHighFrequency(voltsPeak(1550), hertz(150_000), 2, 'basic')).toMatchObject({
      kind: 'out-of-range',
    });
    expect(book.creepageHighFrequency(voltsPeak(500), hertz(400_001), 2, 'basic')).toMatchObject({
      kind: 'out-of-range',
    });
    expect(book.creepageHighFrequency(voltsPeak(1801), hertz(65_000), 2, 'basic')).toMatchObject({
      kind: 'out-of-range',
    });
  });

  it('should have no creepage for PD 3 with group IIIb above 630 V', () => {
    expect(distance(book.creepageByRms(voltsRms(630), 3, 'IIIb', 'basic'))).toBe(10);
    expect(book.creepageByRms(voltsRms(631), 3, 'IIIb', 'basic')).toMatchObject({ kind: 'out-of-range' });
    expect(distance(book.creepageByRms(voltsRms(800), 3, 'IIIa', 'basic'))).toBe(12.5);
  });

  it('should mark each cell by what was seen of it', () => {
    const confirmed = (answer: Judged<Nm> | OutOfRange): string | undefined =>
      inRange(answer).because.cites[0]?.confirmed;
    expect(confirmed(book.clearanceByWithstand(voltsPeak(2500), 2, 'reinforced'))).toBe('two-sources');
    expect(confirmed(book.clearanceByWithstand(voltsPeak(2500), 3, 'reinforced'))).toBe('memory');
    expect(confirmed(book.clearanceByWithstand(voltsPeak(4000), 2, 'basic'))).toBe('published');
    expect(confirmed(book.clearanceByWithstand(voltsPeak(3000), 2, 'basic'))).toBe('secondary');
    expect(confirmed(book.clearanceByPeak(voltsPeak(2000), 2, 'reinforced'))).toBe('published');
    expect(confirmed(book.clearanceByPeak(voltsPeak(3000), 2, 'reinforced'))).toBe('memory');
    expect(confirmed(book.creepageByRms(voltsRms(250), 2, 'IIIa', 'basic'))).toBe('two-sources');
    expect(confirmed(book.creepageByRms(voltsRms(320), 2, 'IIIa', 'basic'))).toBe('two-sources');
    expect(confirmed(book.creepageByRms(voltsRms(320), 2, 'I', 'basic'))).toBe('published');
  });
});
