import { describe, expect, it } from 'vitest';

import { ruleBook } from '#books/shelf.ts';
import { heatLimits } from '#stress/heat/heat-limits.ts';
import { heatOf } from '#stress/heat/heat.ts';
import { ageingRatio, lifeHours } from '#stress/heat/thermal-life.ts';
import { celsius } from '#units/quantity.ts';

import { BENCH, benchDesign } from '#test/stress/bench-design.ts';

const book = ruleBook('iec-62368-1');
if (book === null) throw new Error('no rule book');

describe('lifeHours', () => {
  it('should double by 10 K less: 20 000 h become 80 000 at 110 degC in class 130 (ageing.10K.20)', () => {
    expect(lifeHours(celsius(130), celsius(110)).byHalving).toBeCloseTo(80_000, 6);
  });

  it('should give 5.66 times by 25 K (ageing.10K.25) and 7071 h 15 K too hot (ageing.10K.hot)', () => {
    expect(lifeHours(celsius(155), celsius(130)).byHalving / 20_000).toBeCloseTo(5.65685424949, 8);
    expect(lifeHours(celsius(130), celsius(145)).byHalving).toBeCloseTo(7071.06781187, 6);
  });

  it('should stand within the span of activation energies for a reserve', () => {
    const { byHalving, byArrhenius } = lifeHours(celsius(130), celsius(120));
    expect(byArrhenius[0]).toBeLessThan(byHalving);
    expect(byArrhenius[1]).toBeGreaterThan(byHalving);
  });
});

describe('ageingRatio', () => {
  it.each([
    // physics-cases ageing.arrhenius.*
    [0.9, 155, 165, 1.74497109082],
    [0.8, 100, 110, 1.91425599711],
    [1.1, 120, 130, 2.23752175649],
  ])('should run at %s eV from %s to %s degC %s times as quick', (energy, cooler, warmer, ratio) => {
    expect(ageingRatio(energy, celsius(cooler), celsius(warmer))).toBeCloseTo(ratio, 8);
  });
});

describe('heatOf', () => {
  const withHeat = (surroundings: object, former: object = {}) =>
    heatOf(benchDesign({ surroundings, former: { ...BENCH_FORMER, ...former } }), book);

  it('should take the class of the lowest part and name it', () => {
    const heat = withHeat({ hottestInsulation: '105 degC' });
    const tape = heat.parts.find(({ material }) => material === 'polyester-tape-25');
    expect(heat.system?.thermalClass).toBe(tape?.thermalClass);
    expect(heat.system?.setBy.map(({ field }) => field)).toEqual(['layers[1].material']);
  });

  it('should let a former of a lower class set it', () => {
    const heat = withHeat({}, { material: 'pa66' });
    expect(heat.parts.length).toBe(2);
    expect(heat.system).toMatchObject({ thermalClass: 120, setBy: [{ field: 'former.material' }] });
  });

  it('should count the sleeves of leads and links', () => {
    const sleeve = { material: 'ptfe', wall: '0.4 mm', into: '3 mm' };
    const lead = { at: 'left', exit: 'left', way: 'slot', sleeve };
    const [p, s] = BENCH.windings;
    const windings = [
      { ...p, leads: { start: lead, finish: 'unknown' }, links: [{ side: 'left', way: 'riser', sleeve }] },
      s,
    ];
    const layers = [
      ...BENCH.layers,
      { kind: 'tape', material: 'polyester-tape-25', plies: 3 },
      BENCH.layers[0],
    ];
    const { parts } = heatOf(benchDesign({ windings, layers }), book);
    expect(parts.filter(({ material }) => material === 'ptfe').map(({ field }) => field)).toEqual([
      'windings[0].leads.start.sleeve.material',
      'windings[0].links[0].sleeve.material',
    ]);
  });

  it('should always list the enamels as unknown, and what has no name', () => {
    expect(withHeat({}).unknown).toEqual(['former.material', 'windings[0].wire', 'windings[1].wire']);
  });

  it('should say nothing of limits and life without a temperature', () => {
    expect(withHeat({})).toMatchObject({ hottest: null, limits: null, life: null });
  });
});

describe('what the hottest spot is held to', () => {
  // a former of class 120: 115 degC in normal use, the lowest of its limits in overload 165
  const limits = (temperature: object, former: object = { material: 'pa66' }) => {
    const surroundings = { hottestInsulation: '105 degC', temperature };
    const heat = heatOf(benchDesign({ surroundings, former: { ...BENCH_FORMER, ...former } }), book);
    return [heat.limits?.best.value, heat.limits?.worst.value];
  };

  it.each([
    ['the limit of the class, by resistance as read', { method: 'resistance' }, [115, 115]],
    ['10 K less by thermocouple', { method: 'thermocouple' }, [105, 105]],
    ['10 K less by infrared', { method: 'infrared' }, [105, 105]],
    ['either where nobody said how', { method: 'unknown' }, [115, 105]],
    ['either where it is left out', {}, [115, 105]],
    [
      'the lowest limit of overload in abnormal use',
      { method: 'resistance', condition: 'abnormal' },
      [165, 165],
    ],
  ])('should be %s', (_, temperature, expected) => {
    expect(limits(temperature)).toEqual(expected);
  });

  it('should be the limit of the next lower class where the book has none for a class', () => {
    const open = heatLimits(
      benchDesign({ surroundings: { temperature: { method: 'resistance' } } }),
      book,
      celsius(150),
      false,
    );
    expect(open?.best.value).toBe(120);
  });

  it('should be that of the highest class where nothing is known, and of the lowest at worst', () => {
    const design = benchDesign({ surroundings: { temperature: { method: 'resistance' } } });
    const { best, worst } = heatLimits(design, book, null, true)!;
    expect([best.value, worst.value]).toEqual([225, 100]);
  });

  it('should be that of the lowest class at worst where the former has no name', () => {
    expect(limits({ method: 'resistance' }, {})).toEqual([120, 100]);
    expect(limits({ method: 'thermocouple' }, {})).toEqual([110, 90]);
  });
});

const BENCH_FORMER = { height: '5 mm', wall: '0.8 mm', flange: '0.8 mm', chambers: [{ width: '12 mm' }] };
