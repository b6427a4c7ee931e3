import { describe, expect, it } from 'vitest';

import { readDesign } from '#model/read-design.ts';

import { BENCH, KNOWN } from './bench-design.ts';

const CONVERTER = {
  mode: 'continuous',
  switchingFrequency: '65 kHz',
  reflectedVoltage: '90 V',
  clampOvershoot: '60 V',
  outputs: [{ circuit: 'out', voltage: '12 V' }],
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
  ])('should name the field: %j', (converter, fault) => {
    expect(faults(converter)).toEqual([fault]);
  });

  it('should refuse no turns and half a turn', () => {
    for (const turns of [0, 1.5]) {
      const layers = [{ kind: 'winding', winding: 'P', turns }, ...BENCH.layers.slice(1)];
      expect(faults({}, { layers })).toEqual([`layers[0].turns: ${turns}`]);
    }
  });
});
