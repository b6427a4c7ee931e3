// Where discharge starts between two touching enamelled wires, against rows of published gap laws, and in a flat void; the
// voltage in each layer of a stack. In brackets the reference case. Sources: flat voids and stacks after "Partial Discharges in
// High-Voltage Insulating Systems", p. 51, eq. 3.23; the figure of a void in a thick solid is a worked example 6.7 of a textbook
// (21 kV/cm, 3.8); gap laws 15/365/0.01 and 24.22/6.08 as in test/stress/breakdown; onset at a wire 30/0.301: memory.

import { describe, expect, it } from 'vitest';

import type { FieldSection } from '#field/field-section.ts';
import { airLines } from '#field/read/air-lines.ts';
import { divisionAt } from '#field/read/division.ts';
import { FieldView } from '#field/read/field-view.ts';
import { relativeDensity } from '#stress/breakdown/air.ts';
import { AIR, gapHolds, townsend, uniformField } from '#stress/breakdown/paschen.ts';
import { coronaOnset } from '#stress/breakdown/peek.ts';
import { metres, mm } from '#units/quantity.ts';
import { box, disc, section, solved } from './draw.ts';

const ATMOSPHERE = 101_325;
const volts = (of: FieldSection) => {
  const field = solved(of, { fineness: { around: 300, spacing: 1.5 } });
  return new FieldView(field, field.states[0]!);
};

/** Least voltage across both at which a gap of the drawn air breaks down by a law; `law` of millimetres. */
function inception(of: FieldSection, law: (gap: number) => number): number {
  let least = Infinity;
  for (const line of airLines(volts(of), () => true)) {
    if (line.volts > 1e-6) least = Math.min(least, law(line.length) / line.volts);
  }
  return least;
}

describe('two enamelled wires that touch', () => {
  const wires = (enamel: number): FieldSection => {
    // thick wires: the rows take field lines and enamel to be straight
    const overall = 8 + 2 * enamel;
    return section(
      [-0.4, 0, 0.4, 0.8],
      [disc([-overall / 2, 0], 8, 0, overall, 3.5), disc([overall / 2, 0], 8, 1, overall, 3.5)],
    );
  };
  it.each([
    // enamel of each wire, mm; V peak by Townsend's form and by 24.22/6.08 floored at 327 V, straight field lines
    { enamel: 0.015, byTownsend: 493.99, byRoot: 462.27 },
    { enamel: 0.02, byTownsend: 545.73, byRoot: 507.36 },
    { enamel: 0.03, byTownsend: 641.01, byRoot: 597.51 },
    { enamel: 0.04, byTownsend: 728.72, byRoot: 687.64 },
  ])(
    'should discharge where the rows for $enamel mm say (pdiv.enamel.*)',
    ({ enamel, byTownsend, byRoot }) => {
      const form = (gap: number) => townsend((ATMOSPHERE * gap) / 1000, AIR) || Infinity;
      expect(Math.abs(inception(wires(enamel), form) / byTownsend - 1)).toBeLessThan(0.01);
      const root = (gap: number) => Math.max(327, uniformField(gap / 10, 1));
      expect(Math.abs(inception(wires(enamel), root) / byRoot - 1)).toBeLessThan(0.01);
      // what the tool counts is the lower of both, and lies in the band of all rows, about 20 % either way
      const counted = inception(wires(enamel), (gap) => gapHolds(mm(gap), metres(0)));
      expect(counted).toBeLessThan(1.02 * byRoot);
      expect(counted).toBeGreaterThan(0.8 * byRoot);
    },
  );
});

