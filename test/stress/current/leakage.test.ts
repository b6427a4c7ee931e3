import { describe, expect, it } from 'vitest';

import { ruleBook } from '#books/shelf.ts';
import { complex } from '#stress/current/complex.ts';
import { runningConverter } from '#stress/converter/computed-stress.ts';
import { leakageOf } from '#stress/current/leakage.ts';
import { currentFrom, nodeVoltages } from '#stress/current/node-voltages.ts';
import { touchBody } from '#stress/current/touch-body.ts';
import { windingCapacitances, type LayersCapacitance } from '#stress/current/winding-capacitance.ts';
import { because } from '#standards/because.ts';
import { farads, hertz } from '#units/quantity.ts';

import { benchDesign } from '#test/stress/bench-design.ts';
import { flyback } from '#test/stress/flyback-bench.ts';

const book = ruleBook('iec-62368-1');
if (book === null) throw new Error('no rule book');

const cap = (capacitance: string | object, more: object = {}) => ({
  id: 'C',
  kind: 'capacitor',
  between: ['pri', 'out'],
  capacitance,
  safetyClass: 'Y1',
  ...more,
});

const found = (voltage: number, frequency: number, ...bridges: readonly object[]) =>
  leakageOf(
    benchDesign({ supply: { kind: 'ac', voltage, frequency, tolerance: 0 }, bridges }),
    book,
    [],
    null,
  );

const plainMa = (voltage: number, frequency: number, ...bridges: readonly object[]) =>
  (found(voltage, frequency, ...bridges).touch?.plain ?? NaN) * 1000;

describe('touchBody', () => {
  it.each([
    // physics-cases net60990.transfer: Hz, U1/(500 I), U2/(500 I), ohms
    [15, 0.999977976798, 0.999763090833, 1999.0946784],
    [50, 0.999756437373, 0.997377095845, 1990.01520047],
    [60, 0.99965005782, 0.996229538171, 1985.67302198],
    [1000, 0.967964967685, 0.56735747735, 972.527804805],
    [20000, 0.952438806276, 0.0344286989473, 478.520700421],
    [64100, 0.952386590748, 0.0107479351249, 476.417951241],
    [1e6, 0.952380975551, 0.000688982274098, 476.191411119],
  ])('should pass current at %s Hz as the network of IEC 60990 does', (frequency, plain, weighed, ohms) => {
    const body = touchBody(hertz(frequency));
    expect(body.plain).toBeCloseTo(plain, 8);
    expect(body.weighed).toBeCloseTo(weighed, 8);
    expect(Math.hypot(body.impedance.re, body.impedance.im)).toBeCloseTo(ohms, 4);
  });

  it('should be 2 kilohm for direct current: 4 V give 2 mA (touch.body2000)', () => {
    expect(4 / touchBody(hertz(0)).impedance.re).toBeCloseTo(0.002, 12);
  });
});

