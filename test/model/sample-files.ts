// Design files for the tests of this room: an ordinary build, and one that uses every field of the format.

import { mm } from '#units/quantity.ts';
import type { KnownIds } from '#model/check/check-ids.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { TWO_WINDINGS } from '#test/designs.ts';

export const KNOWN: KnownIds = {
  rules: ['iec-62368-1'],
  plies: new Map([
    ['polyester-tape-25', mm(0.06)],
    ['margin-tape', mm(0.06)],
  ]),
  tapes: ['polyester-tape-25', 'margin-tape'],
  formers: ['phenolic', 'pbt'],
  markets: ['china'],
  sleeves: ['ptfe'],
};

/** Two windings with 3 mm margins and three plies between, in a chamber of 12 mm. */
export const plainFile = (): DesignFile => {
  const margins = { left: { width: '3 mm' }, right: { width: '3 mm' } };
  const layers = TWO_WINDINGS.layers.map((layer) =>
    layer.kind === 'winding' ? { ...layer, margins: structuredClone(margins) } : layer,
  );
  return structuredClone({ ...TWO_WINDINGS, layers });
};

const sleeve = { material: 'ptfe', wall: '0.41 mm', into: '5 mm', withstand: 'unknown' } as const;
const lead = {
  at: 'left',
  exit: 'right',
  way: 'riser',
  sleeve,
  bareFrom: 'unknown',
  crossTape: 2,
  apart: '6 mm',
} as const;
const block = {
  width: '3 mm',
  filled: true,
  height: '0.2 mm',
  moulded: true,
  material: 'margin-tape',
  withstand: '3 kV',
};
const wrap = {
  material: 'polyester-tape-25',
  plies: 1,
  plyThickness: '0.06 mm',
  film: '25 um',
  plyWithstand: '5 kV',
};

