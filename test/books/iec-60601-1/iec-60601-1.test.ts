// Worked figures of IEC 60601-1: the published row of 250 V rms and 354 V peak (4.0, 2.5, 8.0, 5.0 mm; 1 500 and 4 000 V for
// patients, 2.5, 2.0, 5.0, 4.0 mm; 1 500 and 3 000 V for operators, `mopp-note`), above it second-hand copies or nothing.

import { describe, expect, it } from 'vitest';
import { BASIC_AND_SUPPLEMENTARY, FUNCTIONAL, REINFORCED } from '#books/questions/insulation.ts';
import { ruleBook } from '#books/shelf.ts';
import type { Bridge } from '#model/design/outside.ts';
import { voltsRms } from '#units/quantity.ts';
import { ask, figures, testRms } from '../ask.ts';
import { levels, wordsOf } from '../solids.ts';

const book = ruleBook('iec-60601-1')!;

describe('what IEC 60601-1 asks for one means and for two', () => {
  const operator = { means: 'operator' } as const;
  it.each([
    ['patient, at the published row', { rms: 250, peak: 354 }, [2.5, 5], [4, 8]],
    ['patient, a volt above its peak: the next row', { rms: 250, peak: 355 }, [3.5, 7], [4, 8]],
    // 4 + 22/150 x 2 = 4.29, 8 + 22/150 x 4 = 8.59, up to 0.1
    ['patient, between rows of rms', { rms: 272, peak: 560 }, [3.5, 7], [4.3, 8.6]],
    [
      'patient, whatever the degree and the group',
      { rms: 250, peak: 354, pollutionDegree: 3 },
      [2.5, 5],
      [4, 8],
    ],
    ['patient at 5 000 m', { rms: 250, peak: 354, altitude: 5000 }, [3.7, 7.4], [4, 8]],
    ['operator, at the published row', { ...operator, rms: 250, peak: 420 }, [2, 4], [2.5, 5]],
    ['operator, a volt above its rms', { ...operator, rms: 251, peak: 420 }, [2, 4], [null, null]],
    ['operator, a volt above its peak', { ...operator, rms: 250, peak: 421 }, [null, null], [null, null]],
    ['operator in category III', { ...operator, category: 3 }, [null, null], [null, null]],
    ['operator in pollution degree 3', { ...operator, pollutionDegree: 3 }, [null, null], [null, null]],
  ] as const)('should be distances: %s', (_, changes, clearance, creepage) => {
    const asked = ask(book, changes);
    expect(figures(asked.clearance)).toEqual(clearance);
    expect(figures(asked.creepage('IIIb'))).toEqual(creepage);
    expect(figures(asked.creepage('I'))).toEqual(creepage);
  });

  it('should test patients at 4 000 V and operators at 3 000 V, and above 354 V peak at no figure', () => {
    expect(testRms(ask(book, { peak: 354 }).test)).toEqual([1500, 4000]);
    expect(testRms(ask(book, { ...operator, peak: 354 }).test)).toEqual([1500, 3000]);
    expect(testRms(ask(book, { peak: 355 }).test)).toEqual([null, null]);
  });

  it('should have words of its own for grades', () => {
    expect(book.gradeWords).toMatchObject({ basic: 'one means', reinforced: 'two means' });
  });
});

describe('what solids are worth by IEC 60601-1', () => {
  it.each([
    [
      'two plies of together 0.3 mm that stand it',
      [{ kind: 'sheet', strength: 3000, film: 0.15, count: 2 }],
      REINFORCED,
    ],
    [
      'two of a little less',
      [{ kind: 'sheet', strength: 3000, film: 0.149, count: 2 }],
      BASIC_AND_SUPPLEMENTARY,
    ],
    [
      'three of which any two stand it',
      [{ kind: 'sheet', strength: 3000, film: 0.02, count: 3 }],
      REINFORCED,
    ],
    [
      'thick plies that do not stand it',
      [{ kind: 'sheet', strength: 2500, film: 0.2, count: 2 }],
      BASIC_AND_SUPPLEMENTARY,
    ],
    [
      'plies that cannot be parted',
      [{ kind: 'sheet', strength: 3000, film: 0.2, count: 3, bonded: 3 }],
      BASIC_AND_SUPPLEMENTARY,
    ],
    ['a certified wire', [{ kind: 'cover', strength: 9000, layers: 3 }], FUNCTIONAL],
    ['a run of at least a millimetre', [{ kind: 'run', strength: 6000 }], REINFORCED],
  ] as const)('should be %s', (_, solids, worth) => {
    expect(wordsOf(book, solids, levels(2121, 5657))).toEqual([worth]);
  });
});

describe('what a capacitor is worth by IEC 60601-1', () => {
  const capacitor = (safetyClass: Bridge['safetyClass'], inSeries: number): Bridge => ({
    id: 'C1',
    kind: 'capacitor',
    between: ['pri', 'out'],
    capacitance: null,
    resistance: null,
    safetyClass,
    rated: null,
    inSeries,
    clearance: null,
    creepage: null,
    throughInsulation: null,
    approval: { kind: 'unknown', leftOut: true },
    working: null,
  });
  const worth = (means: 'patient' | 'operator', safetyClass: Bridge['safetyClass'], inSeries = 1) =>
    book.part(capacitor(safetyClass, inSeries), {
      barrier: true,
      means,
      rms: voltsRms(250),
      mains: voltsRms(250),
      category: 2,
      required: null,
      isBest: () => false,
    }).grade;

  it.each([
    ['operator', 'Y1', 1, 'reinforced'],
    ['operator', 'Y2', 1, 'supplementary'],
    ['operator', 'Y2', 2, 'double'],
    ['patient', 'Y1', 1, 'supplementary'],
    ['patient', 'Y1', 2, 'double'],
    ['patient', 'Y2', 1, 'supplementary'],
    ['patient', 'Y2', 2, 'supplementary'],
    ['patient', 'X2', 1, 'none'],
  ] as const)('should be for the %s, %s, %d in series: %s', (means, safetyClass, inSeries, grade) => {
    expect(worth(means, safetyClass, inSeries)).toBe(grade);
  });
});
