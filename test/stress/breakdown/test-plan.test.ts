import { describe, expect, it } from 'vitest';

import type { Design } from '#model/design.ts';
import { because } from '#standards/because.ts';
import { tablesOf } from '#books/iec-62368-1/tables.ts';
import { AS_FILED } from '#standards/tables/reader.ts';
import { ruleBook } from '#books/shelf.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import { weakestBreakdown } from '#stress/breakdown/expected-breakdown.ts';
import { weakestEnamel, weakestPly } from '#stress/breakdown/rated-breakdown.ts';
import { testPlan } from '#stress/breakdown/test-plan.ts';
import { metres, mm, voltsPeak, voltsRms } from '#units/quantity.ts';

import { BENCH, benchDesign } from '#test/stress/bench-design.ts';
import { flyback } from '#test/stress/flyback-bench.ts';

const { voltages } = tablesOf(AS_FILED);

const book = ruleBook('iec-62368-1');
if (book === null) throw new Error('no rule book');

const AT_SEA = { perPly: voltsRms(3600), enamel: voltsRms(2300), altitude: metres(0) };
const path = (length: number, plies: number) => ({ length: mm(length), plies });

function planOf(design: Design, peak: number, paths = [path(6.18, 0)], between = ['pri', 'out'] as const) {
  const [a, b] = between.map((id) => design.circuits.find((circuit) => circuit.id === id));
  if (a === undefined || b === undefined) throw new Error('no pair');
  const expected = weakestBreakdown(paths, AT_SEA);
  return testPlan(design, book!, { a, b, peak: voltsPeak(peak), because: because('test', {}), expected });
}

describe('weakestBreakdown', () => {
  it('should add rated plies to the air along a path and take the weakest path', () => {
    // 6.18 mm of air about 19.9 kV; three plies of 3.6 kV rms are 15.3 kV peak
    const found = weakestBreakdown([path(6.18, 0), path(0, 3)], AT_SEA);
    expect(found?.path).toEqual(path(0, 3));
    expect(found?.likely).toBeCloseTo(3 * 3600 * Math.SQRT2, 6);
    expect(found?.least).toBe(found?.most);
  });

  it('should take the enamel where two wires touch', () => {
    expect(weakestBreakdown([path(0, 0)], AT_SEA)?.likely).toBeCloseTo(2300 * Math.SQRT2, 6);
  });

  it('should not know what rests on an unknown ply or enamel', () => {
    expect(weakestBreakdown([path(6, 0), path(0, 3)], { ...AT_SEA, perPly: null })).toBeNull();
    expect(weakestBreakdown([path(0, 0)], { ...AT_SEA, enamel: null })).toBeNull();
    expect(weakestBreakdown([], AT_SEA)).toBeNull();
  });
});

describe('weakestPly and weakestEnamel', () => {
  it('should find the table figure of the tape, and a stated one before it', () => {
    expect(weakestPly(benchDesign())).toBe(3600);
    const tape = {
      kind: 'tape',
      material: 'polyester-tape-25',
      plies: 3,
      plyWithstand: { value: '4 kV', shape: 'dc' },
    };
    const stated = benchDesign({
      layers: [
        { kind: 'winding', winding: 'P', turns: 9 },
        tape,
        { kind: 'winding', winding: 'S', turns: 2 },
      ],
    });
    expect(weakestPly(stated)).toBeCloseTo(4000 / Math.SQRT2, 9);
  });

  it('should not know the weakest ply where one tape has no strength', () => {
    const bare = { kind: 'tape', plies: 1, plyThickness: '0.05 mm' };
    const layers = [...BENCH.layers.slice(0, 2), bare, ...BENCH.layers.slice(2)];
    expect(weakestPly(benchDesign({ layers }))).toBeNull();
  });

  it('should count an enamel of unknown grade as grade 1, and nothing of bare wire', () => {
    const wired = (wire: object) => {
      const windings = BENCH.windings.map((winding) => ({ ...winding, wire }));
      return weakestEnamel(benchDesign({ windings }), ['pri', 'out']);
    };
    const enamelled = { kind: 'enamelled', conductor: '0.2 mm' };
    expect(wired({ ...enamelled, grade: 'unknown' })).toBe(wired({ ...enamelled, grade: 1 }));
    expect(wired({ ...enamelled, grade: 2 })).toBeGreaterThan(wired({ ...enamelled, grade: 1 }) ?? NaN);
    expect(wired({ kind: 'bare', conductor: '0.2 mm' })).toBe(0);
  });

  it('should find the weaker wire of two circuits', () => {
    const both = weakestEnamel(benchDesign(), ['pri', 'out']) ?? NaN;
    const [p, s] = [['pri', 'pri'] as const, ['out', 'out'] as const].map((pair) =>
      weakestEnamel(benchDesign(), pair),
    );
    expect(both).toBe(Math.min(p ?? NaN, s ?? NaN));
  });
});

describe('testPlan', () => {
  it('should ask 4000 V dc or 2828 V rms for a minute of reinforced insulation at 2500 V (test report, 4000 V dc)', () => {
    const level = voltages.testByTransient(voltsPeak(2500), 'reinforced');
    if (isOutOfRange(level)) throw new Error(level.says);
    const { type, routine } = planOf(benchDesign(), level.value);
    expect(type).toMatchObject({ peak: 4000, dc: 4000, seconds: 60 });
    expect(type.rms).toBeCloseTo(2828.4, 1);
    expect(routine!.peak).toBeLessThan(type.peak);
    expect(routine!.seconds[0]).toBeLessThan(routine!.seconds[1]);
  });

  it('should join the circuits of each side and take off the parts that bridge them', () => {
    const bridges = [
      { id: 'CY', kind: 'capacitor', between: ['pri', 'out'] },
      { id: 'CA', kind: 'capacitor', between: ['out', 'aux'] },
      { id: 'R', kind: 'resistor', between: ['pri', 'aux'] },
    ];
    const plan = planOf(flyback({ over: { bridges } }), 4000);
    expect(plan.connect).toEqual([['pri', 'aux'], ['out']]);
    expect(plan.disconnect).toEqual(['CY', 'CA']);
  });

  it('should test a floating core on either side and a bound one where it is bound', () => {
    expect(planOf(benchDesign(), 4000).core).toBe('either-side');
    expect(planOf(benchDesign({ core: { bond: 'out' } }), 4000).core).toBe('second');
  });

  it('should show the trap: 1 mm of air passes a test that asks for 3 mm', () => {
    // 1 mm holds about 4.3 kV, with real electrodes 3.3: it may pass 4 kV, and passes 3 kV
    expect(planOf(benchDesign(), 4000, [path(1, 0)]).outcome).toBe('may-pass');
    expect(planOf(benchDesign(), 3000, [path(1, 0)]).outcome).toBe('likely-passes');
    expect(planOf(benchDesign(), 4000, [path(0.18, 0)]).outcome).toBe('likely-fails');
    expect(planOf(benchDesign(), 4000, []).outcome).toBe('unknown');
  });
});