/** Every field of the format at least once. */
export const fullFile = (): DesignFile => ({
  ...plainFile(),
  made: '2019',
  notes: 'invented',
  supply: {
    kind: 'ac',
    voltage: 240,
    lowest: '100 V',
    tolerance: '10 %',
    frequency: '50 Hz',
    overvoltageCategory: 2,
    transient: '2.5 kV',
    market: 'china',
  },
  surroundings: {
    pollutionDegree: 2,
    altitude: { value: '2000 m', plusMinus: '100 m' },
    hottestInsulation: '105 °C',
    temperature: { method: 'thermocouple', condition: 'normal' },
    impregnation: 'potted',
    proof: 'tested',
  },
  converter: {
    mode: 'continuous',
    switchingFrequency: '65 kHz',
    reflectedVoltage: '90 V',
    clampOvershoot: '60 V',
    rail: { kind: 'boosted', voltage: '390 V' },
    duty: 0.4,
    outputs: [{ circuit: 'out', voltage: '12 V' }],
    variants: [
      {
        name: '5 V',
        outputs: [{ circuit: 'out', voltage: '5 V' }],
        switchingFrequency: '70 kHz',
        reflectedVoltage: '150 V',
        clampOvershoot: '40 V',
        turns: { P: 40 },
      },
    ],
  },
  workingVoltages: [
    { between: ['pri', 'out'], rms: '250 V', peak: '520 V', frequency: '65 kHz', basis: 'measured' },
  ],
  circuits: [
    { id: 'pri', name: 'Primary', role: 'mains' },
    { id: 'out', name: 'Output', role: 'touchable', means: 'patient' },
  ],
  former: {
    height: '5 mm',
    wall: { ...wrap, plies: 4 },
    flange: 'unknown',
    material: 'phenolic',
    split: true,
    chambers: [{ width: '12 mm' }, { width: { value: '5 mm', plusMinus: '0.1 mm' } }],
    dividers: ['1 mm'],
    tube: { shape: 'rectangular', width: '8 mm', depth: '10 mm' },
  },
  core: { bond: 'floating', outerGap: '0.4 mm', wrap },
  parts: [{ id: 'band', bond: 'floating', touches: ['core'] }],
  windings: [
    {
      id: 'P',
      circuit: 'pri',
      wire: {
        kind: 'litz',
        conductor: '0.1 mm',
        grade: 1,
        overallDiameter: '0.6 mm',
        litzStrands: 20,
        served: true,
      },
      anchored: true,
      leads: { start: lead, finish: 'unknown' },
      links: [{ side: 'left', way: 'riser', sleeve: null }],
    },
    {
      id: 'S',
      circuit: 'out',
      wire: {
        kind: 'layer-insulated',
        conductor: '0.5 mm',
        insulationLayers: 3,
        approval: 'wire-annex',
        withstand: '6 kV',
      },
      leads: 'not-judged',
    },
  ],
  layers: [
    {
      kind: 'winding',
      chamber: 0,
      winding: 'P',
      turns: 10,
      strands: 2,
      spread: false,
      margins: { left: block, right: block },
    },
    {
      kind: 'tape',
      ...wrap,
      bonded: true,
      cemented: true,
      inset: { left: 0, right: '0 mm' },
      margins: {},
      turnUp: '2 mm',
    },
    {
      kind: 'winding',
      winding: 'S',
      turns: 8,
      extent: { from: '3 mm', to: { value: '9 mm', plusMinus: 0.2 } },
    },
    {
      kind: 'screen',
      circuit: 'pri',
      id: 'foil',
      thickness: '0.05 mm',
      overlap: wrap,
      inset: { left: '3 mm', right: '3 mm' },
      margins: { left: { width: 'unknown' } },
      lead: { exit: 'left', way: 'slot', sleeve: null },
    },
    {
      kind: 'winding',
      winding: 'P',
      turns: 10,
      margins: { left: { width: '0 mm' }, right: { width: '7 mm' } },
    },
    { kind: 'winding', winding: 'S', turns: 4, extent: { from: '6 mm', to: '12 mm' }, beside: true },
  ],
  outside: [
    {
      between: ['core', 'out'],
      what: 'pin rows',
      clearance: '8 mm',
      creepage: '8.4 mm',
      materialGroup: 'IIIa',
      working: { rms: '339 V', peak: '560 V', frequency: '65 kHz', basis: 'measured' },
    },
  ],
  bridges: [
    {
      id: 'C1',
      kind: 'capacitor',
      between: ['pri', 'out'],
      capacitance: '1 nF',
      safetyClass: 'Y1',
      rated: '400 V',
      inSeries: 1,
      working: { rms: '300 V' },
    },
    { id: 'R1', kind: 'resistor', between: ['pri', 'out'], resistance: '4.7 Mohm', inSeries: 2 },
    {
      id: 'K1',
      kind: 'optocoupler',
      between: ['pri', 'out'],
      clearance: '7 mm',
      creepage: '7 mm',
      throughInsulation: '0.4 mm',
      approval: 'reinforced',
    },
  ],
  evidence: [
    {
      id: 'e1',
      kind: 'photo',
      says: 'seen',
      fields: ['layers[1].turnUp', 'layers[4].turns'],
      file: 'coil.jpg',
      picture: {
        width: 800,
        height: 600,
        turned: 12.5,
        scale: {
          length: { value: '12 mm', plusMinus: '0.1 mm' },
          from: [10, 20],
          to: [610, 20],
          picked: 1.5,
        },
      },
    },
    {
      id: 'e2',
      kind: 'measurement',
      says: 'left margin',
      fields: ['layers[0].margins.left.width'],
      measured: {
        photo: 'e1',
        kind: 'distance',
        points: [
          [10, 30],
          [160, 30],
        ],
        picked: 1.5,
        scale: 0.02,
        value: '3 mm',
        plusMinus: 0.05,
      },
    },
  ],
  unopened: true,
});
