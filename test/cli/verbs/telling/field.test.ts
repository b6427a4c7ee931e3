import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

import type { FieldReport } from '#judge/field/field-report.ts';
import { bundled, fileIn, newFolder, run } from '#test/cli/command.ts';

const folder = newFolder();
const program = bundled(folder);
afterAll(() => rmSync(folder, { recursive: true }));

const LESSON = join(import.meta.dirname, '../../../lesson-margin.json');

describe('field', () => {
  it('should tell gaps and capacitances in words', () => {
    const { code, out, err } = run(program, ['field', LESSON]);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^Where discharge would start$/m);
    expect(out).toMatch(/^Capacitances$/m);
    expect(out).toMatch(/ pF within [\d.]+ %/);
  });

  it('should print one object with --json, the same every time', () => {
    const first = run(program, ['field', '--json', LESSON]);
    expect(first.code).toBe(0);
    const report = JSON.parse(first.out) as FieldReport;
    expect(report.format).toBe('layerwright-field/1');
    expect(report.section).toBe('plain');
    expect(report.capacitances[0]).toMatchObject({ between: expect.any(Array) as unknown });
    for (const { farads, perMetre, error } of report.capacitances) {
      expect(farads).toBeGreaterThan(0);
      expect(perMetre).toBeGreaterThan(0);
      expect(error).toBeLessThan(0.05);
    }
    for (const { peak, holds, margin } of report.gaps) expect(margin).toBeCloseTo(holds / peak, 9);
    expect(first.out).not.toMatch(/NaN|Infinity|null,\s*null,\s*null,\s*null/);
    expect(run(program, ['field', '--json', LESSON]).out).toBe(first.out);
  });

  it('should turn a round tube about its axis, near the plane section times the mean turn', () => {
    const plain = JSON.parse(readFileSync(LESSON, 'utf8')) as { former: object };
    const tube = { shape: 'round', width: '12 mm', depth: '12 mm' };
    const design = { ...plain, former: { ...plain.former, tube } };
    const file = fileIn(folder, 'round.json', JSON.stringify(design));
    const [plane, round] = [
      ['field', '--json', file],
      ['field', '--json', '--round', file],
    ].map((words) => {
      const { code, out, err } = run(program, words);
      expect([code, err]).toEqual([0, '']);
      return JSON.parse(out) as FieldReport;
    });
    expect([plane!.turned, round!.turned]).toEqual([false, true]);
    const big = round!.capacitances.filter(({ farads }) => farads > 3e-12);
    expect(big.length).toBeGreaterThan(0);
    for (const { between, farads, perMetre } of big) {
      const same = plane!.capacitances.find((one) => one.between.join() === between.join())!;
      expect(perMetre).toBeNull();
      expect(Math.abs(farads / same.farads - 1), between.join()).toBeLessThan(0.1);
    }
  });

  it('should refuse --round without a round tube, and a file that is none', () => {
    const design = { ...(JSON.parse(readFileSync(LESSON, 'utf8')) as object) };
    const file = fileIn(folder, 'plain.json', JSON.stringify(design));
    expect(run(program, ['field', '--round', file])).toMatchObject({ code: 2, out: '' });
    expect(run(program, ['field'])).toMatchObject({ code: 2, out: '' });
  });
});
