import { describe, expect, it } from 'vitest';
import { because } from '#standards/because.ts';
import { tablesOf } from '#books/iec-62368-1/tables.ts';
import { AS_FILED } from '#standards/tables/reader.ts';
import { hertz, voltsPeak, voltsRms } from '#units/quantity.ts';
import { workedSheet } from '#words/derivation/derivation-table.ts';

const { distances, voltages } = tablesOf(AS_FILED);

const book = { ...distances, ...voltages };

function sheetOf(found: unknown) {
  const { because: why } = found as { because: Parameters<typeof workedSheet>[0] };
  return workedSheet(why);
}

describe('workedSheet', () => {
  // 272 V between 250 V (2.5 mm) and 320 V (3.2 mm): 2.5 + 22 / 70 x 0.7 = 2.72, up to 2.8, doubled 5.6
  const rows = sheetOf(book.creepageByRms(voltsRms(272), 2, 'IIIb', 'reinforced'));

  it('should work a creepage out row by row', () => {
    expect(rows.map(({ label, value }) => [label, value])).toEqual([
      ['table', ''],
      ['row', '2.5 mm'],
      ['row', '3.2 mm'],
      ['between', '2.72 mm'],
      ['rounded', '2.8 mm'],
      ['reinforced', '5.6 mm'],
      ['next row', '6.4 mm'],
    ]);
  });

  it('should say where each row stands and how well it is known', () => {
    expect(rows[0]?.text).toMatch(/^17, clause 5\.4\.3: creepage/);
    for (const row of rows.filter(({ label }) => label === 'row')) expect(row.confirmed).not.toBeNull();
  });

  it('should mark the figure that was asked for', () => {
    expect(rows.filter(({ result }) => result).map(({ value }) => value)).toEqual(['5.6 mm']);
  });

  it('should show a table met on its row without a line between', () => {
    const met = sheetOf(book.creepageByRms(voltsRms(250), 2, 'IIIb', 'basic'));
    expect(met.map(({ label, value }) => [label, value])).toEqual([
      ['table', ''],
      ['row', '2.5 mm'],
    ]);
  });

  it('should print voltages of the test tables in volts', () => {
    const rows = sheetOf(book.testByTransient(voltsPeak(2500), 'reinforced'));
    expect(rows.at(-1)?.value).toBe('4000 V peak');
  });

  it('should say when high frequency asks nothing', () => {
    const rows = sheetOf(book.creepageHighFrequency(voltsPeak(500), hertz(50), 2, 'basic'));
    expect(rows.some(({ text }) => text.includes('not asked'))).toBe(true);
  });

  it('should write the arithmetic between two rows out', () => {
    const between = rows.find(({ label }) => label === 'between');
    expect(between?.text).toBe('272 V rms: 2.5 + 22/70 × 0.7 = 2.72');
  });

  it('should name a figure once that two parts rest on', () => {
    const shared = because('bridging-width', { pd: 2, value: 1 });
    const rows = workedSheet(because('test-level', { column: 'basic', value: 1 }, [], [shared, shared]));
    expect(rows.map(({ label }) => label)).toEqual(['X', 'test']);
  });
});
