// The strongest field at smooth metal within 3 % of closed forms, derived by hand beside each, and the order at which
// capacitances converge. In brackets the reference case.

import { describe, expect, it } from 'vitest';

import type { FieldSection } from '#field/field-section.ts';
import { refined } from '#field/mesh/refine.ts';
import { meshOf } from '#field/mesh/triangulate.ts';
import { FieldView } from '#field/read/field-view.ts';
import { surfaceStrength } from '#field/read/surface-strength.ts';
import { System } from '#field/solve/system.ts';
import { box, disc, section, shell, solved } from './draw.ts';

/** Per volt and millimetre, on the first electrode. */
function strongest(of: FieldSection): number {
  const field = solved(of);
  const all = surfaceStrength(field, field.states[0]!);
  return Math.max(...all.filter(({ electrode }) => electrode === 0).map(({ strength }) => strength));
}

describe('the strongest field at smooth metal', () => {
  it('should be that of coaxial cylinders (cap.coax)', () => {
    // 1 / (0.25 ln(0.55 / 0.25)) = 5.0731976
    const round = section([-0.6, -0.6, 0.6, 0.6], [disc([0, 0], 0.5, 0)], {
      background: 3,
      shell: shell(0.55, 1),
    });
    expect(Math.abs(strongest(round) / 5.07319761484 - 1)).toBeLessThan(0.03);
  });

  it('should be that within the enamel of a coaxial wire (cap.coax2)', () => {
    // (9.5456109 / (2 pi 3.5)) / 0.25 = 1.7362642
    const round = section([-0.6, -0.6, 0.6, 0.6], [disc([0, 0], 0.5, 0, 0.6, 3.5)], {
      shell: shell(0.55, 1),
    });
    expect(Math.abs(strongest(round) / 1.73626418775 - 1)).toBeLessThan(0.03);
  });

  it('should be that in the air at the enamel of a coaxial wire (cap.coax2)', () => {
    // 9.5456109 / (2 pi) / 0.3 = 5.0641038; the middle of the ring of triangles lies a little outside
    const round = section([-0.6, -0.6, 0.6, 0.6], [disc([0, 0], 0.5, 0, 0.6, 3.5)], {
      shell: shell(0.55, 1),
    });
    const field = solved(round);
    const view = new FieldView(field, field.states[0]!);
    expect(Math.abs(view.strongestInAir / 5.06410388094 - 1)).toBeLessThan(0.03);
  });

  it('should be that at the foot of a wire over a plane (field.wire.plane.exact)', () => {
    // 1 / (0.1 acosh(2.5) sqrt(0.15 / 0.35)) = 9.749336 kV/mm at 1000 V
    const wire = section([-20, -1, 20, 20], [disc([0, 0.25], 0.2, 0), box([-20, -1, 20, 0], 1)]);
    expect(Math.abs(strongest(wire) / 9.74933607067 - 1)).toBeLessThan(0.03);
  });

  it('should be that of two equal wires (field.two.wire.exact)', () => {
    // 2 r acosh(D / 2r) sqrt((D - 2r) / (D + 2r)), r = 1 mm, D = 100 mm: 9.0277 mm at the scale of a tenth
    const wires = section([-600, -600, 600, 600], [disc([-50, 0], 2, 0), disc([50, 0], 2, 1)]);
    expect(Math.abs(strongest(wires) * 9.027743 - 1)).toBeLessThan(0.03);
  });
});

describe('convergence', () => {
  it('should be of the second order on smooth metal', () => {
    const wire = section([-20, -1, 20, 20], [disc([0, 0.25], 0.2, 0), box([-20, -1, 20, 0], 1)]);
    const found = meshOf(wire, { around: 12, spacing: 1.5 });
    let { mesh } = found;
    const charges = [0, 1, 2].map((step) => {
      if (step > 0) ({ mesh } = refined(mesh, found.map));
      const system = new System(mesh, null);
      return system.electrodeCharges(system.solve(Float64Array.of(1, 0), null), 2)[0]!;
    }) as [number, number, number];
    const order = Math.log2((charges[0] - charges[1]) / (charges[1] - charges[2]));
    expect(order).toBeGreaterThan(1.7);
    expect(order).toBeLessThan(2.3);
  });
});
