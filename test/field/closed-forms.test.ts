// Capacitances over the permittivity of vacuum, per length, against closed forms: layers in series and side by side,
// coaxial cylinders, a wire over a plane, a square in a square (conformal map). Arithmetic beside each; in brackets the
// reference case. Sources: all are derived by hand from the form beside them, the plates also after the page "Capacitor
// Formulae"; cap.wire.plane.thin and the conformal map are from memory; turnturn.* follow the basic cell of "Self-Capacitance
// of Inductors", journal paper of July 1997, the form itself from memory.

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
  it('should find two dielectrics in series (cap.plate2.fem)', () => {
    // 4 / (0.05 / 3.3 + 0.1 / 1) = 34.7368421
    const plates = [box([0, -0.05, 4, 0], 0), box([0, 0, 4, 0.05], null, 3.3), box([0, 0.15, 4, 0.2], 1)];
    within(between(section([0, -0.05, 4, 0.2], plates)), 34.7368421053, 1e-5);
  });

  it('should find three dielectrics in series (cap.plate3)', () => {
    // 10 mm of depth x 10 mm / (0.0205 / 3.5 + 0.075 / 3.3 + 0.01) = 22.9475753 pF; here per millimetre of depth
    const plates = [
      box([0, -0.05, 10, 0], 0),
      box([0, 0, 10, 0.0205], null, 3.5),
      box([0, 0.0205, 10, 0.0955], null, 3.3),
      box([0, 0.1055, 10, 0.15], 1),
    ];
    within(between(section([0, -0.05, 10, 0.15], plates)) * 10 * 8.8541878188e-3, 22.9475752961, 1e-5);
  });

  it('should find two dielectrics side by side (cap.parallel2.fem)', () => {
    // (2 x 3.3 + 2 x 1) / 0.15 = 57.3333333
    const plates = [box([0, -0.05, 4, 0], 0), box([0, 0, 2, 0.15], null, 3.3), box([0, 0.15, 4, 0.2], 1)];
    within(between(section([0, -0.05, 4, 0.2], plates)), 57.3333333333, 1e-5);
  });

  it('should find coaxial cylinders (cap.coax)', () => {
    // 2 pi 3 / ln(0.55 / 0.25) = 23.9068805
    const round = section([-0.6, -0.6, 0.6, 0.6], [disc([0, 0], 0.5, 0)], {
      background: 3,
      shell: shell(0.55, 1),
    });
    within(between(round), 23.9068805355, 1e-3);
  });

  it('should find a coaxial wire with enamel (cap.coax2)', () => {
    // 2 pi / (ln(0.3 / 0.25) / 3.5 + ln(0.55 / 0.3)) = 9.5456109
    const round = section([-0.6, -0.6, 0.6, 0.6], [disc([0, 0], 0.5, 0, 0.6, 3.5)], {
      shell: shell(0.55, 1),
    });
    within(between(round), 9.54561092962, 1e-3);
  });

  it('should find a wire over a plane, cut off at 20 mm (cap.wire.plane)', () => {
    // 2 pi / acosh(0.25 / 0.1) = 4.0102045
    const wire = section([-20, -1, 20, 20], [box([-20, -1, 20, 0], 1), disc([0, 0.25], 0.2, 0)]);
    within(between(wire), 4.01020447222, 2e-3);
  });

  it('should find a thin wire a metre over the ground, cut off at 10 m (cap.wire.plane.thin)', () => {
    // 2 pi / acosh(1000 / 0.5) = 0.7575534; in vacuum 6.7 pF a metre (memory), which it gives to half a unit
    const wire = section(
      [-10000, -500, 10000, 10000],
      [box([-10000, -500, 10000, 0], 1), disc([0, 1000], 1, 0)],
    );
    within(between(wire), (2 * Math.PI) / Math.acosh(2000), 5e-3);
    expect(Math.abs(between(wire) * 8.8541878128 - 6.7)).toBeLessThan(0.05);
  });

  it('should find a square in a square twice as wide (cap.square.coax)', () => {
    // 8 K(k) / K'(k) by the conformal map = 10.2340926
    const outer = [
      box([-2, -2, 2, -1], 1),
      box([-2, 1, 2, 2], 1),
      box([-2, -1, -1, 1], 1),
      box([1, -1, 2, 1], 1),
    ];
    within(between(section([-2, -2, 2, 2], [box([-0.5, -0.5, 0.5, 0.5], 0), ...outer])), 10.234092569, 2e-3);
  });

  it.each([
    // bare and over all, mm; 2 / sqrt(a a - 1) atan(sqrt((a + 1) / (a - 1)) tan(pi / 12)), a = 1 + ln(over / bare) / 3.5
    [0.2, 0.241, 6.22521698325],
    [0.3, 0.351, 7.03830202331],
    [0.1, 0.117, 7.03830202331],
  ])(
    'should find a little more than straight lines allow between two turns that touch, %f mm (turnturn.*)',
    (bare, over, expected) => {
      // the form takes straight lines within 30 degrees of the contact, a bound from below; half of the cell is drawn
      const x = over / 2;
      const turns = section(
        [-x, 0, x, x * Math.tan(Math.PI / 6)],
        [disc([-x, 0], bare, 0, over, 3.5), disc([x, 0], bare, 1, over, 3.5)],
      );
      const found = 2 * between(turns);
      expect(found).toBeGreaterThan(expected);
      expect(found).toBeLessThan(1.15 * expected);
    },
  );
});

describe('turned round an axis', () => {
  const axis = nm(-1_000_000);
  const tubes = (solids: readonly (readonly [inner: number, outer: number, permittivity: number])[]) =>
    section(
      [0, -0.5, 4, 2.5],
      [
        box([0, -0.5, 4, 0], 0),
        ...solids.map(([inner, outer, permittivity]) => box([0, inner, 4, outer], null, permittivity)),
        box([0, 2, 4, 2.5], 1),
      ],
      { axis },
    );

  it('should find coaxial cylinders', () => {
    // 2 pi 4 mm / ln(3 / 1) = 22.8768 mm
    within(between(tubes([])), (2 * Math.PI * 4) / Math.log(3), 1e-4);
  });

  it('should find coaxial cylinders with two solids and air', () => {
    // radii 1, 1.4 (5), 2 (3.3), 3 mm: 2 pi 4 / (ln(1.4) / 5 + ln(2 / 1.4) / 3.3 + ln(1.5))
    const layered = [
      [0, 0.4, 5],
      [0.4, 1, 3.3],
    ] as const;
    const expected = (2 * Math.PI * 4) / (Math.log(1.4) / 5 + Math.log(2 / 1.4) / 3.3 + Math.log(1.5));
    within(between(tubes(layered)), expected, 2e-4);
  });

  it('should divide the voltage as between cylinders, most of it inside', () => {
    // at radius r: ln(3 / r) / ln(3)
    const { mesh, states } = solved(tubes([]));
    const { potential } = states[0]!;
    mesh.y.forEach((y, i) => {
      if (y <= 0 || y >= 2) return;
      expect(Math.abs(potential[i]! - Math.log(3 / (y + 1)) / Math.log(3))).toBeLessThan(2e-3);
    });
  });

  it('should come to the plane times the way round where the axis is far away', () => {
    const far = 1000;
    const plates = [box([0, -0.5, 4, 0], 0), box([0, 2, 4, 2.5], 1)];
    const turned = section([0, -0.5, 4, 2.5], plates, { axis: nm(-far * 1e6) });
    within(between(turned), 2 * Math.PI * (far + 1) * between(section([0, -0.5, 4, 2.5], plates)), 1e-4);
  });
});
