// Capacitances against values of a general-purpose finite-element package (FreeFem++ 4.11, meshes refined until nothing
// moved), per length over the permittivity of vacuum; and against the classical handbook formula for two layers of
// round wires, which lies between aligned and staggered (memory, 15 % at worst). In brackets the reference case.

import { describe, expect, it } from 'vitest';

import type { FieldSection } from '#field/field-section.ts';
import { at } from '#field/solve/capacitance.ts';
import { box, disc, section, solved } from './draw.ts';

const DEFAULT = { around: 40, spacing: 1.1 };
const between = (of: FieldSection): number => -at(solved(of, { fineness: DEFAULT }).capacitance, 0, 1);
const within = (found: number, expected: number, part: number): void => {
  expect(Math.abs(found / expected - 1), `${found} for ${expected}`).toBeLessThan(part);
};

/** Half a pitch of two layers of bare wires, mirrored at both sides. */
const layers = (apart: number, shift: number): FieldSection =>
  section([0, -2, 0.5, apart + 2], [disc([0, 0], 0.8, 0), disc([shift, apart], 0.8, 1)]);

/** Half a pitch of two close-wound enamelled layers with a tape between, half a micrometre of air at each contact. */
function taped(tape: number): FieldSection {
  const [radius, gap] = [0.1205, 0.0005];
  const under = radius + gap;
  const upper = under + tape + under;
  return section(
    [0, -0.241, 0.121, upper + 0.241],
    [
      box([0, under, 0.121, under + tape], null, 3.3),
      disc([0, 0], 0.2, 0, 0.241, 3.5),
      disc([0, upper], 0.2, 1, 0.241, 3.5),
    ],
  );
}

describe('capacitance by finite elements', () => {
  it('should find the effective distance of two layers of bare wires (layer.deff.p1.d0.8.*)', () => {
    within(between(layers(1, 0)), 0.5 / 0.32211, 2e-3);
    within(between(layers(1, 0.5)), 0.5 / 0.34985, 2e-3);
    within(between(layers(1.2, 0)), 0.5 / 0.5336, 2e-3);
    within(between(layers(1.2, 0.5)), 0.5 / 0.54137, 2e-3);
  });

  it('should find two enamelled layers with one ply or three between (layer.enamel.tape.d0.2.*)', () => {
    within(between(taped(0.025)), 23.642105 * 0.121, 3e-3);
    within(between(taped(0.075)), 16.670795 * 0.121, 3e-3);
  });

  it('should find two foils with the fringe at their ends (cap.foil.pair.fringe)', () => {
    const foils = [box([-2, -0.06, 2, -0.05], 0), box([-2, 0.05, 2, 0.06], 1)];
    within(between(section([-20, -20, 20, 20], foils)), 42.2007, 5e-3);
  });

  it('should stay within 15 % of the handbook formula for layers', () => {
    // D - 1.15 d + 0.26 p: 1 - 0.92 + 0.26 = 0.34 and 1.2 - 0.92 + 0.26 = 0.54
    for (const shift of [0, 0.5]) {
      within(between(layers(1, shift)), 0.5 / 0.34, 0.15);
      within(between(layers(1.2, shift)), 0.5 / 0.54, 0.15);
    }
  });

  it('should err less than it says', () => {
    const truth = 16.670795 * 0.121;
    for (const around of [12, 24, 48]) {
      const { capacitance, off } = solved(taped(0.075), { fineness: { around, spacing: 1.2 } });
      const wrong = Math.abs(-at(capacitance, 0, 1) - truth);
      // the reference itself holds within 0.1 %
      expect(wrong, `${around} points`).toBeLessThan(3 * at(off!, 0, 1) + 1e-3 * truth);
    }
  });
});