describe('a flat void', () => {
  it('should discharge at (2 d / e + gap) times its own field (pd.flatvoid.1)', () => {
    // 0.05 mm of 3.3 on either side of 0.05 mm of air: 551.02 V x 1.606061 = 884.97 V
    const plates = [
      box([0, -0.1, 2, 0], 0),
      box([0, 0, 2, 0.05], null, 3.3),
      box([0, 0.1, 2, 0.15], null, 3.3),
      box([0, 0.15, 2, 0.25], 1),
    ];
    const law = (gap: number) => uniformField(gap / 10, 1);
    expect(inception(section([0, -0.1, 2, 0.25], plates), law) / 884.972997483).toBeCloseTo(1, 3);
  });

  it('should discharge at the same factor between thinner plies (pd.flatvoid.3)', () => {
    // 0.025 mm of 3.5 on either side of 0.03 mm of air: 405.68 V x 1.476190 = 598.85 V
    const plates = [
      box([0, -0.1, 2, 0], 0),
      box([0, 0, 2, 0.025], null, 3.5),
      box([0, 0.055, 2, 0.08], null, 3.5),
      box([0, 0.08, 2, 0.2], 1),
    ];
    const law = (gap: number) => uniformField(gap / 10, 1);
    expect(inception(section([0, -0.1, 2, 0.2], plates), law) / 598.854036374).toBeCloseTo(1, 3);
  });

  it('should discharge in a thick solid at the textbook figure (pd.void.textbook)', () => {
    // 21 kV/cm rms in the void: 21 / 3.8 x 0.9 + 21 x 0.1 = 7.0737 kV rms
    const plates = [box([0, -1, 20, 0], 0), box([0, 0, 20, 9], null, 3.8), box([0, 10, 20, 11], 1)];
    const law = () => 2100;
    expect(inception(section([0, -1, 20, 11], plates), law) / 7073.68421053).toBeCloseTo(1, 4);
  });
});

describe('the division of voltage', () => {
  it('should give each layer of a stack its share (field.series.1)', () => {
    // 373 V over enamel 0.0205 (3.5), air 0.01, tape 0.025 (3.3): 93.23, 159.18 and 120.59 V
    const plates = [
      box([0, -0.1, 1, 0], 1),
      box([0, 0, 1, 0.0205], null, 3.5),
      box([0, 0.0305, 1, 0.0555], null, 3.3),
      box([0, 0.0555, 1, 0.15], 0),
    ];
    const parts = divisionAt(volts(section([0, -0.1, 1, 0.15], plates)), [0.5, 0.025], [0, 1]);
    const found = parts.map((part) => part.volts * 373);
    expect(found).toHaveLength(3);
    [93.232772954, 159.177905043, 120.589322003].forEach((expected, i) =>
      expect(Math.abs(found[i]! / expected - 1)).toBeLessThan(1e-3),
    );
    expect(found.reduce((a, b) => a + b)).toBeCloseTo(373, 1);
  });
});

describe('the division of voltage without air', () => {
  it('should leave most of it to the tapes between two enamels (field.series.2)', () => {
    // 500 V over enamel 0.0205 (3.5), three tapes 0.075 (3.3), enamel: 85.03, 329.94 and 85.03 V
    const plates = [
      box([0, -0.1, 1, 0], 1),
      box([0, 0, 1, 0.0205], null, 3.5),
      box([0, 0.0205, 1, 0.0955], null, 3.3),
      box([0, 0.0955, 1, 0.116], null, 3.5),
      box([0, 0.116, 1, 0.2], 0),
    ];
    const parts = divisionAt(volts(section([0, -0.1, 1, 0.2], plates)), [0.5, 0.05], [0, 1]);
    expect(parts).toHaveLength(3);
    [85.0301659125, 329.939668175, 85.0301659125].forEach((expected, i) =>
      expect(Math.abs((parts[i]!.volts * 500) / expected - 1)).toBeLessThan(1e-3),
    );
  });
});

describe('corona at a smooth wire', () => {
  it('should begin at the figures of the rule (peek.*)', () => {
    // 30 (1 + 0.301 / sqrt(r)) kV/cm, r in cm: 0.1, 0.25, 1 and 10 mm
    const rows = [
      [0.1, 120.3],
      [0.25, 87.1107345426],
      [1, 58.5553672713],
      [10, 39.03],
    ] as const;
    for (const [radius, expected] of rows) {
      expect(coronaOnset(mm(radius), 1) / 100).toBeCloseTo(expected, 2);
    }
    expect(coronaOnset(mm(0.1), relativeDensity(metres(2000)))).toBeLessThan(coronaOnset(mm(0.1), 1));
  });
});
