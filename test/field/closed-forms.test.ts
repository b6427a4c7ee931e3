// Capacitances over the permittivity of vacuum, per length, against closed forms: layers in series and side by side,
// coaxial cylinders, a wire over a plane, a square in a square (conformal map). Arithmetic beside each.

import { describe, expect, it } from 'vitest';

import type { FieldSection } from '#field/field-section.ts';
import { at } from '#field/solve/capacitance.ts';
import { nm } from '#units/quantity.ts';
import { box, disc, section, shell, solved } from './draw.ts';

const between = (of: FieldSection): number => -at(solved(of).capacitance, 0, 1);
const within = (found: number, expected: number, part: number): void => {
  expect(Math.abs(found / expected - 1), `${found} for ${expected}`).toBeLessThan(part);
};

describe('closed forms of capacitance', () => {
  it('should find two dielectrics in series', () => {
    // 4 / (0.05 / 3.3 + 0.1 / 1) = 34.7368421
    const plates = [box([0, -0.05, 4, 0], 0), box([0, 0, 4, 0.05], null, 3.3), box([0, 0.15, 4, 0.2], 1)];
    within(between(section([0, -0.05, 4, 0.2], plates)), 34.7368421053, 1e-5);
  });

  it('should find three dielectrics in series', () => {
    // 10 mm of depth x 10 mm / (0.0205 / 3.5 + 0.075 / 3.3 + 0.01) = 22.9475753 pF; here per millimetre of depth
    const plates = [
      box([0, -0.05, 10, 0], 0),
      box([0, 0, 10, 0.0205], null, 3.5),
      box([0, 0.0205, 10, 0.0955], null, 3.3),
      box([0, 0.1055, 10, 0.15], 1),
    ];
    within(between(section([0, -0.05, 10, 0.15], plates)) * 10 * 8.8541878188e-3, 22.9475752961, 1e-5);
  });

  it('should find two dielectrics side by side', () => {
    // (2 x 3.3 + 2 x 1) / 0.15 = 57.3333333
    const plates = [box([0, -0.05, 4, 0], 0), box([0, 0, 2, 0.15], null, 3.3), box([0, 0.15, 4, 0.2], 1)];
    within(between(section([0, -0.05, 4, 0.2], plates)), 57.3333333333, 1e-5);
  });

  it('should find coaxial cylinders', () => {
    // 2 pi 3 / ln(0.55 / 0.25) = 23.9068805
    const round = section([-0.6, -0.6, 0.6, 0.6], [disc([0, 0], 0.5, 0)], {
      background: 3,
      shell: shell(0.55, 1),
    });
    within(between(round), 23.9068805355, 1e-3);
  });

  it('should find a coaxial wire with enamel', () => {
    // 2 pi / (ln(0.3 / 0.25) / 3.5 + ln(0.55 / 0.3)) = 9.5456109
    const round = section([-0.6, -0.6, 0.6, 0.6], [disc([0, 0], 0.5, 0, 0.6, 3.5)], {
      shell: shell(0.55, 1),
    });
    within(between(round), 9.54561092962, 1e-3);
  });

  it('should find a wire over a plane, cut off at 20 mm', () => {
    // 2 pi / acosh(0.25 / 0.1) = 4.0102045
    const wire = section([-20, -1, 20, 20], [box([-20, -1, 20, 0], 1), disc([0, 0.25], 0.2, 0)]);
    within(between(wire), 4.01020447222, 2e-3);
  });

  it('should find a square in a square twice as wide', () => {
    // 8 K(k) / K'(k) by the conformal map = 10.2340926
    const outer = [
      box([-2, -2, 2, -1], 1),
      box([-2, 1, 2, 2], 1),
      box([-2, -1, -1, 1], 1),
      box([1, -1, 2, 1], 1),
    ];
    within(between(section([-2, -2, 2, 2], [box([-0.5, -0.5, 0.5, 0.5], 0), ...outer])), 10.234092569, 2e-3);
  });

  it('should find coaxial cylinders turned round their axis', () => {
    // 2 pi 4 mm / ln(3 / 1) = 22.8768 mm; turned round y = -1
    const plates = [box([0, -0.5, 4, 0], 0), box([0, 2, 4, 2.5], 1)];
    const turned = section([0, -0.5, 4, 2.5], plates, { axis: nm(-1_000_000) });
    within(between(turned), (2 * Math.PI * 4) / Math.log(3), 1e-4);
  });
});
