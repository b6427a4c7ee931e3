// The plot of what books ask: a dash a book that parts them in black and white, the line of the build's own book drawn through.

import { describe, expect, it } from 'vitest';
import { askedPlot, type AskedLine } from '#drawing/plot/asked-plot.ts';

const LINES: readonly AskedLine[] = ['A', 'B', 'C', 'D', 'E', 'F'].map((name, i) => ({
  name,
  points: [
    [50, 1 + i],
    [250, null],
    [1000, 9 + i],
  ],
}));

describe('the plot of what books ask', () => {
  it.each(['A', 'D', 'F'])(
    'should draw only the line of the own book through, each other dashed: %s',
    (own) => {
      const { lines } = askedPlot(LINES, { rms: 272, mm: 4.83 }, own);
      expect(lines.filter(({ dash }) => dash === '').map(({ name }) => name)).toEqual([own]);
      expect(new Set(lines.map(({ dash }) => dash)).size).toBe(LINES.length);
    },
  );

  it('should break a line where a book has no figure, and keep names apart', () => {
    const { lines } = askedPlot(LINES, { rms: 272, mm: 4.83 }, 'A');
    for (const { path } of lines) expect(path.match(/M/g)).toHaveLength(2);
    const heights = lines.map(({ label }) => label[1]).sort((a, b) => a - b);
    heights.slice(1).forEach((height, i) => expect(height - heights[i]!).toBeGreaterThanOrEqual(14));
  });

  it('should set no point where nothing is built or the voltage lies outside', () => {
    expect(askedPlot(LINES, { rms: 272, mm: null }, 'A').point).toBeNull();
    expect(askedPlot(LINES, { rms: 2000, mm: 4 }, 'A').point).toBeNull();
    expect(askedPlot(LINES, { rms: 272, mm: 4 }, 'A').point).not.toBeNull();
  });
});