describe('leakageOf', () => {
  it.each([
    // physics-cases touch.*: nF, V, Hz, mA, tolerance in mA
    [4.7, 120, 60, 0.213, 0.0006],
    [4.7, 220, 50, 0.325, 0.0006],
    [4.7, 240, 50, 0.354, 0.0006],
    [100, 240, 50, 7.54, 0.075],
    [2.2, 264, 60, 0.218956441585, 1e-8],
    [2.2, 250, 50, 0.172787595947, 1e-8],
    [1, 264, 60, 0.0995256552657, 1e-8],
    [0.03, 264, 60, 0.00298576965797, 1e-8],
  ])(
    'should let %s nF pass at %s V, %s Hz: %s mA',
    (nanofarads, voltage, frequency, milliamperes, within) => {
      const got = plainMa(voltage, frequency, cap(`${nanofarads} nF`));
      expect(Math.abs(got - milliamperes)).toBeLessThanOrEqual(within);
    },
  );

  it('should weigh 2.2 nF through the body: 0.218922, 0.218097 and 0.308436 mA peak (touch.net.2.2nF)', () => {
    const touch = found(264, 60, cap('2.2 nF')).touch;
    expect((touch?.throughBody ?? NaN) * 1000).toBeCloseTo(0.218922407241, 8);
    expect((touch?.weighed ?? NaN) * 1000).toBeCloseTo(0.218096968661, 8);
    expect((touch?.weighedPeak ?? NaN) * 1000).toBeCloseTo(0.308435690993, 8);
    expect(touch?.answer).toBe('meets');
  });

  it('should take the highest mains: the tolerance upon the rated voltage', () => {
    const design = benchDesign({ bridges: [cap('1 nF')] });
    expect(leakageOf(design, book, [], null).mains).toBeCloseTo(264, 9);
  });

  it('should fall short above 0.5 mA: at 264 V, 50 Hz 6.0 nF do and 5.9 nF do not exceed it', () => {
    // 2 pi 50 Hz 264 V: 0.4976 mA and 0.4893 mA, times 0.9974 of the weighing; 6.1 nF: 0.5046 mA
    expect(found(264, 50, cap('5.9 nF')).touch?.answer).toBe('meets');
    expect(found(264, 50, cap('6.1 nF')).touch?.answer).toBe('falls-short');
  });

  it('should add parts beside each other, halve two in series and take the end of a tolerance that passes more', () => {
    const one = plainMa(250, 50, cap('2.2 nF'));
    expect(plainMa(250, 50, cap('1 nF', { id: 'A' }), cap('1.2 nF', { id: 'B' }))).toBeCloseTo(one, 9);
    expect(plainMa(250, 50, cap('4.4 nF', { inSeries: 2 }))).toBeCloseTo(one, 9);
    expect(plainMa(250, 50, cap({ value: '2 nF', plusMinus: '0.2 nF' }))).toBeCloseTo(one, 9);
  });

  it('should count capacitors in series over an isolated circuit', () => {
    const design = benchDesign({
      supply: { kind: 'ac', voltage: 250, tolerance: 0 },
      circuits: [
        { id: 'pri', role: 'mains' },
        { id: 'mid', role: 'isolated' },
        { id: 'out', role: 'touchable' },
      ],
      bridges: [
        cap('4.4 nF', { id: 'A', between: ['pri', 'mid'] }),
        cap('4.4 nF', { id: 'B', between: ['out', 'mid'] }),
      ],
    });
    expect((leakageOf(design, book, [], null).touch?.plain ?? NaN) * 1000).toBeCloseTo(0.172787595947, 8);
  });

  it('should pass direct current through resistors only, against the direct limit', () => {
    const supply = { kind: 'dc', voltage: 400, tolerance: 0 };
    const chain = { id: 'R', kind: 'resistor', between: ['pri', 'out'], resistance: '1e5 ohm', inSeries: 2 };
    const touch = leakageOf(benchDesign({ supply, bridges: [cap('2.2 nF'), chain] }), book, [], null).touch;
    expect(touch?.plain).toBeCloseTo(0.002, 9);
    expect(touch?.throughBody).toBeCloseTo(400 / 202_000, 9);
    expect(touch?.limit.rms).toBe(0.002);
    expect(touch?.answer).toBe('meets');
  });

  it('should not be shown where a part has no value', () => {
    const { touch, missing } = found(240, 50, { ...cap('1 nF'), capacitance: undefined });
    expect(missing).toEqual(['C']);
    expect(touch?.answer).toBe('not-shown');
  });

  it('should ask of earth the current of a protective conductor', () => {
    const design = benchDesign({
      supply: { kind: 'ac', voltage: 250, tolerance: 0 },
      circuits: [
        { id: 'pri', role: 'mains' },
        { id: 'pe', role: 'earth' },
      ],
      windings: [{ id: 'P', circuit: 'pri', wire: { kind: 'bare', conductor: 0.2 } }],
      layers: [{ kind: 'winding', winding: 'P', turns: 60 }],
      bridges: [cap('100 nF', { between: ['pri', 'pe'] })],
    });
    const { touch, protective } = leakageOf(design, book, [], null);
    expect(touch).toBeNull();
    expect(protective?.value).toBeCloseTo(0.00785398, 7);
    expect(protective?.answer).toBe('falls-short');
  });

  it('should pass less at switching frequency the more a bridging capacitor leads it back', () => {
    const capacitance: LayersCapacitance = {
      between: ['pri', 'out'],
      layers: [0, 2],
      farads: farads(30e-12),
      from: 'estimate',
      because: because('stress', {}),
    };
    const at = (bridges: readonly object[]) => {
      const design = flyback({ over: { bridges } });
      const touch = leakageOf(design, book, [capacitance], runningConverter(design)).touch;
      if (touch?.switching == null) throw new Error('no switching current');
      return touch.switching;
    };
    const alone = at([]);
    expect(alone.frequency).toBe(65_000);
    // widest swing: drain 373 + 100 V, output 12 + 46.7 V the other way; its first harmonic at a duty of 0.2113
    const swing = 473.352380466 + 12 + 46.6690475583;
    const first = ((Math.SQRT2 * swing) / Math.PI) * Math.sin(Math.PI * 0.211259104478);
    // 30 pF are 81.6 kilohm at 65 kHz, the body 0.5 beside it
    expect(alone.plain / (first * 2 * Math.PI * 65_000 * 30e-12)).toBeCloseTo(1, 3);
    expect(alone.weighed / alone.plain).toBeCloseTo(0.0106, 3);
    expect(at([cap('1 nF')]).plain).toBeLessThan(alone.plain);
    expect(at([cap('2.2 nF')]).plain).toBeLessThan(at([cap('1 nF')]).plain);
  });
});

