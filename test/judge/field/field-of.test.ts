// The field of whole demo builds: figures in the band of an independent solution, floating core, charges and cases.

import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';

import { finished } from '#field/solve/finished.ts';
import { COARSE, FINE, fieldOf, type FieldOptions, type FoundField } from '#judge/field/field-of.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judgePlain, withTurns } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { judgedByField, study, studyOf } from '#judge/study.ts';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { fieldBasis, percent } from '#words/field/field-headline.ts';

type Json = Record<string, unknown>;

const file = (name: string): Json => JSON.parse(readFileSync(`static/demos/${name}.json`, 'utf8')) as Json;

function designOf(json: Json): Design {
  const read = readDesign(json, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return read.design;
}

function found(json: Json, options: FieldOptions = COARSE): FoundField {
  const design = designOf(json);
  return finished(fieldOf(design, study(design), options));
}

const between = ({ report }: FoundField, a: string, b: string, list: 'capacitances' | 'effective') =>
  report[list].find((one) => one.between.includes(a) && one.between.includes(b))!;

describe('the field of the greenhouse timer', () => {
  let timer: FoundField;
  beforeAll(() => {
    timer = found(file('greenhouse-timer'), FINE);
  }, 120_000);

  it('should find the capacitances of an independent solution', () => {
    // finite differences on a grid of 0.01 mm with slightly other permittivities: 23.4, 14.3, 17.4 and 4.0 pF
    expect(between(timer, 'pri', 'out', 'capacitances').farads * 1e12).toBeGreaterThan(22);
    expect(between(timer, 'pri', 'out', 'capacitances').farads * 1e12).toBeLessThan(26);
    expect(between(timer, 'aux', 'out', 'capacitances').farads * 1e12).toBeGreaterThan(13);
    expect(between(timer, 'aux', 'out', 'capacitances').farads * 1e12).toBeLessThan(16);
    expect(timer.report.error).toBeLessThan(0.01);
  });

  it('should let the floating core pass the field on', () => {
    const direct = between(timer, 'pri', 'out', 'capacitances').farads;
    const [toCore, onward] = [
      between(timer, 'pri', 'core', 'capacitances').farads,
      between(timer, 'out', 'core', 'capacitances').farads,
    ];
    const effective = between(timer, 'pri', 'out', 'effective').farads;
    expect(effective).toBeGreaterThan(direct);
    expect(effective).toBeLessThan(direct + (toCore * onward) / (toCore + onward) + 1e-15);
    const [first] = timer.report.cases;
    expect(first!.core).toBeGreaterThan(0);
    expect(first!.core).toBeLessThan(first!.peak);
  });

  it('should find the first gap in the wedge between the output and the tape below', () => {
    const [gap] = timer.report.gaps;
    expect([...gap!.layers].sort()).toEqual([1, 2]);
    expect(gap!.margin).toBeGreaterThan(2);
    expect(gap!.margin).toBeLessThan(3);
    expect(gap!.margin).toBeCloseTo(gap!.holds / gap!.peak, 9);
    expect(timer.report.inceptionPeak).toBeCloseTo(gap!.margin * 560, -1);
  });

  it('should order gaps by margin and divide the whole voltage of the pair', () => {
    const { gaps, division, cases } = timer.report;
    gaps.forEach((gap, i) => expect(gap.margin).toBeGreaterThanOrEqual(gaps[i - 1]?.margin ?? 0));
    const whole = division.reduce((sum, { volts }) => sum + volts, 0);
    expect(Math.abs(whole / cases[0]!.peak - 1)).toBeLessThan(0.02);
    expect(division.some(({ what }) => what === 'air')).toBe(true);
  });
});

describe('what is said of how exact it is', () => {
  it('should hold against a mesh twice as fine, gap by gap and capacitance by capacitance', () => {
    const json = file('label-printer');
    const told = found(json, FINE);
    const better = found(json, { ...FINE, fineness: { around: 40, spacing: 2 } });
    expect(better.report.points).toBeGreaterThan(1.4 * told.report.points);
    for (const {
      between: [a, b],
      farads,
      error,
    } of told.report.capacitances) {
      expect(Math.abs(farads / between(better, a, b, 'capacitances').farads - 1)).toBeLessThan(error! + 1e-3);
    }
    expect(told.report.gaps.length).toBeGreaterThan(4);
    for (const { between: pair, points, peak, error } of told.report.gaps) {
      const view = better.views[better.cases.findIndex((one) => one.between.join() === pair.join())]!;
      const [a, b] = [points[0]!, points.at(-1)!].map(([x, y]) => view.at(x, y)!.volts) as [number, number];
      expect(error).toBeGreaterThan(0);
      expect(Math.abs(Math.abs(a - b) / peak - 1)).toBeLessThan(error! + 2e-3);
    }
    // one mesh alone cannot say
    const { report } = found(json);
    expect([report.error, report.gaps[0]!.error, report.capacitances[0]!.error]).toEqual([null, null, null]);
  }, 120_000);

  it('should name what is under a fiftieth of the largest apart from the rest', () => {
    const { report } = found(file('greenhouse-timer'), FINE);
    const [own, all] = [report.error!, Math.max(...report.capacitances.map((one) => one.error!))];
    expect(all).toBeGreaterThan(own);
    const words = fieldBasis(designOf(file('greenhouse-timer')), report).join();
    expect(words).toContain(
      `agree within ${percent(own)}, in capacitances under a fiftieth of the largest within ${percent(all)}`,
    );
  }, 120_000);
});

describe('the field of other builds', () => {
  it('should put each turn at its place where there is a converter', () => {
    const { report, drawn, cases } = found(file('garden-robot-dock'));
    expect(report.cases[0]!.byTurn).toBe(true);
    const primary = drawn.electrodes.flatMap(({ turn, owner }, i) =>
      owner === 'pri' && turn ? [{ at: turn.at, volts: cases[0]!.electrodes[i]! }] : [],
    );
    const sorted = primary.toSorted((a, b) => a.at - b.at).map(({ volts }) => volts);
    expect(new Set(sorted.map((value) => value.toFixed(3))).size).toBeGreaterThan(20);
    const falls = sorted.every((value, i) => i === 0 || Math.abs(value) <= Math.abs(sorted[i - 1]!) + 1e-9);
    expect(falls).toBe(true);
  });

  it('should hold less in thinner air', () => {
    const at = (altitude: string) => {
      const json = file('greenhouse-timer');
      return found({ ...json, surroundings: { ...(json.surroundings as Json), altitude } }).report;
    };
    const [low, high] = [at('0 m'), at('5000 m')];
    expect(high.inceptionPeak).toBeLessThan(low.inceptionPeak!);
    expect(high.capacitances[0]!.farads).toBeCloseTo(low.capacitances[0]!.farads, 18);
  });

  it('should say that one conductor is alone', () => {
    const json = file('greenhouse-timer');
    const layers = (json.layers as readonly Json[]).slice(0, 1);
    const core = { ...(json.core as Json), bond: 'pri' };
    // the core is tied to the only winding drawn: two pieces of one conductor have no field between them
    const { report, solved } = found({ ...json, layers, core });
    expect(report.none).toEqual({ kind: 'alone' });
    expect(solved).toBeNull();
    expect([report.capacitances, report.gaps, report.inceptionPeak]).toEqual([[], [], null]);
  });
});

describe('the touch current by the field', () => {
  it('should take the capacitances of the field in place of the estimate', () => {
    const design = designOf(file('garden-robot-dock'));
    const plain = study(design);
    const { report } = finished(fieldOf(design, plain, { ...FINE, fineness: COARSE.fineness }));
    const byField = studyOf(design, withTurns(judgedByField(design, report))).stress;
    expect(plain.stress.capacitances.every(({ from }) => from === 'estimate')).toBe(true);
    expect(byField.capacitances.every(({ from }) => from === 'field')).toBe(true);
    const pair = report.effective.find(({ between }) => between.join() === 'pri,out')!;
    const counted = byField.capacitances.find(({ between }) => between.join() === 'pri,out')!;
    expect(counted.farads).toBeCloseTo(pair.farads * (1 + pair.error!), 18);
    expect(byField.leakage.touch!.weighed).not.toBe(plain.stress.leakage.touch!.weighed);
  });

  it('should keep the estimate after a first look, which cannot say how far it is off', () => {
    const design = designOf(JSON.parse(readFileSync('test/lesson-margin.json', 'utf8')) as Json);
    const plain = study(design);
    const { report } = finished(fieldOf(design, plain, COARSE));
    expect(report.error).toBeNull();
    expect(judgedByField(design, report)).toEqual(judgePlain(design, new PathCache()));
  });
});

describe('the windings of a circuit in two halves', () => {
  it('should share what their circuits have between them', () => {
    // the outer half of the primary as a winding of its own, alone beyond the output
    const build = file('label-printer');
    const windings = build['windings'] as Json[];
    const layers = build['layers'] as Json[];
    const first = layers.find(({ kind }) => kind === 'winding')!;
    const primary = windings.find(({ id }) => id === first['winding'])!;
    const tape = layers.find(({ kind }) => kind === 'tape')!;
    const more = { ...primary, id: 'half' };
    const whole = found(
      {
        ...build,
        former: { ...(build['former'] as Json), height: '8 mm' },
        windings: [...windings, more],
        layers: [...layers, tape, { ...first, winding: 'half' }],
      },
      FINE,
    );
    const other = windings.find(({ circuit }) => circuit !== primary['circuit'])!;
    const { windings: parts, error } = whole.report;
    const part = (id: unknown) =>
      parts.find((one) => one.between.includes(String(id)) && one.between.includes(String(other['id'])))!
        .farads;
    const both = between(whole, String(primary['circuit']), String(other['circuit']), 'capacitances').farads;
    expect(parts).toHaveLength(3);
    expect(part('half')).toBeGreaterThan(0.1 * both);
    expect(Math.abs((part('half') + part(primary['id'])) / both - 1)).toBeLessThan(3 * error! + 1e-3);
  });

  it('should say nothing more where every circuit has one winding', () => {
    expect(found(file('label-printer'), FINE).report.windings).toEqual([]);
  });
});
