import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

import type { FieldReport } from '#judge/field/field-report.ts';
import { answered, fileIn, newFolder } from '#test/cli/command.ts';

const folder = newFolder();
afterAll(() => rmSync(folder, { recursive: true }));

const LESSON = join(import.meta.dirname, '../../../lesson-margin.json');

describe('field', () => {
  it('should tell gaps and capacitances in words', async () => {
    const { code, out, err } = await answered('field', LESSON);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^Where discharge would start$/m);
    expect(out).toMatch(/^Capacitances$/m);
    expect(out).toMatch(/ pF within [\d.]+ %/);
  });

  it('should print one object with --json, the same every time', async () => {
    const first = await answered('field', '--json', LESSON);
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
    expect((await answered('field', '--json', LESSON)).out).toBe(first.out);
  });

  it('should turn a round tube about its axis, near the plane section times the mean turn', async () => {
    const plain = JSON.parse(readFileSync(LESSON, 'utf8')) as { former: object };
    const tube = { shape: 'round', width: '12 mm', depth: '12 mm' };
    const design = { ...plain, former: { ...plain.former, tube } };
    const file = fileIn(folder, 'round.json', JSON.stringify(design));
    const reportOf = async (...words: readonly string[]): Promise<FieldReport> => {
      const { code, out, err } = await answered('field', '--json', ...words);
      expect([code, err]).toEqual([0, '']);
      return JSON.parse(out) as FieldReport;
    };
    const [plane, round] = [await reportOf(file), await reportOf('--round', file)];
    expect([plane.turned, round.turned]).toEqual([false, true]);
    const big = round.capacitances.filter(({ farads }) => farads > 3e-12);
    expect(big.length).toBeGreaterThan(0);
    for (const { between, farads, perMetre } of big) {
      const same = plane.capacitances.find((one) => one.between.join() === between.join())!;
      expect(perMetre).toBeNull();
      expect(Math.abs(farads / same.farads - 1), between.join()).toBeLessThan(0.1);
    }
  });

  it('should refuse --round without a round tube, and a file that is none', async () => {
    const design = { ...(JSON.parse(readFileSync(LESSON, 'utf8')) as object) };
    const file = fileIn(folder, 'plain.json', JSON.stringify(design));
    expect(await answered('field', '--round', file)).toMatchObject({ code: 2, out: '' });
    expect(await answered('field')).toMatchObject({ code: 2, out: '' });
  });
});
