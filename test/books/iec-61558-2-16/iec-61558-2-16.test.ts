// Worked figures of IEC 61558-2-16 with -1, all from memory: table 13 (degree 2, IIIa, category III) and table 8a. The one
// printed point, 240 V: clearance 4.5 mm; its creepage is printed 4.8 where the line of our rows gives 4.88, the larger.

import { describe, expect, it } from 'vitest';
import { BASIC_ONLY, FUNCTIONAL, REINFORCED } from '#books/questions/insulation.ts';
import { ruleBook } from '#books/shelf.ts';
import { weakestConfirmed } from '#standards/because.ts';
import { ask, figures, questionOf, testRms } from '../ask.ts';
import { levels, wordsOf } from '../solids.ts';

const book = ruleBook('iec-61558-2-16')!;

describe('what IEC 61558-2-16 asks', () => {
  it.each([
    ['at the printed point', {}, [2.4, 4.5], [2.44, 4.88]],
    // 3 + 122/150 ... from 150 V on: 1.5 + 122/150 x 1.5 = 2.72, 3 + 122/150 x 2.5 = 5.04 up; 1.6 + 122/150 x 1.4 = 2.74
    ['between 150 and 300 V', { rms: 272, peak: 560 }, [2.72, 5.04], [2.74, 5.48]],
    ['at 300 V exactly', { rms: 300 }, [3, 5.5], [3, 6]],
    ['a volt above it', { rms: 301 }, [3.01, 5.51], [3.01, 6.02]],
    ['below the first row, as there', { rms: 10 }, [0.2, 0.5], [0.5, 1]],
    ['above the last, nothing', { rms: 1001 }, [null, null], [null, null]],
    ['in another pollution degree, nothing', { pollutionDegree: 3 }, [null, null], [null, null]],
    ['in category III the same', { category: 3 }, [2.4, 4.5], [2.44, 4.88]],
    ['at 5 000 m the clearance x 1.48', { altitude: 5000 }, [3.56, 6.66], [3.56, 6.66]],
  ] as const)('should be distances %s', (_, changes, clearance, creepage) => {
    const asked = ask(book, changes);
    expect(figures(asked.clearance)).toEqual(clearance);
    expect(figures(asked.creepage('IIIb'))).toEqual(creepage);
  });

  it('should ask every group the rows of IIIa', () => {
    const asked = ask(book, { rms: 300 });
    for (const group of ['I', 'II', 'IIIa', 'IIIb'] as const)
      expect(figures(asked.creepage(group))).toEqual([3, 6]);
  });

  it('should ask part 4 of IEC 60664 above 30 kHz, where that is more', () => {
    // 1 400 V: 2.35, twice 4.7, at 160 % 2 240 V beyond the table
    expect(figures(ask(book, { rms: 200, peak: 1400, frequency: 65_000 }).clearance)).toEqual([2.35, null]);
    expect(figures(ask(book, { rms: 200, peak: 1400, frequency: 50 }).clearance)).toEqual([2, 3.84]);
  });

  it('should test by a line between the rows', () => {
    expect(testRms(ask(book, { rms: 300 }).test)).toEqual([2100, 4200]);
    // 2 800 + 122/150 x 1 400
    expect(testRms(ask(book, { rms: 272 }).test)).toEqual([1969, 3939]);
  });

  it('should have no rule for solids above 300 V', () => {
    expect(ask(book, { rms: 300 }).noSolids).toBeNull();
    expect(ask(book, { rms: 301 }).noSolids).not.toBeNull();
  });

  it('should rest on memory with every figure, and say how the rows are read', () => {
    const { clearance } = ask(book);
    if ('kind' in clearance.reinforced) throw new Error('no figure');
    expect(weakestConfirmed(clearance.reinforced.because)).toBe('memory');
    const rules = (category: 2 | 3) =>
      book.remarks(questionOf(book, { category })).map(({ rule }) => rule.id);
    expect(rules(2)).toEqual(['any-category', 'groups-as-iiia']);
    expect(rules(3)).toEqual(['groups-as-iiia']);
  });
});

describe('what solids are worth by IEC 61558-1', () => {
  it.each([
    [
      'three plies of which any two stand it',
      [{ kind: 'sheet', strength: 3000, count: 3 }],
      { ...REINFORCED },
    ],
    ['two of them', [{ kind: 'sheet', strength: 3000, count: 2 }], { ...BASIC_ONLY, supplementary: true }],
    [
      'three plies that cannot be parted',
      [{ kind: 'sheet', strength: 6000, count: 3, bonded: 3 }],
      BASIC_ONLY,
    ],
    ['a certified wire that shows it', [{ kind: 'cover', strength: 6000, layers: 3 }], REINFORCED],
    ['a certified wire that shows less', [{ kind: 'cover', strength: 5999 - 10, layers: 3 }], FUNCTIONAL],
    ['two certified layers', [{ kind: 'cover', strength: 9000, layers: 2 }], FUNCTIONAL],
  ] as const)('should be as recalled: %s', (_, solids, worth) => {
    expect(wordsOf(book, solids, levels(3000, 6000))).toEqual([worth]);
  });
});
