// What: figures that documents print stand unchanged in the tables, written here a second time by hand.
// Why: the tables were carried over by program; a hand-written second reading catches a shifted column.

import { describe, expect, it } from 'vitest';

import { tableAt } from './all-tables.ts';

const CELLS: readonly (readonly [string, readonly (number | string)[], string, number | string | null])[] = [
  ['mains-transient', [150], 'category 2', 1500],
  ['mains-transient', [300], 'category 2', 2500],
  ['mains-transient', [300], 'category 3', 4000],
  ['mains-transient', [600], 'category 4', 8000],
  ['clearance-by-peak', [1500, 2], 'basic', 0.76],
  ['clearance-by-peak', [2500, 2], 'basic', 1.8],
  ['clearance-by-peak', [2500, 2], 'reinforced', 3.6],
  ['clearance-by-peak', [4000, 1], 'basic', 3.8],
  ['clearance-by-peak', [6000, 3], 'basic', 7.9],
  ['clearance-by-withstand', [2500, 2], 'basic', 1.5],
  ['clearance-by-withstand', [2500, 2], 'reinforced', 3],
  ['clearance-high-frequency', [600], 'reinforced', 0.14],
  ['clearance-high-frequency', [1200], 'basic', 1.68],
  ['clearance-high-frequency', [2000], 'reinforced', 26.4],
  ['altitude', [5000], 'factor', 1.48],
  ['creepage', [250, 2], 'IIIa', 2.5],
  ['creepage', [250, 3], 'IIIb', 4],
  ['creepage', [320, 2], 'IIIb', 3.2],
  ['creepage', [400, 2], 'I', 2],
  ['creepage', [400, 2], 'II', 2.8],
  ['creepage', [400, 2], 'IIIa', 4],
  ['creepage', [800, 3], 'IIIb', null],
  ['creepage-high-frequency', [1], '400 kHz', 3],
  ['test-by-transient', [2.5], 'basic', 2.5],
  ['test-by-transient', [2.5], 'reinforced', 4],
  ['temporary-overvoltage', [250], 'peak', 2000],
  ['test-by-temporary-overvoltage', [250], 'basic', 2],
  ['test-by-temporary-overvoltage', [250], 'reinforced', 4],
  ['clearance-by-peak', [2000, 2], 'basic', 1.27],
  ['clearance-by-peak', [2000, 2], 'reinforced', 2.54],
  ['breakdown-field', ['phenolic'], 'field', 17],
  ['field-reduction', ['phenolic', 0.75], '100 kHz', 0.71],
  ['insulation-temperature', [130], 'normal', 120],
  ['bridging-width', [1], 'X', 0.25],
  ['bridging-width', [2], 'X', 1],
  ['bridging-width', [3], 'X', 1.5],
];

