// What is asked between two circuits, by the tables' own figures; 240 V mains of category 2 and 250 V rms, 500 V peak at
// 65 kHz unless changed. Clearance is the largest of both procedures and of the table for high frequency.

import { describe, expect, it } from 'vitest';
import { requiredFor } from '#judge/grade/required.ts';
import { nextRowOf } from '#standards/tables/next-row.ts';
import { citesOf } from '#standards/because.ts';
import type { Required } from '#books/questions/required.ts';
import { ruleBook } from '#books/shelf.ts';
import type { Grade, MaterialGroup } from '#units/terms.ts';
import { workingVoltages } from '#stress/voltages/working-voltage.ts';
import type { Changes } from '#test/designs.ts';
import { designWith } from '#test/judge/margin-build.ts';

const BOOK = ruleBook('iec-62368-1')!;

function requiredWith(changes: Changes = {}, needed: Grade | null = 'reinforced'): Required {
  const design = designWith(changes);
  const [stress] = workingVoltages(design);
  const [a, b] = design.circuits;
  return requiredFor(BOOK, design, stress!, BOOK.transients(design.supply, a!, b!), needed, 'patient');
}

const voltage = (rms: number, peak: number, frequency = '65 kHz'): Changes => ({
  workingVoltages: [{ between: ['pri', 'out'], rms, peak, frequency }],
});

type Figure = Required['clearance']['basic'] | Required['test']['basic'] | null;

/** Millimetres (or volts) for basic and reinforced; the word where there is no figure. */
const both = (pair: { readonly basic: Figure; readonly reinforced: Figure }, unit = 1e6) =>
  [pair.basic, pair.reinforced].map((one) =>
    one === null ? null : 'value' in one ? one.value / unit : one.kind,
  );

const clearance = (changes: Changes = {}) => both(requiredWith(changes).clearance);
const creepage = (changes: Changes = {}, group: MaterialGroup = 'IIIb') =>
  both(requiredWith(changes).creepage(group));
const test = (changes: Changes = {}) => both(requiredWith(changes).test, 1);
const x = (changes: Changes, needed: Grade | null) => requiredWith(changes, needed).x.value / 1e6;

const NOWHERE = ['out-of-range', 'out-of-range'];

describe('required clearance', () => {
  it.each([
    ['by the transient of 2500 V, which asks more than 500 V peak', {}, [1.5, 3]],
    ['by the transient of category 3', { 'supply.overvoltageCategory': 3 }, [3, 5.5]],
    [
      'by the overvoltage of 2000 V where the transient is 1500 V',
      { 'supply.voltage': '120 V', ...voltage(120, 170) },
      [1.27, 2.54],
    ],
    [
      'by the peak at high frequency: 2.82 + (4.8 - 2.82) / 2 = 3.81, up to 3.9',
      voltage(250, 1500),
      [3.9, 7.7],
    ],
    ['by the transient where the same peak is at 30 kHz', voltage(250, 1500, '30 kHz'), [1.5, 3]],
    ['by a peak of 3000 V at low frequency, table of peaks', voltage(250, 3000, '50 Hz'), [2.4, 4.8]],
    [
      'at 5000 m: 1.5 x 1.48 = 2.22, 3 x 1.48 = 4.44, each up to a tenth',
      { 'surroundings.altitude': '5000 m' },
      [2.3, 4.5],
    ],
    ['at 2000 m with no factor', { 'surroundings.altitude': '2000 m' }, [1.5, 3]],
    ['by no figure where the peak at high frequency is over the table', voltage(250, 2500), NOWHERE],
    ['by no figure where the mains are', { 'supply.voltage': '1200 V' }, NOWHERE],
  ])('should be found %s', (_, changes, figures) => {
    expect(clearance(changes)).toEqual(figures);
  });
});