describe('nodeVoltages', () => {
  it('should divide a voltage over two branches and leave a lonely node at 0', () => {
    const branches = [
      { from: 'a', to: 'b', admittance: complex(1) },
      { from: 'b', to: 'c', admittance: complex(3) },
      { from: 'x', to: 'y', admittance: complex(1) },
    ];
    const held = new Map([
      ['a', complex(4)],
      ['c', complex(0)],
    ]);
    const voltages = nodeVoltages(branches, held);
    expect(voltages.get('b')?.re).toBeCloseTo(1, 12);
    expect(voltages.get('x')).toEqual(complex(0));
    expect(currentFrom('c', branches, voltages).re).toBeCloseTo(-3, 12);
  });
});

describe('nodeVoltages of a chain', () => {
  it('should drop evenly over three equal branches', () => {
    const branch = (from: string, to: string) => ({ from, to, admittance: complex(0, 2) });
    const branches = [branch('a', 'b'), branch('c', 'b'), branch('c', 'd')];
    const held = new Map([
      ['a', complex(3)],
      ['d', complex(0)],
    ]);
    const voltages = nodeVoltages(branches, held);
    expect(voltages.get('b')?.re).toBeCloseTo(2, 12);
    expect(voltages.get('c')?.re).toBeCloseTo(1, 12);
  });
});

