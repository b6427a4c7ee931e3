import { describe, expect, it } from 'vitest';
import { betweenRows } from '#words/derivation/between-rows.ts';
import { tablesOf } from '#books/iec-62368-1/tables.ts';
import { AS_FILED } from '#standards/tables/reader.ts';
import { voltsRms } from '#units/quantity.ts';

const { distances } = tablesOf(AS_FILED);

const creepage = (volts: number) => {
  const found = distances.creepageByRms(voltsRms(volts), 2, 'IIIb', 'reinforced');
  if ('kind' in found) throw new Error('no creepage');
  return found.because;
};

describe('betweenRows', () => {
  it('should name both rows and the place between them', () => {
    expect(betweenRows(creepage(272))).toEqual({
      lower: '250 V rms: 2.5 mm',
      upper: '320 V rms: 3.2 mm',
      found: '2.72',
      at: '272 V rms',
      share: 22 / 70,
    });
  });

  it('should have nothing to draw where a row was met', () => {
    expect(betweenRows(creepage(250))).toBeNull();
  });
});
