import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { tablesOf } from '#books/iec-62368-1/tables.ts';
import { AS_FILED } from '#standards/tables/reader.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import { pressureAt } from '#stress/breakdown/air.ts';
import { AIR, airBreakdown, piecewise, townsend, uniformField, type Gas } from '#stress/breakdown/paschen.ts';
import { metres, mm, nm } from '#units/quantity.ts';

const { distances } = tablesOf(AS_FILED);

const SEA = metres(0);
const ATMOSPHERE = 101.325;

/** Extremum of Townsend's form, found by trying: product in Pa m and volts. */
function lowest(gas: Gas): { readonly product: number; readonly volts: number } {
  let best = { product: 0, volts: Infinity };
  for (let product = 0.3; product < 3; product += 1e-5) {
    const volts = townsend(product, gas);
    if (volts > 0 && volts < best.volts) best = { product, volts };
  }
  return best;
}

describe('townsend', () => {
  it.each([
    // physics-cases paschen.min.*, paschen.1mm.*: minimum and 1 mm of air by printed constants
    { gas: AIR, product: 1.11512873218, volts: 305.266490436, oneMm: 5034.65049262 },
    {
      gas: { a: 11, b: 274, gamma: 0.025 },
      product: 0.917685042509,
      volts: 251.445701647,
      oneMm: 4867.09503406,
    },
    {
      gas: { a: 11, b: 274, gamma: 0.035 },
      product: 0.836936399457,
      volts: 229.320573451,
      oneMm: 4789.75495344,
    },
  ])('should have its minimum at $product Pa m and $volts V', ({ gas, product, volts, oneMm }) => {
    expect(lowest(gas).product).toBeCloseTo(product, 3);
    expect(lowest(gas).volts).toBeCloseTo(volts, 5);
    expect(townsend(ATMOSPHERE, gas)).toBeCloseTo(oneMm, 5);
  });

  it('should agree between its printings: 15/365 per cm Torr (paschen.unit.equivalence, paschen.1mm.15-365-0.01)', () => {
    const perPaM = (perCmTorr: number) => perCmTorr / 1.33322368;
    expect(perPaM(15)).toBeCloseTo(11.2509252761, 6);
    const gas = { a: perPaM(15), b: perPaM(365), gamma: 0.01 };
    expect(townsend(76 * 1.33322368, gas)).toBeCloseTo(5034.98940135, 4);
  });

  it('should have no solution to the left of its branch (paschen.min: below 0.41023 Pa m)', () => {
    expect(townsend(0.4102, AIR)).toBe(0);
    expect(townsend(0.4103, AIR)).toBeGreaterThan(0);
  });

  it('should give about 310 V at 10 cm and 10 Pa (paschen.10cm.10Pa)', () => {
    expect(Math.abs(townsend(1, AIR) / 310 - 1)).toBeLessThan(0.03);
  });
});

describe('uniformField', () => {
  it.each([
    // physics-cases quad.*: gap in cm, relative density, kV
    [0.01, 1, 0.8502],
    [0.02, 1, 1.34424184592],
    [0.05, 1, 2.57052933032],
    [0.1, 1, 4.34466481738],
    [0.2, 1, 7.56305866064],
    [0.5, 1, 16.4092092296],
    [1, 1, 30.3],
    [1.5, 1, 43.7764488181],
    [0.1, 0.5, 2.57052933032],
  ])('should break down %s cm at density %s at %s kV', (gap, density, kilovolts) => {
    expect(uniformField(gap, density) / 1000).toBeCloseTo(kilovolts, 7);
  });
});

describe('piecewise', () => {
  it.each([
    // physics-cases piecewise.*: product in kPa cm, volts
    [0.07599375, 328.863135657],
    [0.101325, 362.604307774],
    [0.20265, 347.42813975],
    [0.506625, 514.960961836],
    [1.01325, 785.919288788],
    [5.06625, 2524.07638768],
    [10.1325, 4366.82198818],
    [20.265, 7687.64794912],
    [50.6625, 16570.0337954],
    [101.325, 29993.7490573],
  ])('should give %s kPa cm %s V', (product, volts) => {
    expect(piecewise(product)).toBeCloseTo(volts, 4);
  });

  it('should jump at 0.2 kPa cm, which is why it only widens a band (piecewise.jump)', () => {
    expect(piecewise(0.2)).toBeCloseTo(494.548314629, 4);
    expect(piecewise(0.2 + 1e-12)).toBeCloseTo(346.285334717, 4);
  });
});

