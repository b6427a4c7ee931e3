// A table of lengths as a plot on two logarithmic axes, round what is asked of it: each line with its own dash so that they
// part in black and white, the points of a build by shape, the value that is looked at as cross lines. Geometry in the
// units of the drawing.

import { heightsOf, windowRound, within } from './plot-window.ts';
import type { TableLine } from './table-lines.ts';
import type { TablePoint } from './table-points.ts';

export interface TablePlot {
  readonly width: number;
  readonly height: number;
  readonly box: typeof BOX;
  readonly lines: readonly PlottedLine[];
  readonly across: readonly Tick[];
  readonly along: readonly Tick[];
  /** At the value that is looked at, where the first line has a figure there. */
  readonly cross: { readonly x: number; readonly y: number; readonly at: number; readonly mm: number } | null;
  readonly points: readonly PlottedPoint[];
}

export interface PlottedLine {
  readonly name: string;
  readonly rank: TableLine['rank'];
  readonly path: string;
  readonly dots: readonly (readonly [x: number, y: number])[];
  readonly dash: string;
  readonly label: readonly [x: number, y: number];
}

export interface PlottedPoint extends TablePoint {
  readonly x: number;
  readonly y: number;
  /** Where what is asked lies; null where nothing is missing. */
  readonly missingTo: number | null;
  readonly letter: string;
  /** Where the key tells it. */
  readonly key: readonly [x: number, y: number];
}

interface Tick {
  readonly place: number;
  readonly says: string;
}

const BOX = { left: 44, right: 470, top: 18, bottom: 370 } as const;
const SIZE = { width: 650, height: 410 } as const;
const DASHES = ['7 3', '2 3', '10 3 2 3', '1 4', '5 2 1 2 1 2', '14 4'] as const;
const LABEL_STEP = 14;
const KEY_STEP = 18;
const MOST_TICKS = 11;
/** The value that is looked at stands in a box: no tick beside it. */
const BESIDE = { along: 26, across: 12 } as const;

/** Null: no line to draw. `at`: what is looked at, in V; `asked`: what the table asks there, mm. */
export function tablePlot(
  lines: readonly TableLine[],
  points: readonly TablePoint[],
  at: number,
  asked: number | null,
): TablePlot | null {
  const rows = lines.flatMap((line) => line.points.map(([x]) => x));
  if (rows.length < 2) return null;
  const [from, to] = windowRound([at, ...points.map((point) => point.at)], rows);
  const shown = lines.map((line) => ({ ...line, points: within(line.points, from, to) }));
  const [low, high] = heightsOf(shown, points, asked);
  const x = scale(from, to, BOX.left, BOX.right);
  const y = scale(low, high, BOX.bottom, BOX.top);
  const labels = apart(shown.map((line) => y(line.points.at(-1)?.[1] ?? low)));
  const cross = asked === null || at < from || at > to ? null : { x: x(at), y: y(asked), at, mm: asked };
  const shownPoints = points.filter(
    (point) => point.built !== null && point.built > 0 && point.at >= from && point.at <= to,
  );
  const ruled = [...new Set(rows)].filter((each) => each >= from && each <= to);
  return {
    width: SIZE.width,
    height: SIZE.height + KEY_STEP * shownPoints.length,
    box: BOX,
    lines: plottedLines(shown, x, y, labels),
    across: ticksAt(ticksIn(low, high), y, cross?.y, BESIDE.across),
    along: ticksAt(thinned(ruled), x, cross?.x, BESIDE.along),
    cross,
    points: shownPoints.map((point, i) => plottedPoint(point, i, x, y)),
  };
}

type Scale = (value: number) => number;

function plottedLines(
  lines: readonly TableLine[],
  x: Scale,
  y: Scale,
  labels: readonly number[],
): readonly PlottedLine[] {
  let dashed = 0;
  return lines.map(({ name, rank, points }, i) => ({
    name,
    rank,
    path: points.map(([a, b], k) => `${k === 0 ? 'M' : 'L'}${x(a).toFixed(1)} ${y(b).toFixed(1)}`).join(''),
    dots: rank === 'other' ? [] : points.map(([a, b]) => [x(a), y(b)] as const),
    dash: rank === 'other' ? (DASHES[dashed++ % DASHES.length] ?? '') : '',
    label: [BOX.right + 10, labels[i] ?? BOX.bottom],
  }));
}

function plottedPoint(point: TablePoint, i: number, x: Scale, y: Scale): PlottedPoint {
  const built = point.built ?? 0;
  const isShort = point.verdict !== 'meets' && point.asked !== null && point.asked > built;
  return {
    ...point,
    x: x(point.at),
    y: y(built),
    missingTo: isShort ? y(point.asked ?? 0) : null,
    letter: String.fromCharCode(65 + i),
    key: [BOX.left + 8, SIZE.height + KEY_STEP * i],
  };
}

/** Without those too near the value that is looked at. */
const ticksAt = (
  values: readonly number[],
  placeOf: Scale,
  looked: number | undefined,
  least: number,
): readonly Tick[] =>
  values
    .map((value) => ({ place: placeOf(value), says: String(value) }))
    .filter(({ place }) => looked === undefined || Math.abs(place - looked) >= least);

const scale =
  (from: number, to: number, start: number, end: number): Scale =>
  (value) =>
    start + (Math.log(value / from) / Math.log(to / from)) * (end - start);

/** 1, 1.5, 2, 3, 4, 5, 8 of every decade. */
function ticksIn(low: number, high: number): readonly number[] {
  const decades = Array.from({ length: 9 }, (_, i) => 10 ** (i - 4));
  const all = decades.flatMap((decade) =>
    [1, 1.5, 2, 3, 4, 5, 8].map((each) => Number((each * decade).toPrecision(3))),
  );
  return thinned(all.filter((each) => each >= low && each <= high));
}

const thinned = (all: readonly number[]): readonly number[] => {
  const every = Math.ceil(all.length / MOST_TICKS);
  return [...all].sort((a, b) => a - b).filter((_, i) => i % every === 0);
};

/** Heights of names that would stand on one another, moved apart, in the same order, kept inside. */
function apart(heights: readonly number[]): readonly number[] {
  const order = heights.map((height, i) => ({ height, i })).sort((a, b) => a.height - b.height);
  const placed: number[] = [];
  let next = BOX.top + 4;
  for (const { height, i } of order) {
    placed[i] = Math.max(height, next);
    next = placed[i] + LABEL_STEP;
  }
  return placed;
}
