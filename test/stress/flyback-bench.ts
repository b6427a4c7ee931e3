// A flyback for the tests of this room: primary P, auxiliary A on the mains side, output S.

import type { Design } from '#model/design.ts';

import { benchDesign } from './bench-design.ts';

export interface Flyback {
  readonly rated?: number;
  readonly supply?: object;
  readonly reflected?: number;
  readonly overshoot?: number;
  readonly turns?: readonly [primary: number, auxiliary: number, output: number];
  readonly outputs?: readonly object[];
  readonly more?: object;
  readonly over?: object;
}

const enamelled = { kind: 'enamelled', conductor: '0.2 mm', grade: 1 };

/** Numbers of our own: 72, 11 and 9 turns, 264 V, 100 V reflected, 60 V overshoot. */
export function flyback(from: Flyback = {}): Design {
  const [p, a, s] = from.turns ?? [72, 11, 9];
  return benchDesign({
    supply: from.supply ?? { kind: 'ac', voltage: from.rated ?? 264 },
    converter: {
      mode: 'continuous',
      switchingFrequency: '65 kHz',
      reflectedVoltage: from.reflected ?? 100,
      clampOvershoot: from.overshoot ?? 60,
      outputs: from.outputs ?? [
        { circuit: 'out', voltage: '12 V' },
        { circuit: 'aux', voltage: '15 V' },
      ],
      ...from.more,
    },
    circuits: [
      { id: 'pri', role: 'mains' },
      { id: 'aux', role: 'mains' },
      { id: 'out', role: 'touchable' },
    ],
    windings: [
      { id: 'P', circuit: 'pri', wire: enamelled },
      { id: 'A', circuit: 'aux', wire: enamelled },
      { id: 'S', circuit: 'out', wire: enamelled },
    ],
    layers: [
      { kind: 'winding', winding: 'P', turns: p },
      { kind: 'tape', material: 'polyester-tape-25', plies: 3 },
      { kind: 'winding', winding: 'A', turns: a },
      { kind: 'tape', material: 'polyester-tape-25', plies: 3 },
      { kind: 'winding', winding: 'S', turns: s },
    ],
    ...from.over,
  });
}