describe('airBreakdown', () => {
  it.each([
    // physics-cases paschen.band: gap in um, envelope of the published forms in V, widened by 5 %
    [7.5, 328.86, 337.42],
    [10, 306.76, 374],
    [15, 317.7, 431.51],
    [20, 320.35, 436],
    [30, 399.93, 498],
    [50, 514.96, 622],
    [75, 653.87, 777],
    [100, 785.92, 932],
    [150, 1034.7, 1242],
    [200, 1269, 1552],
    [300, 1709.7, 2172],
    [500, 2524.1, 2879.8],
    [1000, 4344.7, 5035],
    [2000, 7563.1, 8944.6],
    [5000, 16409, 19483],
    [10000, 29994, 35509],
  ])('should lie in the band at %s um', (micrometres, low, high) => {
    const { likely } = airBreakdown(mm(micrometres / 1000), SEA);
    expect(likely).toBeGreaterThanOrEqual(Math.max(327, 0.95 * low));
    expect(likely).toBeLessThanOrEqual(1.05 * high);
  });

  it('should agree with 4.35 kV at 1 mm (linear.1mm) and 3 kV/mm at 10 mm (thumb.3kVmm)', () => {
    expect(Math.abs(airBreakdown(mm(1), SEA).likely / 4350 - 1)).toBeLessThan(0.01);
    expect(Math.abs(airBreakdown(mm(10), SEA).likely / 30_000 - 1)).toBeLessThan(0.05);
  });

  it('should hold measured breakdowns of small electrodes in its band (measured.sparkplug, mean of each gap)', () => {
    const points = [
      [1.5, (5.86 + 6.6 + 6.6 + 6.36) / 4],
      [2.4, (7.4 + 7.24 + 6.76 + 6.72 + 7.14 + 7.78 + 6.9) / 7],
      [3.1, 8.56],
    ] as const;
    for (const [gap, kilovolts] of points) {
      const { least, most } = airBreakdown(mm(gap), SEA);
      expect(kilovolts * 1000).toBeGreaterThan(least);
      expect(kilovolts * 1000).toBeLessThan(most);
    }
  });

  it('should hold nothing at contact and the field of emission under a micrometre (small.gap.deviation)', () => {
    expect(airBreakdown(nm(0), SEA)).toEqual({ least: 0, likely: 0, most: 0 });
    expect(airBreakdown(nm(500), SEA).likely).toBeCloseTo(175, 9);
  });

  it('should rise with the gap and fall with the altitude', () => {
    const gaps = fc.integer({ min: 0, max: 20_000_000 });
    const law = fc.property(gaps, gaps, fc.integer({ min: 0, max: 10_000 }), (a, b, height) => {
      const [near, far] = [nm(Math.min(a, b)), nm(Math.max(a, b))];
      expect(airBreakdown(near, SEA).likely).toBeLessThanOrEqual(airBreakdown(far, SEA).likely);
      expect(airBreakdown(far, metres(height)).likely).toBeLessThanOrEqual(airBreakdown(far, SEA).likely);
      const { least, likely, most } = airBreakdown(far, metres(height));
      expect(least <= likely && likely <= most).toBe(true);
    });
    fc.assert(law, { seed: 7 });
  });
});

describe('pressureAt', () => {
  it.each([
    // physics-cases isa.pressure
    [0, 101325],
    [2000, 79495.1974353],
    [3000, 70108.5204119],
    [4000, 61640.2064441],
    [5000, 54019.8800085],
    [10000, 26436.2335127],
  ])('should be right at %s m', (height, pascal) => {
    expect(Math.abs(pressureAt(metres(height)) / pascal - 1)).toBeLessThan(1e-9);
  });

  it.each([
    // physics-cases altitude.factor.*: the factor of the rule book beside the ratio of pressures
    [3000, 1.1339],
    [3798, 1.2562],
    [5000, 1.4716],
    [6000, 1.6849],
  ])('should stand within 2 %% behind the altitude factor of the rule book at %s m', (height, ratio) => {
    const physics = pressureAt(metres(2000)) / pressureAt(metres(height));
    expect(physics).toBeCloseTo(ratio, 3);
    const table = distances.altitudeFactor(metres(height));
    if (table === undefined || isOutOfRange(table)) throw new Error('no factor');
    expect(Math.abs(table.value / physics - 1)).toBeLessThan(0.02);
  });
});
