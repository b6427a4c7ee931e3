// Worked figures of IEC 60950-1: tables 2K, 2L, 2N, 5B as in `tables/`, and two published reports of adapters, T1 (530 V
// peak, 281 V rms: 4.4 and 5.8 mm, 3 000 V) and T2 (428 V peak, 250 V rms: 4.2 and 5.0 mm), by their pages
// `older-report-p42`, `older-report-p47` and `older-report-2-p42` of tables/sources.json.

import { describe, expect, it } from 'vitest';
import { BASIC_ONLY, FUNCTIONAL, REINFORCED } from '#books/questions/insulation.ts';
import { ruleBook } from '#books/shelf.ts';
import { voltsPeak } from '#units/quantity.ts';
import { ask, figures, testRms } from '../ask.ts';
import { levels, wordsOf } from '../solids.ts';

const book = ruleBook('iec-60950-1')!;

describe('what IEC 60950-1 asks', () => {
  it.each([
    ['as report T1 prints, 4.0 + 0.4', { rms: 281, peak: 530 }, [2.2, 4.4]],
    ['as report T2 prints, 4.0 + 0.2', { rms: 250, peak: 428 }, [2.1, 4.2]],
    ['at the peak of the mains, nothing on top', { peak: 420 }, [2, 4]],
    ['a volt above it, one step', { peak: 421 }, [2.1, 4.2]],
    ['by steps: at 493 V and a volt above', { peak: 493 }, [2.1, 4.2]],
    ['the next step', { peak: 494 }, [2.2, 4.4]],
    ['at the last step', { peak: 1300 }, [3.2, 6.4]],
    ['beyond it, no figure and never a row of 2K above the mains', { peak: 1301 }, [null, null]],
    ['in category III', { category: 3 }, [3.2, 6.4]],
    // 300 V rms is 424 V peak, still the row of 420: one step of 2L on top
    ['at 300 V', { mains: 300, rms: 300, peak: 424.3 }, [2.1, 4.2]],
    ['at 301 V, no figure', { mains: 301, rms: 301, peak: 425.7 }, [null, null]],
    // 150 V rms is 212 V peak: row of 210, 1.0 and 2.0, one step on top
    ['at 150 V', { mains: 150, rms: 150, peak: 212.1 }, [1.1, 2.2]],
    ['at 120 V', { mains: 120, rms: 120, peak: 170 }, [1, 2]],
    ['at 120 V above 210 V peak, by the series of low mains', { mains: 120, peak: 250 }, [1.1, 2.2]],
    [
      'at 120 V in degree 3 above 210 V peak: no series',
      { mains: 120, peak: 250, pollutionDegree: 3 },
      [null, null],
    ],
    ['at 5 000 m: x 1.48', { altitude: 5000 }, [3, 6]],
  ] as const)('should be clearance %s', (_, changes, asked) => {
    expect(figures(ask(book, changes).clearance)).toEqual(asked);
  });

  it.each([
    ['as report T1 prints: 2.81 up, then twice', { rms: 281 }, [2.9, 5.8]],
    ['as report T2 prints', { rms: 250 }, [2.5, 5]],
    ['never below the clearance', { rms: 50 }, [2, 4]],
  ] as const)('should be creepage %s', (_, changes, asked) => {
    expect(figures(ask(book, changes).creepage('IIIb'))).toEqual(asked);
  });

  it('should ask nothing more at high frequency', () => {
    const at = (frequency: number) => ask(book, { rms: 281, peak: 530, frequency });
    expect(figures(at(400_000).creepage('I'))).toEqual(figures(at(50).creepage('I')));
    expect(figures(at(400_000).clearance)).toEqual(figures(at(50).clearance));
  });

  it('should test at 3 000 V as T1, and have no level for basic above 420 V peak', () => {
    expect(testRms(ask(book, { peak: 420 }).test)).toEqual([1500, 3000]);
    expect(testRms(ask(book, { peak: 530 }).test)).toEqual([null, 3000]);
    expect(testRms(ask(book, { peak: 1411 }).test)).toEqual([null, null]);
  });

  it('should hold windings in overload to table C.1, and judge no heat in normal use', () => {
    expect(book.windingTemperatureOverload(155, 'unprotected')?.value).toBe(200);
    expect(book.insulationTemperature(155)).toBeNull();
  });

  it('should limit the touch current to 0.25 mA and the protective conductor to 3.5', () => {
    expect(book.touchCurrentLimits?.normal.value.rms).toBe(0.00025);
    expect(book.touchCurrentLimits?.protectiveConductor.value).toBe(0.0035);
  });
});

describe('what solids are worth by IEC 60950-1', () => {
  it.each([
    ['two plies that each stand it', [{ kind: 'sheet', strength: 4243, count: 2 }], REINFORCED],
    ['three of which any two do', [{ kind: 'sheet', strength: 2200, count: 3 }], REINFORCED],
    ['one ply', [{ kind: 'sheet', strength: 9000 }], BASIC_ONLY],
    ['plies that cannot be parted', [{ kind: 'sheet', strength: 9000, count: 3, bonded: 3 }], BASIC_ONLY],
    ['a wall thinner than 0.4 mm', [{ kind: 'wall', strength: 9000 }], BASIC_ONLY],
    ['a run as thick as a strong solid', [{ kind: 'run', strength: 9000 }], REINFORCED],
    ['three certified layers', [{ kind: 'cover', strength: 4243, layers: 3 }], REINFORCED],
    ['two certified layers', [{ kind: 'cover', strength: 4243, layers: 2 }], FUNCTIONAL],
  ] as const)('should be %s', (_, solids, worth) => {
    expect(wordsOf(book, solids, levels(2121, 4243))).toEqual([worth]);
  });

  it('should grade no ply as basic where there is no level, while reinforced stands', () => {
    const of = (strength: number) =>
      wordsOf(book, [{ kind: 'sheet', strength, count: 2 }], levels(null, 4243));
    expect(of(4000)).toEqual([FUNCTIONAL]);
    expect(of(4243)).toEqual([REINFORCED]);
  });

  it('should take the type test of annex U for what a certified cover shows', () => {
    expect(book.coverShown(3).value).toBe(voltsPeak(3000 * Math.SQRT2));
    expect(book.coverShown(2).value).toBeNull();
  });
});