describe('windingCapacitances', () => {
  const wire = { kind: 'enamelled', conductor: '0.2 mm', grade: 1, overallDiameter: '0.241 mm' };
  const layered = (tape: string, width = '10 mm') =>
    benchDesign({
      former: { height: '5 mm', wall: '0.8 mm', flange: '0.8 mm', chambers: [{ width }] },
      windings: [
        { id: 'P', circuit: 'pri', wire },
        { id: 'S', circuit: 'out', wire },
      ],
      layers: [
        { kind: 'winding', winding: 'P', turns: 40 },
        { kind: 'tape', plies: 1, plyThickness: tape, material: 'polyester-tape-25' },
        { kind: 'winding', winding: 'S', turns: 40 },
      ],
    });

  it.each([
    // physics-cases layer.enamel.tape.*: finite elements of a periodic cell, pF per square centimetre
    ['0.025 mm', 20.9331638102],
    ['0.075 mm', 14.7606350019],
  ])('should lie within 10 %% of a solved cell with %s of tape', (tape, density) => {
    const [found] = windingCapacitances(layered(tape));
    // 10 mm wide, a mean turn counted as 40 mm: 4 square centimetres
    expect(Math.abs(((found?.farads ?? 0) * 1e12) / 4 / density - 1)).toBeLessThan(0.1);
    expect(found).toMatchObject({ between: ['pri', 'out'], layers: [0, 2], from: 'estimate' });
  });

  it('should add up the tapes between: 0.025 + 0.05 mm as 0.075 mm', () => {
    const tape = (plyThickness: string) => ({
      kind: 'tape',
      plies: 1,
      plyThickness,
      material: 'polyester-tape-25',
    });
    const layer = (winding: string) => ({ kind: 'winding', winding, turns: 40 });
    const two = benchDesign({
      former: { height: '5 mm', wall: '0.8 mm', flange: '0.8 mm', chambers: [{ width: '10 mm' }] },
      windings: [
        { id: 'P', circuit: 'pri', wire },
        { id: 'S', circuit: 'out', wire },
      ],
      layers: [layer('P'), tape('0.025 mm'), tape('0.05 mm'), layer('S')],
    });
    const [together] = windingCapacitances(layered('0.075 mm'));
    expect(windingCapacitances(two)[0]?.farads).toBe(together?.farads);
  });

  it('should come to tens of picofarad for a small transformer (interwinding.EE16.estimate: 39 pF)', () => {
    const [found] = windingCapacitances(layered('0.075 mm', '8 mm'));
    expect((found?.farads ?? 0) * 1e12).toBeGreaterThan(20);
    expect((found?.farads ?? 0) * 1e12).toBeLessThan(80);
    expect(found?.because).toMatchObject({ values: { width: 8 } });
  });

  it('should take the place that was measured, and both windings of one band', () => {
    const place = (from: number, to: number) => ({ extent: { from: `${from} mm`, to: `${to} mm` } });
    const over = { kind: 'winding', turns: 9 };
    const design = flyback({
      over: {
        layers: [
          {
            ...over,
            winding: 'S',
            margins: { left: { width: '4 mm' }, right: { width: '4 mm' } },
            ...place(1, 8.5),
          },
          { kind: 'tape', material: 'polyester-tape-25', plies: 1 },
          { ...over, winding: 'A', ...place(0, 3) },
          { ...over, winding: 'P', beside: true, ...place(4, 8.5) },
        ],
      },
    });
    const found = windingCapacitances(design).map(({ layers, because: { values } }) => [layers, values]);
    expect(found).toMatchObject([
      [[0, 2], { width: 3 }],
      [[0, 3], { width: 4.5 }],
      [[2, 3], { width: 3 }],
    ]);
  });

  it('should end at a screen, which faces both of its sides', () => {
    const design = flyback({
      over: {
        layers: [
          { kind: 'winding', winding: 'P', turns: 60 },
          { kind: 'tape', material: 'polyester-tape-25', plies: 1 },
          { kind: 'screen', circuit: 'pri', thickness: '0.05 mm' },
          { kind: 'tape', material: 'polyester-tape-25', plies: 1 },
          { kind: 'winding', winding: 'S', turns: 9 },
          { kind: 'tape', material: 'polyester-tape-25', plies: 1 },
          { kind: 'winding', winding: 'A', turns: 9 },
        ],
      },
    });
    expect(windingCapacitances(design).map(({ layers }) => layers)).toEqual([
      [2, 4],
      [4, 6],
    ]);
  });
});
