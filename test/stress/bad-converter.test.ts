import { describe, expect, it } from 'vitest';

import { readDesign } from '#model/read/read-design.ts';

import { BENCH, KNOWN } from './bench-design.ts';

const CONVERTER = {
  mode: 'continuous',
  switchingFrequency: '65 kHz',
  reflectedVoltage: '90 V',
  clampOvershoot: '60 V',
  outputs: [{ circuit: 'out', voltage: '12 V' }],
};

const BULK = {
  lowestMains: '85 V',
  capacitance: '33 uF',
  power: '15 W',
  efficiency: 0.8,
  chargingTime: '3 ms',
};

function faults(converter: object, over: object = {}): readonly string[] {
  const read = readDesign({ ...BENCH, converter: { ...CONVERTER, ...converter }, ...over }, KNOWN);
  return read.kind === 'bad' ? read.faults.map(({ field, found }) => `${field}: ${found}`) : [];
}

describe('bad converter data', () => {
  it('should be let in when it is right', () => {
    expect(faults({})).toEqual([]);
  });

  it.each([
    [{ duty: 1.2 }, 'converter.duty: 1.2'],
    [{ duty: 1 }, 'converter.duty: 1'],
    [{ duty: -0.1 }, 'converter.duty: -0.1'],
    [{ reflectedVoltage: '-90 V' }, 'converter.reflectedVoltage: "-90 V"'],
    [{ reflectedVoltage: '90 kg' }, 'converter.reflectedVoltage: "90 kg"'],
    [{ clampOvershoot: -1 }, 'converter.clampOvershoot: -1'],
    [{ switchingFrequency: 0 }, 'converter.switchingFrequency: 0'],
    [{ switchingFrequency: 'unknown' }, 'converter.switchingFrequency: "unknown"'],
    [{ mode: 'resonant' }, 'converter.mode: "resonant"'],
    [{ outputs: [{ circuit: 'nowhere', voltage: 12 }] }, 'converter.outputs[0].circuit: "nowhere"'],
    [
      { variants: [{ name: 'v', outputs: [{ circuit: 'nowhere', voltage: 12 }] }] },
      'converter.variants[0].outputs[0].circuit: "nowhere"',
    ],
    [{ bulk: { ...BULK, efficiency: 0 } }, 'converter.bulk.efficiency: 0'],
    [{ bulk: { ...BULK, efficiency: 1.2 } }, 'converter.bulk.efficiency: 1.2'],
    [{ bulk: { ...BULK, lowestMains: '300 V' } }, 'converter.bulk.lowestMains: 300'],
    [{ bulk: { ...BULK, capacitance: 0 } }, 'converter.bulk.capacitance: 0'],
    [{ bulk: { ...BULK, capacitance: '33 ohm' } }, 'converter.bulk.capacitance: "33 ohm"'],
    [{ bulk: { ...BULK, power: '-1 W' } }, 'converter.bulk.power: "-1 W"'],
    [{ bulk: { ...BULK, chargingTime: '2 s' } }, 'converter.bulk.chargingTime: "2 s"'],
  ])('should name the field: %j', (converter, fault) => {
    expect(faults(converter)).toEqual([fault]);
  });

  it('should refuse a bulk capacitor behind a rectifier that a direct supply does not have', () => {
    const supply = { kind: 'dc', voltage: '300 V' };
    expect(faults({ bulk: BULK }, { supply })).toEqual(['converter.bulk: "dc"']);
    expect(faults({ bulk: BULK })).toEqual([]);
  });

  it('should refuse no turns and half a turn', () => {
    for (const turns of [0, 1.5]) {
      const layers = [{ kind: 'winding', winding: 'P', turns }, ...BENCH.layers.slice(1)];
      expect(faults({}, { layers })).toEqual([`layers[0].turns: ${turns}`]);
    }
  });
});
