// What must hold for every section: made of a few random wires and plies, seeds fixed.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import type { Body, FieldSection } from '#field/field-section.ts';
import { FieldView } from '#field/read/field-view.ts';
import { at } from '#field/solve/capacitance.ts';
import { finished } from '#field/solve/finished.ts';
import { solveField } from '#field/solve/solve-field.ts';
import { mm, nm } from '#units/quantity.ts';
import { box, disc, section, solved } from './draw.ts';

const RUNS = { seed: 41, numRuns: 6 };
const SIZE = { around: 12, spacing: 2 };

interface Drawn {
  readonly wires: readonly { readonly thick: number; readonly on: number }[];
  readonly ply: number;
  readonly permittivity: number;
}

const drawn = fc.record({
  wires: fc.array(
    fc.record({ thick: fc.integer({ min: 10, max: 40 }), on: fc.integer({ min: 1, max: 2 }) }),
    {
      minLength: 2,
      maxLength: 6,
    },
  ),
  ply: fc.integer({ min: 2, max: 10 }),
  permittivity: fc.integer({ min: 15, max: 60 }).map((value) => value / 10),
});

/** A core all round, wires in a row on a ply, one more above another ply. */
function sectionOf({ wires, ply, permittivity }: Drawn, mirrored = false): FieldSection {
  const thickness = ply / 100;
  const bodies: Body[] = [];
  const electrodes = [0];
  let x = 0.3;
  for (const { thick, on } of wires) {
    const metal = thick / 100;
    electrodes.push(on);
    bodies.push(
      disc(
        [x + metal / 2 + 0.02, thickness + metal / 2 + 0.02],
        metal,
        electrodes.length - 1,
        metal + 0.04,
        3.5,
      ),
    );
    x += metal + 0.05;
  }
  const width = x + 0.3;
  electrodes.push(2);
  const top = 0.5 + 2 * thickness;
  bodies.push(disc([0.7, top + 0.15], 0.26, electrodes.length - 1, 0.3, 3.5));
  bodies.push(box([0, 0, width, thickness], null, permittivity));
  bodies.push(box([0, top - thickness, width, top], null, permittivity));
  bodies.push(box([-1, -1, width + 1, 0], 0), box([-1, top + 1, width + 1, top + 2], 0));
  bodies.push(box([-1, 0, 0, top + 1], 0), box([width, 0, width + 1, top + 1], 0));
  const frame = [-1, -1, width + 1, top + 2] as const;
  const turned = mirrored ? bodies.map((body) => mirror(body, width)) : bodies;
  return section(frame, turned, { conductors: ['core', 'one', 'two'], electrodes });
}

function mirror(body: Body, width: number): Body {
  const flip = (x: number) => nm(mm(width) - x);
  return body.shape === 'disc'
    ? { ...body, x: flip(body.x) }
    : { ...body, x0: flip(body.x1), x1: flip(body.x0) };
}

