// What must never lower a grade or shorten a path, but for paths over the core where the law leaves them out.

import { describe, it } from 'vitest';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PrintedPath } from '#judge/verdict/path.ts';
import { inMm } from '#units/quantity.ts';
import { copyOf, eachLead, sectionsBehind, type File } from './change-design.ts';
import { check, type Complain, eachLayer, lowered, overCore, shortened, VOLTAGE } from './check-law.ts';

const neverLower: Complain = (before, after) =>
  lowered(before, after, ({ limiting }) => !overCore(limiting?.over));

const neverWorse: Complain = (before, after) => [
  ...neverLower(before, after),
  ...shortened(before, after, false),
];

describe('never worse', () => {
  it('should hold for wider filled margins', () => {
    check(eachLayer('winding', widen), neverWorse);
  });

  it('should hold for a lower voltage', () => {
    const lower = (copy: File) => (copy.workingVoltages = [{ ...VOLTAGE, rms: '200 V', peak: '340 V' }]);
    check((file) => [copyOf(file, lower)], neverWorse);
  });

  it('should hold for a cleaner degree of pollution', () => {
    check(
      (file) => [copyOf(file, (copy) => (copy.surroundings.pollutionDegree = 2))],
      neverWorse,
      (file) => copyOf(file, (copy) => (copy.surroundings.pollutionDegree = 3)),
    );
  });

  it('should hold for a lower altitude', () => {
    check(
      (file) => [copyOf(file, (copy) => (copy.surroundings.altitude = '2000 m'))],
      neverWorse,
      (file) => copyOf(file, (copy) => (copy.surroundings.altitude = '5000 m')),
    );
  });

  it('should hold for one more ply in a former as much higher: no path is shorter', () => {
    check(eachLayer('tape', addPly), (before, after) => shortened(before, after, true));
  });

  it('should hold for covered wire in place of enamelled wire as thick', () => {
    const each = (file: File) =>
      file.windings.flatMap(({ wire }: File, at: number) =>
        wire.kind === 'enamelled' ? [copyOf(file, (copy) => cover(copy, at))] : [],
      );
    // of the covered circuit itself: between two others it no longer stands in the way as a third conductor
    check(each, (before, after) =>
      lowered(
        before,
        after,
        ({ limiting, between }) => !overCore(limiting?.over) && between.includes(after.title),
      ),
    );
  });

  it('should hold for a strong sleeve: no path from its own lead is shorter', () => {
    const sleeved = { wall: 0.4, into: 30 };
    check(
      (file) => [copyOf(file, (copy) => eachLead(copy, (lead) => (lead.sleeve = sleeved)))],
      (before, after) => shortened(before, after, true, (path) => startsOnLead(after, path)),
      (file) => copyOf(file, (copy) => eachLead(copy, (lead) => (lead.sleeve = null))),
    );
  });
});

function widen(copy: File, at: number): void {
  for (const margin of Object.values<File>(copy.layers[at].margins))
    if (margin.filled) margin.width = Number((margin.width + 0.3).toFixed(3));
}

function addPly(copy: File, at: number): void {
  copy.layers[at].plies++;
  copy.former.height = Number((copy.former.height + copy.layers[at].plyThickness).toFixed(3));
}

/** The title names the circuit. */
function cover(copy: File, at: number): void {
  copy.title = copy.windings[at].circuit;
  const { overallDiameter } = copy.windings[at].wire;
  copy.windings[at].wire = {
    kind: 'layer-insulated',
    conductor: Number((overallDiameter - 0.1).toFixed(3)),
    overallDiameter,
    insulationLayers: 3,
    approval: 'wire-annex',
  };
}

/** An end of the path lies on a lead or link, and not where that meets its own winding. */
function startsOnLead(verdict: Verdict, { section, points }: PrintedPath): boolean {
  const regions = sectionsBehind(verdict).find(({ name }) => name === section)?.regions ?? [];
  return [points[0], points.at(-1)].some((point) => {
    if (!point) return false;
    const [x, y] = point;
    const here = regions.filter(
      (r) =>
        r.kind === 'conductor' && inMm(r.x0) <= x && inMm(r.x1) >= x && inMm(r.y0) <= y && inMm(r.y1) >= y,
    );
    const on = (of: readonly string[]) => here.some((r) => r.kind === 'conductor' && of.includes(r.of));
    return on(['lead', 'link', 'screen-lead']) && !on(['winding', 'screen']);
  });
}