/** Of the other books: the folder before the table. */
const SISTERS: typeof CELLS = [
  ['iec-60664-1/mains-transient', [300], 'category 2', 2500],
  ['iec-60664-1/mains-transient', [300], 'category 3', 4000],
  ['iec-60664-1/clearance-by-withstand', [2500, 2], 'basic', 1.5],
  ['iec-60664-1/clearance-by-withstand', [6000, 2], 'basic', 5.5],
  ['iec-60664-1/clearance-by-withstand', [1000, 1], 'basic', 0.15],
  ['iec-60664-1/clearance-by-peak', [2500], 'basic', 1.8],
  ['iec-60664-1/altitude', [5000], 'factor', 1.48],
  ['iec-60664-1/creepage', [250, 2], 'IIIa', 2.5],
  ['iec-60664-1/creepage', [400, 3], 'II', 5.6],
  ['iec-60664-1/creepage-high-frequency', [1000], '400 kHz', 3],
  ['iec-60664-1/clearance-high-frequency', [1200], 'basic', 1.4],
  ['iec-60664-1/bridging-width', [2], 'X', 1],
  ['iec-61558-2-16/clearance', [300], 'reinforced', 5.5],
  ['iec-61558-2-16/creepage', [300], 'reinforced', 6],
  ['iec-61558-2-16/test-voltage', [300], 'reinforced', 4200],
  ['iec-60601-1/creepage-patient', [250], 'basic', 4],
  ['iec-60601-1/creepage-patient', [250], 'reinforced', 8],
  ['iec-60601-1/clearance-patient', [354], 'basic', 2.5],
  ['iec-60601-1/clearance-patient', [354], 'reinforced', 5],
  ['iec-60601-1/operator-at-mains', ['two'], 'creepage', 5],
  ['iec-60601-1/operator-at-mains', ['two'], 'clearance', 4],
  ['iec-60601-1/test-at-mains', [354], 'two patient', 4000],
  ['iec-60601-1/test-at-mains', [354], 'two operator', 3000],
  ['iec-60950-1/mains-transient', [300], 'category 2', 2500],
  ['iec-60950-1/clearance', [420, 2500, 2], 'functional', 1.5],
  ['iec-60950-1/clearance', [420, 2500, 2], 'reinforced', 4],
  ['iec-60950-1/clearance', [7000, 4000, 3], 'basic', 17.5],
  ['iec-60950-1/additional-clearance', [493], 'reinforced', 0.2],
  ['iec-60950-1/additional-clearance', [567], 'reinforced', 0.4],
  ['iec-60950-1/creepage', [250, 2], 'IIIb', 2.5],
  ['iec-60950-1/creepage', [320, 2], 'IIIa', 3.2],
  ['iec-60950-1/test-voltage', [1410], 'reinforced', 3000],
  ['iec-60950-1/winding-temperature-overload', [155], 'limit', 200],
  ['iec-60950-1/national-altitude', ['china'], 'altitude', 5000],
  ['iec-62368-1/national-altitude', ['china'], 'altitude', 5000],
  ['national/markets', ['china'], 'mains', 220],
  ['national/markets', ['europe'], 'mains', 230],
  ['national/markets', ['mexico'], 'mains', 127],
  ['national/markets', ['north-america-277'], 'mains', 277],
  ['national/markets', ['north-america-277'], 'category', 3],
  ['national/markets', ['japan'], 'entered', 150],
];

const MATERIALS: typeof CELLS = [
  ['wire-round', [0.2], 'overall1', 0.226],
  ['wire-round', [0.5], 'overall2', 0.566],
  ['wire-round', [1], 'overall3', 1.124],
  ['wire-round-breakdown', [0.25], 'grade2', 3900],
  ['wire-fully-insulated', [0.15], 'breakdown6', 6688],
  ['tapes', ['polyester-tape-25'], 'leastBreakdown', 3.6],
  ['tapes', ['polyimide-tape-25'], 'leastBreakdown', 6],
  ['thermal-classes', ['F'], 'temperature', 155],
  ['wire-gauges', [-3], 'diameter', 11.684],
  ['wire-gauges', [36], 'diameter', 0.127],
];

function printed(path: string, at: readonly (number | string)[], column: string): unknown {
  return tableAt(path).rows.find((row) => row.at.join('|') === at.join('|'))?.[column];
}

describe('printed cells', () => {
  it.each(CELLS)('should stand unchanged: %s %j %s', (table, at, column, value) => {
    expect(printed(`standards/iec-62368-1/${table}.json`, at, column)).toBe(value);
  });

  it.each(SISTERS)('should stand unchanged: %s %j %s', (table, at, column, value) => {
    expect(printed(`standards/${table}.json`, at, column)).toBe(value);
  });

  it.each(MATERIALS)('should stand unchanged: %s %j %s', (table, at, column, value) => {
    expect(printed(`materials/${table}.json`, at, column)).toBe(value);
  });

  it('should keep the safe reading and name the other', () => {
    const table = tableAt('standards/iec-62368-1/clearance-by-withstand.json') as ReturnType<
      typeof tableAt
    > & {
      readonly disagree: readonly {
        readonly cell: string;
        readonly others: readonly { readonly value: number }[];
      }[];
    };
    const i = table.rows.findIndex(({ at }) => at[0] === 1500 && at[1] === 2);
    expect(table.rows[i]?.['reinforced']).toBe(1.5);
    expect(table.disagree.find(({ cell }) => cell === `rows[${i}].reinforced`)?.others[0]?.value).toBe(1);
  });
});
