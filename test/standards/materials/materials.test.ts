import { describe, expect, it } from 'vitest';

import {
  filmBreakdown,
  formerById,
  formers,
  fullyInsulatedBreakdown,
  fullyInsulatedWire,
  insulatedWireOverall,
  litzOverall,
  roundWire,
  sleeveById,
  sleeves,
  tapeById,
  tapes,
} from '#standards/materials/materials.ts';
import { inMm, mm } from '#units/quantity.ts';

describe('materials', () => {
  it('should know every tape, former and sleeve that a file may name', () => {
    expect(tapes.map(({ id }) => id)).toEqual([
      'polyester-tape-25',
      'polyester-tape-50',
      'polyimide-tape-25',
      'aramid-paper-50',
      'aramid-paper-80',
      'aramid-paper-130',
      'glass-tape',
      'margin-tape',
    ]);
    expect(formers.map(({ id }) => id)).toEqual(['phenolic', 'pbt', 'pet', 'lcp', 'pa66', 'pps', 'dap']);
    expect(sleeves.map(({ id }) => id)).toEqual(['ptfe', 'polyolefin', 'silicone-glass']);
    expect([tapeById('x'), formerById('x'), sleeveById('x')]).toEqual([null, null, null]);
  });

  it('should keep the film of a tape apart from the whole ply', () => {
    const tape = tapeById('polyester-tape-25');
    expect(tape?.film?.value).toBe(mm(0.025));
    expect(tape?.total.value).toBe(mm(0.06));
    expect(tape?.leastBreakdown?.value).toBe(3600);
    expect(tape?.leastBreakdown?.cite.confirmed).toBe('published');
    expect(tape?.total.cite.confirmed).toBe('memory');
    expect(tape?.group?.value).toBe('IIIa');
    expect(tapeById('glass-tape')).toMatchObject({
      film: null,
      leastBreakdown: null,
      group: { value: 'IIIb' },
    });
  });

  it('should mark what is known of mouldings and sleeves as memory', () => {
    expect(formerById('phenolic')).toMatchObject({ thermalClass: { value: 150 }, group: { value: 'IIIb' } });
    expect(formerById('pbt')?.group?.cite.confirmed).toBe('memory');
    expect(sleeveById('polyolefin')).toMatchObject({ thermalClass: { value: 105 }, group: null });
  });

  it('should take the next thinner film listed and none below the first', () => {
    expect(filmBreakdown('polyester-tape-25', mm(0.036))).toMatchObject({ value: 3600 });
    expect(filmBreakdown('polyester-tape-25', mm(0.038))).toMatchObject({ value: 5000 });
    expect(filmBreakdown('polyester-tape-25', mm(1))).toMatchObject({ value: 17500 });
    expect(filmBreakdown('polyester-tape-25', mm(0.023))).toMatchObject({ kind: 'out-of-range' });
    expect(filmBreakdown('glass-tape', mm(0.1))).toMatchObject({ kind: 'out-of-range' });
  });
});

describe('wires', () => {
  it('should give a listed size as printed', () => {
    const wire = roundWire(mm(0.2), 1);
    expect(wire).toMatchObject({ value: { overall: mm(0.226), minIncrease: mm(0.014), breakdown: 1800 } });
    expect(wire.because.values).toMatchObject({ exact: true, specimen: 'twisted pair' });
  });

  it('should give a size between rows the growth of the next larger row and name it', () => {
    const wire = roundWire(mm(0.3), 2);
    // 0.300 + (0.367 - 0.315)
    expect(wire).toMatchObject({ value: { overall: mm(0.352), breakdown: 4100 } });
    expect(wire.because.values).toMatchObject({ exact: false, row: 0.315 });
  });

  it('should refuse sizes outside the table and grades that a size has not', () => {
    expect(roundWire(mm(0.0179), 1)).toMatchObject({ kind: 'out-of-range' });
    expect(roundWire(mm(5.1), 1)).toMatchObject({ kind: 'out-of-range' });
    expect(roundWire(mm(0.05), 3)).toMatchObject({ kind: 'out-of-range' });
  });

  it('should know fully insulated wire up to 0.16 mm and its strength beyond', () => {
    expect(fullyInsulatedWire(mm(0.1), 6)).toMatchObject({
      value: { overall: mm(0.18), leastBreakdown: 5265 },
    });
    expect(fullyInsulatedWire(mm(0.3), 6)).toMatchObject({ kind: 'out-of-range' });
    // published: 0.30 mm with 132 um has 10032 V
    expect(fullyInsulatedBreakdown(mm(0.3), mm(0.432))).toMatchObject({ value: 10032 });
  });

  it('should add the layers of covered wire and the serving of litz', () => {
    expect(inMm(insulatedWireOverall(mm(0.5)).value)).toBe(0.7);
    const bundle = litzOverall(mm(0.02), 1, 60, 'double');
    // measured largest 0.318
    expect('kind' in bundle ? 0 : inMm(bundle.value)).toBeCloseTo(0.318, 3);
  });
});
