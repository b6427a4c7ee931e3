// The picture of a field: smooth colour that reads in grey, lines of equal potential, numbered gaps, in every theme.

import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';

import { fieldSvg, gapSvg } from '#drawing/field/field-svg.ts';
import { flagged } from '#drawing/field/whole-marks.ts';
import { rampColor, stepOf, strengthAt, STEPS } from '#drawing/field/ramp.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { equipotentials } from '#field/read/equipotentials.ts';
import type { Raster } from '#field/read/raster.ts';
import { finished } from '#field/solve/finished.ts';
import { COARSE, fieldOf } from '#judge/field/field-of.ts';
import { fieldPicture, type FieldPicture } from '#judge/field/field-picture.ts';
import type { FieldGap } from '#judge/field/field-report.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { study } from '#judge/study.ts';
import { readDesign } from '#model/read/read-design.ts';

const look = { width: 800, prefix: 'f-', heading: null, says: '', lines: true, picked: 0 } as const;

describe('the picture of a field', () => {
  let picture: FieldPicture;
  let scene: Scene;
  beforeAll(() => {
    const json: unknown = JSON.parse(readFileSync('test/lesson-margin.json', 'utf8'));
    const read = readDesign(json, knownIds);
    if (read.kind === 'bad') throw new Error('bad lesson');
    const studied = study(read.design);
    picture = fieldPicture(finished(fieldOf(read.design, studied, COARSE)));
    scene = sceneOf(read.design, studied, 'plain')!;
  }, 60_000);

  it('should hold colour, lines, flags and a scale, without a figure that is none', () => {
    for (const theme of ['light', 'dark', 'paper', 'print'] as const) {
      const svg = fieldSvg(scene, picture, { ...look, theme });
      expect(svg.startsWith('<svg')).toBe(true);
      expect(svg).toContain(rampColor(theme, 5));
      expect(svg).toContain('kV/mm');
      expect(svg).toMatch(/>\d+ V</);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    }
    const bare = fieldSvg(scene, picture, { ...look, theme: 'light', lines: false });
    expect(bare.length).toBeLessThan(fieldSvg(scene, picture, { ...look, theme: 'light' }).length);
  });

  it('should show the first gap close, and nothing where there is none', () => {
    expect(gapSvg(scene, picture, 0, { ...look, theme: 'light' })).toContain('gap 1');
    expect(gapSvg(scene, picture, 99, { ...look, theme: 'light' })).toBe('');
    expect(fieldSvg(scene, { ...picture, whole: null }, { ...look, theme: 'light' })).toBe('');
  });

  it('should flag the first of gaps at one place, or the picked one', () => {
    const at = (x: number): FieldGap => ({ ...picture.report.gaps[0]!, at: [x, 1] });
    const paper = {
      view: { scale: 50, stretch: 1, left: 0, base: 200 },
      room: { left: 0, top: 0, right: 900, bottom: 400 },
    };
    const gaps = [at(1), at(1.1), at(5), at(1.05)];
    expect(flagged(gaps, paper, null)).toEqual([0, 2]);
    expect(flagged(gaps, paper, 3)).toEqual([2, 3]);
    expect(flagged([...gaps, ...Array.from({ length: 20 }, (_, i) => at(6 + i))], paper, 0)).toHaveLength(7);
  });

  it('should tell strength in metal from strength elsewhere', () => {
    const { strength, volts } = picture.whole!.raster;
    expect(strength.some((value) => value === -1)).toBe(true);
    expect(strength.some((value) => value > 0)).toBe(true);
    expect(volts.every(Number.isFinite)).toBe(true);
  });
});

describe('the colours of field strength', () => {
  const lightness = (color: string): number => {
    const [r, g, b] = [1, 3, 5].map((i) => parseInt(color.slice(i, i + 2), 16)) as [number, number, number];
    return 0.299 * r + 0.587 * g + 0.114 * b;
  };
  it('should only darken on light sheets and only lighten on the dark one', () => {
    for (const theme of ['light', 'dark', 'paper', 'print'] as const) {
      const steps = Array.from({ length: STEPS }, (_, i) => lightness(rampColor(theme, i)));
      const sign = theme === 'dark' ? 1 : -1;
      steps.slice(1).forEach((value, i) => expect(sign * (value - steps[i]!)).toBeGreaterThan(0));
    }
  });
  it('should put every strength on the step that begins at or under it', () => {
    for (const strength of [0, 1, 10, 250, 999, 1000, 5000]) {
      const step = stepOf(strength, 1000);
      expect(strengthAt(step, 1000)).toBeLessThanOrEqual(strength + 1e-9);
      if (step < STEPS - 1) expect(strengthAt(step + 1, 1000)).toBeGreaterThan(strength);
    }
  });
});

describe('lines of equal potential', () => {
  it('should run straight across a field that is even, and round one that rises to a point', () => {
    const made = (of: (x: number, y: number) => number): Raster => {
      const volts = Float32Array.from({ length: 400 }, (_, i) =>
        of((i % 20) + 0.5, Math.floor(i / 20) + 0.5),
      );
      const strength = new Float32Array(400);
      return { x0: 0, y0: 0, x1: 20, y1: 20, step: 1, columns: 20, rows: 20, volts, strength };
    };
    const [even] = equipotentials(
      made((x) => x),
      [7.2],
    );
    expect(even!.runs).toHaveLength(1);
    even!.runs[0]!.forEach((value, i) => i % 2 === 0 && expect(value).toBeCloseTo(7.2, 5));
    const [ring] = equipotentials(
      made((x, y) => Math.hypot(x - 10, y - 10)),
      [6],
    );
    expect(ring!.runs).toHaveLength(1);
    const run = ring!.runs[0]!;
    expect(run.slice(0, 2)).toEqual(run.slice(-2));
    for (let i = 0; i < run.length; i += 2) {
      expect(Math.abs(Math.hypot(run[i]! - 10, run[i + 1]! - 10) - 6)).toBeLessThan(0.05);
    }
  });
});
