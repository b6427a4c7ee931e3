// The sheets to explore: their figures are the judge's and the tables' own, held against sums done by hand.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { figurePlot, plotX, readOff, valueAt } from '#drawing/plot/figure-plot.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import type { Lesson } from '#learn/lesson/lesson-schema.ts';
import { readDesign } from '#model/read/read-design.ts';
import { exploreSheets } from '#state/learn/explore-sheets.ts';
import type { JudgeDoc } from '#state/learn/sheets/explore-sheet.ts';

const { build } = JSON.parse(readFileSync('static/lessons/margin.json', 'utf8')) as Lesson;
const sheets = exploreSheets(build);

const judgeDoc: JudgeDoc = (doc) => {
  const read = readDesign(doc, knownIds);
  return Promise.resolve(read.kind === 'bad' ? null : judge(read.design).verdict);
};

const curvesOf = (id: string, option: string) =>
  sheets.find((sheet) => sheet.id === id)!.curves(option, judgeDoc);

describe('the sheets to explore', () => {
  it('should lengthen the way by both margins and the tape: 2 m + 0.18', async () => {
    const [there, asked] = await curvesOf('margin', '3');
    for (const [margin, way] of there!.spots) expect(way).toBeCloseTo(2 * margin + 0.18, 6);
    expect(asked!.spots.map(([, y]) => y)).toEqual([5, 5]);
  });

  it('should ask for reinforced twice what basic asks, the more the higher the voltage', async () => {
    const [reinforced, basic] = await curvesOf('asked', '2');
    reinforced!.spots.forEach(([, y], i) => expect(y).toBeCloseTo(2 * basic!.spots[i]![1], 6));
    const figures = basic!.spots.map(([, y]) => y);
    expect(figures).toEqual(figures.toSorted((a, b) => a - b));
  });

  it('should climb the ladder with plies: touching, one barrier, reinforced', async () => {
    const [reached] = await curvesOf('ply', 'nothing');
    const heights = reached!.spots.map(([, y]) => y);
    expect(heights[0]).toBeLessThan(2);
    expect(heights[1]).toBe(2);
    expect(heights.at(-1)).toBeGreaterThanOrEqual(3);
  });

  it('should halve the years by ten degrees', async () => {
    const [life] = await curvesOf('life', '130');
    const at = (hot: number) => life!.spots.find(([x]) => x === hot)![1];
    expect(at(110) / at(120)).toBeCloseTo(2, 6);
    expect(at(130)).toBeCloseTo(20_000 / 8766, 6);
  });

  it('should let thin air break down sooner', async () => {
    const [low, high] = await Promise.all(['0', '5000'].map((altitude) => curvesOf('breakdown', altitude)));
    const likely = (curves: typeof low) => curves!.find(({ name }) => name === 'likely')!.spots.at(-1)![1];
    expect(likely(high)).toBeLessThan(likely(low));
  });
});

describe('a plot of one figure over another', () => {
  const axis = { from: 0, to: 10 };

  it('should read back the value that it drew, kept within the axis', () => {
    for (const value of [0, 2.5, 10]) expect(valueAt(axis, plotX(axis, value))).toBeCloseTo(value, 9);
    expect(valueAt(axis, -100)).toBe(0);
  });

  it('should read off what is drawn at a place, and nothing beyond the ends', () => {
    const spots = [
      [50, 2.4],
      [500, 5],
      [550, 5.5],
    ] as const;
    expect(readOff(spots, 500)).toBe(5);
    expect(readOff(spots, 525)).toBeCloseTo(5.25, 9);
    for (const at of [49, 551]) expect(readOff(spots, at)).toBeNull();
    expect(readOff([], 500)).toBeNull();
  });

  it('should cut off what lies beyond it, and keep names apart', () => {
    const curve = (name: string, top: number) =>
      ({
        name,
        look: 'full',
        spots: [
          [0, 1],
          [10, top],
        ],
      }) as const;
    const { curves } = figurePlot(axis, axis, [curve('a', 5), curve('b', 5.1), curve('c', 50)]);
    expect(curves[2]!.points.split(' ')).toHaveLength(1);
    expect(Math.abs(curves[0]!.end[1] - curves[1]!.end[1])).toBeGreaterThanOrEqual(15);
  });
});
