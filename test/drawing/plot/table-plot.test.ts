// The plot of a table: lines by the printed rows, steps where no line is drawn between rows, the point of a build where the
// judge entered the table, each line with a dash of its own.

import { describe, expect, it } from 'vitest';
import { ruleBook } from '#books/shelf.ts';
import { tableAsked, tableLines } from '#drawing/plot/table-lines.ts';
import { tablePlot } from '#drawing/plot/table-plot.ts';
import { tablePoints } from '#drawing/plot/table-points.ts';
import { judge } from '#judge/judging/judge.ts';
import { designWith } from '#test/judge/margin-build.ts';

const tableOf = (book: string, id: string) => ruleBook(book)!.tables.find(({ file }) => file.id === id)!;

const CREEPAGE = tableOf('iec-62368-1', 'creepage');

describe('the plot of a table', () => {
  it('should draw the chosen column, what is asked of reinforced, other materials and other degrees', () => {
    const lines = tableLines(CREEPAGE, 'IIIb', [2]);
    expect(lines.map(({ name }) => name)).toEqual([
      'IIIb, PD 2, reinforced',
      'IIIb, PD 2; IIIa',
      'I',
      'II',
      'PD 1',
      'PD 3',
    ]);
    // table 17, 250 V: 2.5 and twice that
    expect(lines[1]!.points).toContainEqual([250, 2.5]);
    expect(lines[0]!.points).toContainEqual([250, 5]);
    // group IIIb in degree 3 ends at 630 V
    expect(lines[5]!.points.at(-1)).toEqual([630, 10]);
  });

  it('should draw steps where a table is not read between its rows', () => {
    const [line] = tableLines(tableOf('iec-60335-1', 'creepage'), 'IIIb', [2]);
    const at250 = line!.points.filter(([at]) => at === 250).map(([, mm]) => mm);
    expect(at250).toHaveLength(2);
    expect(at250[1]).toBeGreaterThan(at250[0]!);
  });

  it('should be none of a table that holds no lengths by a voltage', () => {
    expect(tableLines(tableOf('iec-62368-1', 'mains-transient'), 'category 2', [])).toEqual([]);
    expect(tableLines(tableOf('iec-62368-1', 'bridging-width'), 'X', [])).toEqual([]);
    expect(tablePlot([], [], 250, null)).toBeNull();
  });

  it('should part its lines by dashes alone, and its window by what is looked at', () => {
    const plot = tablePlot(
      tableLines(CREEPAGE, 'IIIb', [2]),
      [],
      272,
      tableAsked(CREEPAGE, 272, 'IIIb', [2]),
    )!;
    const looks = plot.lines.map(({ dash, rank }) => `${rank} ${dash}`);
    expect(new Set(looks).size).toBe(looks.length);
    // 272 V: 2.72, up to 2.8, twice 5.6
    expect(plot.cross).toMatchObject({ at: 272, mm: 5.6 });
    for (const { path } of plot.lines) expect(path).not.toMatch(/NaN|Infinity/);
    const places = plot.lines.map(({ label }) => label[1]).sort((a, b) => a - b);
    places.slice(1).forEach((place, i) => expect(place - places[i]!).toBeGreaterThanOrEqual(14));
  });

  it('should set a build’s point where the judge entered the table, with what is missing', () => {
    // mended margins of 1 mm: 250 V rms, 5.0 mm asked
    const short = judge(
      designWith({ 'layers[0].margins.left.width': '1 mm', 'layers[2].margins.left.width': '1 mm' }),
    ).verdict;
    const [point] = tablePoints(short, CREEPAGE.file);
    expect(point).toMatchObject({ between: ['pri', 'out'], at: 250, places: [2], asked: 5 });
    const plot = tablePlot(tableLines(CREEPAGE, 'IIIb', [2]), [point!], 250, 5)!;
    expect(plot.points).toHaveLength(1);
    expect(plot.points[0]!.x).toBeCloseTo(plot.cross!.x, 6);
    if (point!.built! < 5) expect(plot.points[0]!.missingTo).toBeCloseTo(plot.cross!.y, 6);
    // the key stands under the axis, so that the drawing is narrow enough to stand beside its table
    expect(plot.points[0]!.key[1]).toBeGreaterThan(plot.box.bottom + 31);
    expect(plot.height).toBeGreaterThan(plot.points[0]!.key[1] + 5);
    expect(tablePoints(short, tableOf('iec-60335-1', 'creepage').file)).toEqual([]);
  });
});