describe('required creepage', () => {
  it.each([
    ['at 250 V in the worst group', {}, 'IIIb', [2.5, 5]],
    ['at 250 V in group II', {}, 'II', [1.8, 3.6]],
    ['never below the clearance: 1.25 mm of group I become 1.5', {}, 'I', [1.5, 3]],
    ['in degree 3', { 'surroundings.pollutionDegree': 3 }, 'IIIb', [4, 8]],
    ['between rows, rounded before it is doubled: 2.81 to 2.9', voltage(281, 500), 'IIIb', [2.9, 5.8]],
    ['at 5000 m by the clearance', { 'surroundings.altitude': '5000 m' }, 'II', [2.3, 4.5]],
    [
      'by the peak at 300 kHz: (1.15 + 3) / 2 x 1.2 = 2.49, up to 2.5',
      voltage(250, 1000, '300 kHz'),
      'I',
      [2.5, 5],
    ],
    ['by the ordinary table at 30 kHz', voltage(250, 1000, '30 kHz'), 'II', [1.8, 3.6]],
    ['by no figure above 400 kHz', voltage(250, 1000, '3 MHz'), 'I', NOWHERE],
    [
      'by no figure above 630 V in degree 3, worst group',
      { 'surroundings.pollutionDegree': 3, ...voltage(700, 1000, '50 Hz') },
      'IIIb',
      NOWHERE,
    ],
    [
      'in the other group there: 8 + 2 x 70 / 170 = 8.82, up to 8.9',
      { 'surroundings.pollutionDegree': 3, ...voltage(700, 1000, '50 Hz') },
      'I',
      [8.9, 17.8],
    ],
  ] as const)('should be found %s', (_, changes, group, figures) => {
    expect(creepage(changes, group)).toEqual(figures);
  });
});

describe('required test', () => {
  it.each([
    ['the transient for basic, and as much as the overvoltage asks for reinforced', {}, [2500, 4000]],
    ['the transient of category 3', { 'supply.overvoltageCategory': 3 }, [4000, 6000]],
    [
      'the overvoltage of mains under 250 V',
      { 'supply.voltage': '120 V', ...voltage(120, 170) },
      [2000, 4000],
    ],
    [
      'the working peak where it is higher: 1.3 x 3000 and 1.6 x 3000',
      voltage(250, 3000, '50 Hz'),
      [3900, 4800],
    ],
  ])('should be %s', (_, changes, levels) => {
    test(changes).forEach((level, i) => expect(level).toBeCloseTo(levels[i]!, 6));
  });

  it('should have a level for high frequency beside it above 30 kHz only', () => {
    const beside = (changes: Changes) => both(requiredWith(changes).highFrequencyTest(null), 1);
    expect(beside(voltage(250, 500, '30 kHz'))).toEqual([null, null]);
    const [basic, reinforced] = beside(voltage(250, 500, '65 kHz'));
    expect(Number(reinforced)).toBeCloseTo(2 * Number(basic), 9);
  });
});

describe('width under which gaps are bridged', () => {
  it.each([
    ['of degree 1', { 'surroundings.pollutionDegree': 1 }, 'reinforced', 0.25],
    ['of degree 2', {}, 'reinforced', 1],
    ['of degree 3', { 'surroundings.pollutionDegree': 3 }, 'reinforced', 1.5],
    ['a third of the clearance where that is under 3 mm: 1.5 / 3', {}, 'basic', 0.5],
    ['a third of 2.54', { 'supply.voltage': '120 V', ...voltage(120, 170) }, 'reinforced', 0.846666],
    ['that of the degree where a third is more: 0.5', { 'surroundings.pollutionDegree': 1 }, 'basic', 0.25],
    ['that of the degree where nothing is asked', {}, null, 1],
    ['that of the degree where the book has no clearance', { 'supply.voltage': '1200 V' }, 'basic', 1],
  ] as const)('should be %s', (_, changes, needed, width) => {
    expect(x(changes, needed)).toBe(width);
  });
});

describe('derivation of what is required', () => {
  it('should lead from every figure to the tables and clauses that it was read in', () => {
    const { clearance, creepage, test, x } = requiredWith({ 'surroundings.altitude': '5000 m' });
    const figures = [clearance, creepage('IIIa'), test].flatMap(({ basic, reinforced }) => [
      basic,
      reinforced,
    ]);
    for (const { because } of [...figures, x]) {
      const cites = citesOf(because);
      expect(cites.length).toBeGreaterThan(0);
      for (const { standard, clause } of cites) expect(standard.length * clause.length).toBeGreaterThan(0);
    }
  });

  it('should say what governs a creepage, and which row a laboratory may take', () => {
    const governs = (changes: Changes, group: MaterialGroup) =>
      requiredWith(changes).creepage(group).basic.because.values;
    expect(governs({}, 'IIIb')).toMatchObject({ governs: 'rms' });
    expect(governs({}, 'I')).toMatchObject({ governs: 'clearance' });
    expect(governs(voltage(250, 1000, '300 kHz'), 'I')).toMatchObject({ governs: 'high-frequency' });
    const { basic, reinforced } = requiredWith(voltage(281, 500)).creepage('IIIb');
    expect([basic, reinforced].map(({ because }) => nextRowOf(because))).toEqual([3.2, 6.4]);
    expect(nextRowOf(requiredWith().creepage('IIIb').basic.because)).toBeNull();
  });
});
