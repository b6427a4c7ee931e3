// A plot of one figure over another: places in pixels, ticks at round values, curves that stop where there is no figure.

import { ticks } from 'd3-array';

export interface Axis {
  readonly from: number;
  readonly to: number;
}

export type Spot = readonly [x: number, y: number];

export interface Curve {
  readonly name: string;
  readonly spots: readonly Spot[];
  readonly look: 'full' | 'dashed' | 'thin';
}

export interface FigurePlot {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly ticksX: readonly PlotTick[];
  readonly ticksY: readonly PlotTick[];
  readonly curves: readonly {
    readonly name: string;
    readonly look: Curve['look'];
    readonly points: string;
    readonly end: Spot;
  }[];
}

interface PlotTick {
  readonly at: number;
  readonly words: string;
}

const SIZE = { width: 720, height: 380, left: 62, right: 600, top: 22, bottom: 330 } as const;
const TICKS = { x: 10, y: 8 } as const;

export const plotX = (axis: Axis, value: number): number =>
  SIZE.left + ((value - axis.from) / (axis.to - axis.from)) * (SIZE.right - SIZE.left);

export const plotY = (axis: Axis, value: number): number =>
  SIZE.bottom - ((value - axis.from) / (axis.to - axis.from)) * (SIZE.bottom - SIZE.top);

/** The value under a column of the plot, kept within the axis. */
export const valueAt = (axis: Axis, column: number): number =>
  Math.min(
    axis.to,
    Math.max(
      axis.from,
      axis.from + ((column - SIZE.left) / (SIZE.right - SIZE.left)) * (axis.to - axis.from),
    ),
  );

export function figurePlot(x: Axis, y: Axis, curves: readonly Curve[]): FigurePlot {
  const spot = ([a, b]: Spot): Spot => [plotX(x, a), plotY(y, b)];
  const named: number[] = [];
  return {
    ...SIZE,
    ticksX: ticks(x.from, x.to, TICKS.x).map((value) => ({ at: plotX(x, value), words: String(value) })),
    ticksY: ticks(y.from, y.to, TICKS.y).map((value) => ({ at: plotY(y, value), words: String(value) })),
    curves: curves.flatMap(({ name, spots: all, look }) => {
      const spots = all.filter(([, value]) => value >= y.from && value <= y.to);
      const last = spots.at(-1);
      if (last === undefined) return [];
      const points = spots
        .map(spot)
        .map(([column, row]) => `${column.toFixed(1)},${row.toFixed(1)}`)
        .join(' ');
      const [column, row] = spot(last);
      const free = freeRow(row, named);
      named.push(free);
      return [{ name, look, points, end: [column, free] as const }];
    }),
  };
}

/** Pixels that two names keep from each other; the later one moves up. */
const LINE = 15;

function freeRow(row: number, taken: readonly number[]): number {
  const near = taken.find((each) => Math.abs(each - row) < LINE);
  return near === undefined ? row : freeRow(near - LINE, taken);
}

/** The height of a curve at a place, on the line as it is drawn; null beyond its ends. */
export function readOff(spots: readonly Spot[], at: number): number | null {
  const i = spots.findIndex(([x]) => x >= at);
  const [upper, lower] = [spots[i], spots[i - 1]];
  if (upper === undefined) return null;
  if (upper[0] === at) return upper[1];
  if (lower === undefined) return null;
  return lower[1] + ((upper[1] - lower[1]) * (at - lower[0])) / (upper[0] - lower[0]);
}
