// Worked figures of IEC 60664-1 with -4: rows of F.1, F.2, F.5, F.8, A.2 and of part 4 as in the tables, the readings of the
// project's own (temporary overvoltage sizes the clearance, from memory; step of the altitude; reinforced above 30 kHz).

import { describe, expect, it } from 'vitest';
import { REINFORCED, BASIC_AND_SUPPLEMENTARY, FUNCTIONAL } from '#books/questions/insulation.ts';
import { ruleBook } from '#books/shelf.ts';
import { citesOf } from '#standards/because.ts';
import { ask, figures, type Plain } from '../ask.ts';
import { levels, wordsOf } from '../solids.ts';

const book = ruleBook('iec-60664-1')!;

describe('what IEC 60664-1 asks', () => {
  it.each([
    // row of 2 500 V: 1.5; next step 4 000 V: 3.0. Short overvoltage 1 500 V rms, 2 121 V peak: 1.40; x 1.6: 2.95
    ['at 240 V, category II, by the impulse', {}, [1.5, 3]],
    // 1 500 V: 0.5, next step 1.5; but 1 350 V rms, 1 909 V peak: 0.76 + 409/500 x 0.51 = 1.18; x 1.6, 3 055 V: 2.48
    [
      'at 120 V, category II, by the temporary overvoltage',
      { mains: 120, rms: 120, peak: 170 },
      [1.18, 2.48],
    ],
    // 300 V row of category I: 1 500 V, 0.5 and 1.5; again 1.40 and 2.952, up
    ['at 240 V, category I, by the temporary overvoltage', { category: 1 }, [1.4, 2.96]],
    // 1 250 V rms, 1 768 V peak: 1.034, up; x 1.6, 2 828 V: 2.194, up
    ['at 50 V, category II', { mains: 50, rms: 50, peak: 71 }, [1.04, 2.2]],
    ['at 5 000 m: x 1.48', { altitude: 5000 }, [2.22, 4.44]],
    ['at 2 500 m by the step to 3 000 m', { altitude: 2500 }, [1.71, 3.42]],
    ['in pollution degree 3', { mains: 50, rms: 50, peak: 71, pollutionDegree: 3 }, [1.04, 2.2]],
    ['of a reinforced impulse of 6 000 V: 8.0 mm with the line of 8 000', { category: 4 }, [5.5, 8]],
    // the series has no 10 000 V: 8.0 and the line of 12 000 V
    ['of an impulse of 8 000 V', { mains: 690, rms: 690, peak: 976, category: 3 }, [8, 14]],
    // 12 000 V has no next step: 14.0, and 19.2 kV: 18 + 4.2/5 x 7 = 23.88
    ['of an impulse of 12 000 V', { mains: 690, rms: 690, peak: 976, category: 4 }, [14, 23.88]],
  ] as const)('should be clearance %s', (_, changes, asked) => {
    expect(figures(ask(book, changes).clearance)).toEqual(asked);
  });

  it('should take a peak that lasts above the overvoltage, and 160 % of it for reinforced', () => {
    // 2 500 V: 1.8; 4 000 V: 3.8
    expect(figures(ask(book, { peak: 2500 }).clearance)).toEqual([1.8, 3.8]);
  });

  it.each([
    // 2.5 + 22/70 x 0.7 = 2.72, twice
    ['between 250 and 320 V', { rms: 272 }, 'IIIb', [2.72, 5.44]],
    ['at 250 V exactly', { rms: 250 }, 'IIIa', [2.5, 5]],
    ['never below the clearance', { rms: 50 }, 'I', [1.5, 3]],
  ] as const)('should be creepage %s', (_, changes, group, asked) => {
    expect(figures(ask(book, changes).creepage(group))).toEqual(asked);
  });

  describe('above 30 kHz', () => {
    const at = (peak: number, frequency: number): Partial<Plain> => ({ peak, frequency });
    it('should ask part 4 from one hertz more on', () => {
      // table 1 at 1 600 V: 4.0, reinforced beyond the table at 160 %
      expect(figures(ask(book, at(1600, 30_000)).clearance)).toEqual([1.5, 3]);
      expect(figures(ask(book, at(1600, 30_001)).clearance)).toEqual([4, null]);
    });

    it('should take the larger of twice the distance and 160 % of the voltage', () => {
      // 1.0 kV: twice 0.5; 1.6 kV: 4.0
      expect(figures(ask(book, at(1000, 65_000)).clearance)).toEqual([1.5, 4]);
    });

    it('should read the creepage over an empty cell between two filled ones, and give none right of the last', () => {
      // row 200 V: 0.042 at 100 kHz, 0.15 at 2 MHz; asked less than the clearance
      expect(figures(ask(book, { ...at(200, 1_000_000), rms: 50 }).creepage('I'))).toEqual([1.5, 3]);
      // row 1 200 V, 300 kHz: (2.4 + 8.2) / 2 x 1.2 = 6.36, twice; clearance 160 % is 4.0 + 320/400... beyond 1 250 V: none
      expect(figures(ask(book, at(1200, 300_000)).creepage('I'))[0]).toBe(6.36);
      expect(figures(ask(book, at(1200, 400_001)).creepage('I'))).toEqual([null, null]);
      expect(figures(ask(book, at(90, 3_000_000)).creepage('I'))).toEqual([1.5, 3]);
    });
  });

  it.each([
    // 1 500 V rms is 2 121 V peak, under the impulse of 2 500; twice 2 121 is over 4 000
    ['category II', {}, [2500, 4243]],
    ['category III, where the impulse is more', { category: 3 }, [4000, 6000]],
    ['what stands across it in use, where that is more', { peak: 5000 }, [5000, 5000]],
  ] as const)('should test solids in %s', (_, changes, asked) => {
    expect(figures(ask(book, changes).test, 1).map((value) => Math.round(value ?? 0))).toEqual(asked);
  });

  it('should say that the overvoltage in the clearance is memory', () => {
    const { clearance } = ask(book, { mains: 120, rms: 120, peak: 170 });
    if ('kind' in clearance.basic) throw new Error('no figure');
    const cites = citesOf(clearance.basic.because);
    expect(
      cites.some(({ cell, confirmed }) => cell.includes('sizesClearance') && confirmed === 'memory'),
    ).toBe(true);
  });
});

describe('what solids are worth by IEC 60664-1', () => {
  it.each([
    ['a ply that stands the reinforced level', [{ kind: 'sheet', strength: 4243 }], [REINFORCED]],
    ['a ply that stands basic', [{ kind: 'sheet', strength: 2500 }], [BASIC_AND_SUPPLEMENTARY]],
    ['a ply of which nothing is shown', [{ kind: 'sheet', strength: null }], [FUNCTIONAL]],
    [
      'a certified cover without a stated withstand',
      [{ kind: 'cover', strength: 9000, layers: 3 }],
      [FUNCTIONAL],
    ],
  ] as const)('should be by withstand alone: %s', (_, solids, worth) => {
    expect(wordsOf(book, solids, levels(2500, 4243))).toEqual(worth);
  });
});