describe('laws of the field', () => {
  it('should give a symmetric matrix whose rows sum to nothing with the core in', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const { capacitance: c } = solved(sectionOf(one), { fineness: SIZE });
        for (let i = 0; i < 3; i++) {
          const row = [0, 1, 2].map((k) => at(c, i, k));
          expect(Math.abs(row.reduce((a, b) => a + b))).toBeLessThan(2e-4 * at(c, i, i));
          row.forEach((value, k) => expect(value).toBeCloseTo(at(c, k, i), 9));
          row.forEach((value, k) => expect(k === i ? value : -value).toBeGreaterThanOrEqual(0));
        }
      }),
      RUNS,
    );
  });

  it('should hold as much energy as charge times voltage says', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const of = sectionOf(one);
        const volts = Float64Array.from(of.electrodes, (conductor, i) => conductor * 100 + i);
        const { mesh, states } = solved(of, {
          states: [{ electrodes: volts, floating: [] }],
          fineness: SIZE,
          resolutions: 2,
        });
        const { potential, charges } = states[0]!;
        const { x, y, triangles, permittivity } = mesh;
        let energy = 0;
        for (let t = 0; t < triangles.length; t += 3) {
          const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
          const twice = (x[b]! - x[a]!) * (y[c]! - y[a]!) - (x[c]! - x[a]!) * (y[b]! - y[a]!);
          const [u, v] = [potential[b]! - potential[a]!, potential[c]! - potential[a]!];
          const gx = (u * (y[c]! - y[a]!) - v * (y[b]! - y[a]!)) / twice;
          const gy = (v * (x[b]! - x[a]!) - u * (x[c]! - x[a]!)) / twice;
          energy += (permittivity[t / 3]! * (gx * gx + gy * gy) * Math.abs(twice)) / 4;
        }
        const work = volts.reduce((sum, value, i) => sum + (value * charges[i]!) / 2, 0);
        expect(Math.abs(work / energy - 1)).toBeLessThan(1e-4);
      }),
      RUNS,
    );
  });

  it('should mirror the field with the build', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const [a, b] = [false, true].map((mirrored) => solved(sectionOf(one, mirrored), { fineness: SIZE }));
        for (const [i, k] of [
          [0, 1],
          [0, 2],
          [1, 2],
        ] as const) {
          const [left, right] = [at(a!.capacitance, i, k), at(b!.capacitance, i, k)];
          const may = 3 * (at(a!.off!, i, k) + at(b!.off!, i, k));
          expect(Math.abs(left - right)).toBeLessThanOrEqual(may + 0.01 * Math.abs(left));
        }
      }),
      RUNS,
    );
  });

  it('should mirror the potential at every place with the build', () => {
    fc.assert(
      fc.property(drawn, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (one, part) => {
        const [a, b] = [false, true].map((mirrored) => {
          const field = solved(sectionOf(one, mirrored), {
            states: [
              {
                electrodes: Float64Array.from([0, ...one.wires.map(({ on }) => on * 50), 100]),
                floating: [],
              },
            ],
            fineness: SIZE,
          });
          return { view: new FieldView(field, field.states[0]!), frame: field.section.frame };
        });
        const { x0, x1, y0, y1 } = a!.frame;
        const width = (x1 - x0) / 1e6 - 2;
        for (const up of [0.3, 0.5, 0.7]) {
          const y = (y0 + up * (y1 - y0)) / 1e6;
          const [left, right] = [a!.view.at(part * width, y), b!.view.at(width - part * width, y)];
          expect(Math.abs(left!.volts - right!.volts)).toBeLessThan(1.5);
        }
      }),
      RUNS,
    );
  });

  it('should give a floating conductor no charge, and a potential between those of the others', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const of = sectionOf(one);
        const volts = Float64Array.from(of.electrodes, (conductor) => (conductor === 1 ? 100 : 0));
        const { states } = solved(of, { states: [{ electrodes: volts, floating: [0] }], fineness: SIZE });
        const { charges, electrodes } = states[0]!;
        const most = Math.max(...charges.map(Math.abs));
        expect(Math.abs(charges[0]!)).toBeLessThan(1e-3 * most);
        expect(electrodes[0]).toBeGreaterThan(0);
        expect(electrodes[0]).toBeLessThan(100);
      }),
      RUNS,
    );
  });

  it('should raise the voltage across the air beside a ply of higher permittivity', () => {
    // 100 V over ply and air: the air takes 100 x 0.1 / (0.1 + 0.1 / e)
    const inAir = (permittivity: number): number => {
      const plates = [
        box([0, -0.1, 2, 0], 0),
        box([0, 0, 2, 0.1], null, permittivity),
        box([0, 0.2, 2, 0.3], 1),
      ];
      const { mesh, states } = solved(section([0, -0.1, 2, 0.3], plates));
      const face = mesh.y.findIndex((y) => Math.abs(y - 0.1) < 1e-9);
      return states[0]!.potential[face]!;
    };
    const found = [1, 2, 4, 8].map(inAir);
    found.forEach((volts, i) => expect(volts).toBeCloseTo(0.1 / (0.1 + 0.1 / 2 ** i), 4));
  });
});

describe('sections without a field', () => {
  const run = (of: FieldSection) =>
    finished(
      solveField({
        section: of,
        states: [{ electrodes: Float64Array.from(of.electrodes, (_, i) => i), floating: [] }],
        fineness: SIZE,
        resolutions: 2,
      }),
    );

  it('should say where two conductors touch, at a point too', () => {
    const at = section([0, 0, 3, 3], [disc([1, 1], 0.5, 0), disc([1.5, 1], 0.5, 1)]);
    expect(run(at)).toEqual({ kind: 'touching', between: [0, 1], x: mm(1.25), y: mm(1) });
    const box1 = section([0, 0, 3, 3], [disc([1, 1], 0.5, 0), box([0, 1.25, 3, 2], 1)]);
    expect(run(box1).kind).toBe('touching');
  });

  it('should say that one conductor is alone', () => {
    const one = section([0, 0, 3, 3], [disc([1, 1], 0.5, 0)], { conductors: ['a'], electrodes: [0] });
    expect(run(one)).toEqual({ kind: 'alone' });
  });

  it('should solve what all but touches, without a figure that is none', () => {
    // 1 nm between
    const close = section([0, 0, 3, 3], [disc([1, 1], 0.5, 0), disc([1.500001, 1], 0.5, 1)]);
    const answer = run(close);
    expect(answer.kind).toBe('solved');
    if (answer.kind !== 'solved') return;
    for (const list of [answer.capacitance.value, answer.off!.value, answer.states[0]!.potential]) {
      expect(list.every(Number.isFinite)).toBe(true);
    }
  });

  it('should stand solids without thickness and a frame without area', () => {
    const flat = section(
      [0, 0, 3, 3],
      [disc([1, 1], 0.5, 0), box([0, 2, 3, 2], null, 3), box([0, 2.5, 3, 3], 1)],
    );
    expect(run(flat).kind).toBe('solved');
    expect(run(section([0, 0, 0, 0], [disc([1, 1], 0.5, 0)])).kind).toBe('alone');
  });

  it('should tell how far it is, ever further', () => {
    const of = section([0, 0, 3, 3], [disc([1, 1], 0.5, 0), box([0, 2, 3, 3], 1)]);
    const told = [...solveField({ section: of, states: [], fineness: SIZE, resolutions: 2 })];
    expect(told.length).toBeGreaterThan(5);
    told.forEach((part, i) => expect(part).toBeGreaterThanOrEqual(told[i - 1] ?? 0));
    expect(Math.max(...told)).toBeLessThan(1);
  });
});
