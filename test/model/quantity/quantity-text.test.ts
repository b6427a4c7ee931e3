import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dimension, type DimensionName } from '#model/quantity/dimension.ts';
import { quantityNumber, quantityText } from '#model/quantity/quantity-text.ts';

const valueOf = (text: string, name: DimensionName = 'length', asDifference = false): number | string => {
  const found = quantityText(text, name, asDifference);
  return found.kind === 'value' ? found.value : found.why;
};

const NAMES: readonly DimensionName[] = [
  'length',
  'altitude',
  'temperature',
  'voltsRms',
  'voltsPeak',
  'voltsDc',
  'frequency',
  'capacitance',
  'bulkCapacitance',
  'power',
  'duration',
  'resistance',
];

describe('quantityText', () => {
  it.each([
    ['3 mm', 3_000_000],
    ['3mm', 3_000_000],
    ['  3 mm ', 3_000_000],
    ['3', 3_000_000],
    ['0.07 mm', 70_000],
    ['0,07 mm', 70_000],
    ['25 um', 25_000],
    ['25 µm', 25_000],
    ['25 μm', 25_000],
    ['.118"', 2_997_200],
    ['0,118 in', 2_997_200],
    ['118 mil', 2_997_200],
    ['118 thou', 2_997_200],
    ['1e-1 mm', 100_000],
    ['2x1.5', 3_000_000],
    ['3 x 0.06 mm', 180_000],
    ['2×1,5 mm', 3_000_000],
  ])('should read %j as %d nm', (text, nm) => {
    expect(valueOf(text)).toBe(nm);
  });

  it.each<[string, DimensionName, number]>([
    ['240 V', 'voltsRms', 240],
    ['0.24 kV', 'voltsRms', 240],
    ['250 V rms', 'voltsRms', 250],
    ['250Vac', 'voltsRms', 250],
    ['520 V peak', 'voltsPeak', 520],
    ['4 kVdc', 'voltsDc', 4000],
    ['65 kHz', 'frequency', 65_000],
    ['2.2 nF', 'capacitance', 2.2e-9],
    ['33 µF', 'bulkCapacitance', 33e-6],
    ['15 W', 'power', 15],
    ['3.2 ms', 'duration', 3.2e-3],
    ['4.7 Mohm', 'resistance', 4.7e6],
    ['4.7 MΩ', 'resistance', 4.7e6],
    ['105 °C', 'temperature', 105],
    ['221 degF', 'temperature', 105],
    ['378.15 K', 'temperature', 105],
    ['2 km', 'altitude', 2000],
  ])('should read %j as %s', (text, name, value) => {
    expect(valueOf(text, name)).toBe(value);
  });

  it('should take kelvin and degrees as equal steps where a half-width is meant', () => {
    expect(valueOf('5 K', 'temperature', true)).toBe(5);
    expect(valueOf('5 degC', 'temperature', true)).toBe(5);
    expect(valueOf('9 degF', 'temperature', true)).toBe(5);
  });

  it.each([
    '0.8 kg',
    '3 mm mm',
    '3 V',
    'mm',
    '',
    '1 2 mm',
    '3 mm^2',
    '3 MM',
    'unknown',
    '1.2.3 mm',
    '3e999 mm',
    '0x',
  ])('should refuse %j as a length', (text) => {
    expect(valueOf(text)).toEqual(expect.any(String));
  });

  it('should refuse a comma that could stand for thousands, and only that', () => {
    expect(valueOf('1,500 V', 'voltsRms')).toContain('thousand');
    expect(valueOf('0,500 V', 'voltsRms')).toBe(0.5);
    expect(valueOf('1,50 V', 'voltsRms')).toBe(1.5);
  });

  it('should keep rms, peak and direct voltages apart', () => {
    expect(valueOf('250 V rms', 'voltsPeak')).toEqual(expect.any(String));
    expect(valueOf('4 kV dc', 'voltsRms')).toEqual(expect.any(String));
  });

  it('should give every whole nanometre back, whatever the unit it is written in', () => {
    const perUnit = { nm: 1, um: 1e3, mm: 1e6, cm: 1e7, m: 1e9, mil: 25_400, in: 25_400_000 };
    const unit = fc.constantFrom(...(Object.keys(perUnit) as (keyof typeof perUnit)[]));
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), unit, (nm, name) => {
        expect(valueOf(`${nm / perUnit[name]} ${name}`)).toBe(nm);
      }),
      { seed: 7 },
    );
  });

  it('should read one value from every spelling of the unit that means the same', () => {
    for (const name of NAMES) {
      const { own, units } = dimension(name);
      for (const [spelling, unit] of units)
        expect(valueOf(`7 ${spelling}`, name), `${spelling} of ${name}`).toBe(valueOf(`7 ${unit}`, name));
      expect(valueOf('7', name)).toBe(valueOf(`7 ${own}`, name));
      expect(quantityNumber(7, name)).toEqual(quantityText('7', name));
    }
  });

  it('should answer any text with a finite value or a reason, and twice with the same', () => {
    const parts = fc.constantFrom(
      '3',
      '.',
      ',',
      'e',
      '-',
      'x',
      ' ',
      'mm',
      'k',
      'V',
      'µ',
      '°',
      'C',
      '"',
      '999',
      '%',
      '\u202e',
      '\0',
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(parts, { maxLength: 12 }).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(text, fc.constantFrom(...NAMES), (typed, name) => {
        const found = quantityText(typed, name);
        expect(found.kind === 'bad' || Number.isFinite(found.value)).toBe(true);
        expect(quantityText(typed, name)).toEqual(found);
      }),
      { seed: 7, numRuns: 2000 },
    );
  });

  it('should still read what it read before its store of texts ran over', () => {
    for (let i = 0; i < 5000; i += 1) quantityText(`${i} um`, 'length');
    expect(valueOf('17 um')).toBe(17_000);
  });
});
