// Copper of windings against the wire tables, and rows against arithmetic.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { copperReport } from '#judge/study/copper.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';

const lesson = JSON.parse(
  readFileSync(new URL('../../lesson-margin.json', import.meta.url), 'utf8'),
) as DesignFile;

function reportOf(doc: DesignFile) {
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
  return copperReport(read.design, judge(read.design).verdict.fit);
}

/** A round tube of 10 mm, and of the primary only the conductor given. */
const withWire = (doc: DesignFile, conductor: string): DesignFile =>
  [
    ['windings[0].wire.overallDiameter', undefined],
    ['windings[0].wire.conductor', conductor],
    ['windings[0].wire.grade', 1],
    ['former.tube', { shape: 'round', width: '10 mm', depth: '10 mm' }],
  ].reduce((file, [path, value]) => editDesign(file, path as string, value), doc);

describe('copper of a winding', () => {
  // National Bureau of Standards, "Copper Wire Tables", Handbook 100, 1966: ohm per 1000 ft at 20 degC by diameter in mils,
  // as public transcriptions of the table carry it (secondary)
  it.each([
    ['gauge 20', 31.961, 10.15],
    ['gauge 24', 20.1, 25.67],
    ['gauge 28', 12.641, 64.9],
    ['gauge 30', 10.025, 103.2],
  ])('should have the resistance of the wire tables: %s', (_, mils, ohmsPer1000ft) => {
    const { windings } = reportOf(withWire(lesson, `${((mils * 25.4) / 1000).toFixed(6)} mm`));
    const { ohmsCold, length } = windings[0]!;
    expect(Math.abs((ohmsCold! / length) * 304.8 - ohmsPer1000ft) / ohmsPer1000ft).toBeLessThan(0.004);
  });

  it('should wind the mean turn round the tube', () => {
    const { windings } = reportOf(withWire(lesson, '0.2 mm'));
    const { meanTurn, meanTurnFrom, turns, length, weight } = windings[0]!;
    expect(meanTurnFrom).toBe('tube');
    // the first layer lies on the tube: its mean turn is longer than round the tube and no longer than 1 mm further out
    expect(meanTurn).toBeGreaterThan(Math.PI * 10);
    expect(meanTurn).toBeLessThan(Math.PI * 12);
    expect(length).toBeCloseTo((turns * meanTurn) / 1000, 5);
    // 0.2 mm: 0.0314159 mm2, 8.89 g/cm3
    expect(weight).toBeCloseTo(Math.PI * 0.01 * length * 8.89, 5);
  });

  it('should be larger by 0.393 % a kelvin when it is hot, and unknown where no temperature is stated', () => {
    const hot = reportOf(
      editDesign(withWire(lesson, '0.2 mm'), 'surroundings.hottestInsulation', '100 degC'),
    );
    const { ohmsHot, ohmsCold } = hot.windings[0]!;
    expect(ohmsHot! / ohmsCold!).toBeCloseTo(1 + 0.00393 * 80, 9);
    const cold = reportOf(
      editDesign(withWire(lesson, '0.2 mm'), 'surroundings.hottestInsulation', 'unknown'),
    );
    expect(cold.windings[0]!.ohmsHot).toBeNull();
  });

  it('should say where the next turn starts a row', () => {
    const full = reportOf(lesson).rows[0]!;
    const filled = editDesign(lesson, `layers[${full.layer}].turns`, full.turnsPerRow * full.rows);
    expect(reportOf(filled).rows[0]).toMatchObject({ isFull: true, spare: 0, lastRow: full.turnsPerRow });
    const more = editDesign(lesson, `layers[${full.layer}].turns`, full.turnsPerRow * full.rows + 1);
    expect(reportOf(more).rows[0]).toMatchObject({ rows: full.rows + 1, lastRow: 1 });
  });
});
