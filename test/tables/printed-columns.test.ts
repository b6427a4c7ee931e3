// What: whole columns of the tables that every verdict rests on, written a second time, and the rules they follow.
// Why: a wrong figure between two right ones is neither a dent nor one of the hand-picked cells.

import { describe, expect, it } from 'vitest';

import { tableAt } from './all-tables.ts';

const column = (table: string, name: string, place?: number): readonly unknown[] =>
  tableAt(`standards/iec-62368-1/${table}.json`)
    .rows.filter(({ at }) => place === undefined || at[1] === place)
    .map((row) => row[name]);

const list = (text: string): readonly number[] => text.trim().split(/\s+/).map(Number);

// 10 V to 10 kV
const CREEPAGE: readonly (readonly [number, string, string])[] = [
  [
    1,
    'I',
    `0.08 0.09 0.1 0.11 0.125 0.14 0.16 0.18 0.2 0.22 0.25 0.28 0.32 0.42 0.56 0.75 1 1.3 1.8 2.4 3.2 4.2 5.6 7.5
     10 12.5 16 20 25 32 40`,
  ],
  [
    2,
    'I',
    `0.4 0.42 0.45 0.48 0.5 0.53 0.56 0.6 0.63 0.67 0.71 0.75 0.8 1 1.25 1.6 2 2.5 3.2 4 5 6.3 8 10 12.5 16 20 25
     32 40 50`,
  ],
  [
    2,
    'II',
    `0.4 0.42 0.45 0.48 0.5 0.53 0.8 0.85 0.9 0.95 1 1.05 1.1 1.4 1.8 2.2 2.8 3.6 4.5 5.6 7.1 9 11 14 18 22 28 36
     45 56 71`,
  ],
  [
    2,
    'IIIa',
    `0.4 0.42 0.45 0.48 0.5 0.53 1.1 1.2 1.25 1.3 1.4 1.5 1.6 2 2.5 3.2 4 5 6.3 8 10 12.5 16 20 25 32 40 50 63 80
     100`,
  ],
  [
    3,
    'I',
    `1 1.05 1.1 1.2 1.25 1.3 1.4 1.5 1.6 1.7 1.8 1.9 2 2.5 3.2 4 5 6.3 8 10 12.5 16 20 25 32 40 50 63 80 100 125`,
  ],
  [
    3,
    'II',
    `1 1.05 1.1 1.2 1.25 1.3 1.6 1.7 1.8 1.9 2 2.1 2.2 2.8 3.6 4.5 5.6 7.1 9 11 14 18 22 28 36 45 56 71 90 110
     140`,
  ],
  [
    3,
    'IIIa',
    `1 1.05 1.1 1.2 1.25 1.3 1.8 1.9 2 2.1 2.2 2.4 2.5 3.2 4 5 6.3 8 10 12.5 16 20 25 32 40 50 63 80 100 125 160`,
  ],
];

const BY_PEAK =
  list(`0.01 0.02 0.04 0.06 0.13 0.26 0.42 0.76 1.27 1.8 2.4 3.8 5.7 7.9 11 15.2 19 25 34 44 55 77 100
  120 175 230`);
const BY_WITHSTAND = list(
  `0.01 0.02 0.04 0.06 0.1 0.15 0.25 0.5 1 1.5 2 3 4 5.5 8 11 14 18 25 33 40 60 75 90 130 170`,
);

const floored = (values: readonly number[], floor: number): readonly number[] =>
  values.map((value) => Math.max(value, floor));

describe('printed columns', () => {
  it.each(CREEPAGE)('should hold the series of creepage: PD %d, group %s', (pd, group, text) => {
    expect(column('creepage', group, pd)).toEqual(list(text));
  });

  it('should treat IIIa and IIIb alike but at PD 3 above 630 V', () => {
    for (const { at, ...row } of tableAt('standards/iec-62368-1/creepage.json').rows)
      expect(row['IIIb']).toBe(at[1] === 3 && Number(at[0]) > 630 ? null : row['IIIa']);
  });

  it.each([
    [1, 0],
    [2, 0.2],
    [3, 0.8],
  ])('should hold the basic clearances with the floor of PD %d', (pd, floor) => {
    expect(column('clearance-by-peak', 'basic', pd)).toEqual(floored(BY_PEAK, floor));
    expect(column('clearance-by-withstand', 'basic', pd)).toEqual(floored(BY_WITHSTAND, floor));
  });

  it('should hold reinforced clearances as twice basic by peak up to 4 kV, and above 30 kHz', () => {
    const twice = BY_PEAK.slice(0, 12).map((value) => Number((value * 2).toFixed(3)));
    expect(column('clearance-by-peak', 'reinforced', 1).slice(0, 12)).toEqual(twice);
    const basic = column('clearance-high-frequency', 'basic') as number[];
    expect(column('clearance-high-frequency', 'reinforced')).toEqual(basic.map((value) => value * 2));
  });

  it('should hold the tests by peak as 1.3 and 1.6 times it, to 0.01 kV', () => {
    for (const row of tableAt('standards/iec-62368-1/test-by-peak.json').rows) {
      expect(Math.abs(Number(row['basic']) - 1.3 * Number(row.at[0]))).toBeLessThan(0.0051);
      expect(Math.abs(Number(row['reinforced']) - 1.6 * Number(row.at[0]))).toBeLessThan(0.0051);
    }
  });

  it('should hold the altitude factors', () => {
    expect(column('altitude', 'factor')).toEqual(list('1 1.14 1.29 1.48 1.7 1.95 2.25 2.62 3.02'));
  });
});
