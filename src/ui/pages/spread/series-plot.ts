// Points of a series in pixels of its drawing: the limiting distance against one of the varied figures, and what is asked.

import { ticks } from 'd3-array';
import { fileLengthWords } from '#words/text/file-length.ts';
import { inUnit } from '#words/text/length-unit.ts';
import type { Answer } from '#state/judging/judged.ts';
import type { SeriesRow } from '#words/mend/series-words.ts';

const [LEFT, RIGHT, TOP, BASE] = [40, 548, 16, 220];

/** What a cell says as a number; lines without one are set by their place. */
const numberOf = (cell: string | undefined): number | null => {
  const found = /^-?\d*\.?\d+/.exec(fileLengthWords(cell ?? ''));
  return found === null ? null : Number(found[0]);
};

/** Told in the chosen unit. */
const inUnits = ({ length, required }: NonNullable<SeriesRow['limiting']>) => ({
  length: inUnit(length),
  required: inUnit(required),
});

export function seriesPlot(rows: readonly SeriesRow[], column: number) {
  const known = rows
    .flatMap(({ name, cells, verdict, limiting }, i) =>
      limiting === null || verdict === null
        ? []
        : [{ name, answer: verdict as Answer, by: numberOf(cells[column]) ?? i + 1, ...inUnits(limiting) }],
    )
    .sort((a, b) => a.by - b.by);
  const span = (values: readonly number[]): readonly [number, number] => {
    const [low, high] = [Math.min(...values), Math.max(...values)];
    const rim = Math.max((high - low) * 0.06, 1e-3);
    return values.length === 0 ? [0, 1] : [low - rim, high + rim];
  };
  const [x0, x1] = span(known.map(({ by }) => by));
  const [y0, y1] = span(known.flatMap(({ length, required }) => [length, required]));
  const x = (by: number): number => LEFT + ((by - x0) / (x1 - x0)) * (RIGHT - LEFT);
  const y = (mm: number): number => BASE - ((mm - y0) / (y1 - y0)) * (BASE - TOP);
  const run = (of: (one: (typeof known)[number]) => number): string =>
    known.map((one, i) => `${i === 0 ? 'M' : 'L'}${x(one.by)} ${y(of(one))}`).join('');
  return {
    points: known.map((one) => ({ x: x(one.by), y: y(one.length), answer: one.answer, name: one.name })),
    line: run(({ length }) => length),
    asked: run(({ required }) => required),
    ticksX: ticks(x0, x1, 7).map((tick) => ({ at: x(tick), words: String(tick) })),
    ticksY: ticks(y0, y1, 5).map((tick) => ({ at: y(tick), words: String(tick) })),
  };
}
