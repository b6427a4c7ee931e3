import { describe, expect, it } from 'vitest';

import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { stressBlocks, stressText } from '#words/stress/stress-words.ts';
import { workedSheet } from '#words/derivation/derivation-table.ts';
import { study } from '#judge/study.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';

const enamelled = (conductor: string) => ({ kind: 'enamelled', conductor, grade: 1 });
const winding = (id: string, circuit: string, conductor: string) => {
  return { id, circuit, wire: enamelled(conductor), leads: 'not-judged' };
};

/** Invented: a charger with two output voltages, a good and an unknown bridging part. */
const CHARGER = {
  format: 'layerwright-design/1',
  title: 'Bench charger',
  origin: 'proposed',
  rules: 'iec-62368-1',
  supply: { kind: 'ac', voltage: '240 V' },
  surroundings: { hottestInsulation: '110 degC' },
  converter: {
    mode: 'continuous',
    switchingFrequency: '65 kHz',
    reflectedVoltage: '90 V',
    clampOvershoot: '60 V',
    outputs: [
      { circuit: 'out', voltage: '12 V' },
      { circuit: 'aux', voltage: '15 V' },
    ],
    variants: [
      {
        name: 'twenty volts',
        outputs: [{ circuit: 'out', voltage: '20 V' }],
        reflectedVoltage: '150 V',
      },
    ],
  },
  circuits: [
    { id: 'pri', name: 'Primary', role: 'mains' },
    { id: 'aux', name: 'Auxiliary', role: 'mains' },
    { id: 'out', name: 'Output', role: 'touchable' },
  ],
  former: {
    height: '5 mm',
    wall: '0.8 mm',
    flange: '0.8 mm',
    material: 'pbt',
    chambers: [{ width: '12 mm' }],
  },
  core: { bond: 'floating', outerGap: '0.5 mm' },
  windings: [winding('P', 'pri', '0.2 mm'), winding('A', 'aux', '0.2 mm'), winding('S', 'out', '0.5 mm')],
  layers: [
    { kind: 'winding', winding: 'P', turns: 30 },
    { kind: 'winding', winding: 'P', turns: 30 },
    { kind: 'tape', material: 'polyester-tape-25', plies: 1 },
    { kind: 'winding', winding: 'A', turns: 10 },
    { kind: 'tape', material: 'polyester-tape-25', plies: 3 },
    { kind: 'winding', winding: 'S', turns: 8 },
  ],
  bridges: [
    {
      id: 'CY',
      kind: 'capacitor',
      between: ['pri', 'out'],
      capacitance: '1 nF',
      safetyClass: 'Y1',
      rated: '400 V',
    },
    { id: 'CU', kind: 'capacitor', between: ['pri', 'out'], capacitance: '470 pF', safetyClass: 'unknown' },
  ],
};

function design(over: object = {}): Design {
  const read = readDesign({ ...CHARGER, ...over }, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return read.design;
}

const sheetOf = (of: Design) => study(of).stress;

describe('stressReport', () => {
  const sheet = sheetOf(design());

  it('should carry the same working voltages as the verdict', () => {
    const { pairs } = study(design()).verdict;
    for (const pair of sheet.pairs) {
      const judged = pairs.find(({ between }) => between.join() === pair.between.join());
      const { rms, peak, frequency, basis } = pair;
      expect(judged?.stress).toMatchObject({ rms, peak, frequency, basis });
    }
  });

  it('should find the unknown part unsafe at worst and reinforced at best, and the Y1 reinforced', () => {
    const by = Object.fromEntries(sheet.bridges.map((bridge) => [bridge.worst.id, bridge]));
    expect(by['CY']?.worst).toMatchObject({ grade: 'reinforced', unsafe: null });
    expect(by['CU']?.worst).toMatchObject({ grade: 'none', unsafe: 'class' });
    expect(by['CU']?.best.grade).toBe('reinforced');
  });

  it('should make one test of the pairs that are joined the same way', () => {
    expect(sheet.tests.map(({ proves }) => proves)).toEqual([
      [
        ['pri', 'out'],
        ['aux', 'out'],
      ],
    ]);
    expect(sheet.tests[0]).toMatchObject({ disconnect: ['CY', 'CU'], verdict: 'falls-short' });
  });

  it('should grade board gaps and pin rows of pairs that ask for something', () => {
    const outside = [
      { between: ['pri', 'out'], what: 'pin rows', clearance: '8 mm', creepage: '5 mm' },
      { between: ['pri', 'aux'], what: 'pins beside each other', clearance: '1 mm', creepage: '1 mm' },
      { between: ['core', 'out'], what: 'core to a capacitor', clearance: '6 mm', creepage: '6 mm' },
    ];
    const of = design({ outside });
    expect(sheetOf(of).outside).toMatchObject([{ what: 'pin rows', grade: 'basic', needed: 'reinforced' }]);
    expect(stressText(of, sheetOf(of))).toContain(
      'pin rows, Primary to Output: clearance 8.00 mm, creepage 5.00 mm: basic of reinforced',
    );
  });

  it('should be the same for the same design, and plain JSON without NaN', () => {
    expect(JSON.stringify(sheetOf(design()))).toBe(JSON.stringify(sheet));
    expect(JSON.parse(JSON.stringify(sheet))).toEqual(JSON.parse(JSON.stringify(sheet)));
    expect(JSON.stringify(sheet)).not.toMatch(/NaN|Infinity/);
  });
});

describe('stressText', () => {
  const text = stressText(design(), sheetOf(design()));

  it('should say what decides: ends, variant, unsafe part, trap of the test, cautions', () => {
    expect(text).toContain(
      'from the switched end of Primary P to the return of Output S; high line, variant twenty volts',
    );
    expect(text).toContain(
      'CU, Primary to Output: class not known, counted as no safety part; at its best reinforced',
    );
    expect(text).toContain(
      'A pass shows that nothing breaks down today. It shows no distance, no ply and no grade.',
    );
    expect(text).toContain('rule of thumb, no promise');
    expect(text).toContain('Test voltages kill.');
  });

  it('should mark the lines that fall short: the unsafe part, too much touch current', () => {
    const big = {
      id: 'CB',
      kind: 'capacitor',
      between: ['pri', 'out'],
      capacitance: '10 nF',
      safetyClass: 'Y1',
    };
    const unsafe = { ...big, id: 'CX', capacitance: '10 pF', safetyClass: 'X1' };
    const of = design({ bridges: [...CHARGER.bridges, big, unsafe] });
    const short = stressBlocks(sheetOf(of), of).flatMap((block) => block.short);
    expect(short).toEqual([
      expect.stringContaining(
        'CX, Primary to Output: unsafe bridge: it is no safety part; if it shorts, the mains',
      ),
      expect.stringMatching(/^in all .*: falls short$/),
    ]);
  });

  it('should never call anything safe or compliant', () => {
    expect(text.replace(/unsafe bridge|no safety part/g, '')).not.toMatch(/\bsafe|complian/i);
  });

  it('should say that nothing could be computed where no primary is left', () => {
    const outputs = ['pri', 'aux', 'out'].map((circuit) => ({ circuit, voltage: '12 V' }));
    const of = design({ converter: { ...CHARGER.converter, outputs, variants: [] } });
    expect(stressText(of, sheetOf(of))).toContain('no winding on the mains side is left to be the primary');
  });

  it('should be harmless with hostile names', () => {
    const circuits = CHARGER.circuits.map((circuit) => ({
      ...circuit,
      name: `\u001b[31m${circuit.name}\u202e`,
    }));
    const of = design({ circuits });
    // eslint-disable-next-line no-control-regex -- this very sign is to be missing
    expect(stressText(of, sheetOf(of))).not.toMatch(/[\u001b\u202e]/);
  });
});

describe('worked sheet of a computed voltage', () => {
  it('should name bulk, reflected voltage, duty and the two ends', () => {
    const [pair] = sheetOf(design()).pairs.filter(({ between }) => between.join() === 'pri,out');
    if (pair === undefined) throw new Error('no pair');
    const rows = workedSheet(pair.because).map(({ label, text }) => `${label}: ${text}`);
    expect(rows).toContain('bulk: high line, variant twenty volts');
    expect(rows).toContain('reflected: 60 turns of P');
    expect(rows).toContain('peak: from the switched end of pri to the return of out');
  });
});
