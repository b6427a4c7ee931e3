// A table of lengths as a plot on two logarithmic axes, round what is asked of it: each line with its own dash so that they
// part in black and white, the points of a build by shape, the value that is looked at as cross lines. Geometry in the
// units of the drawing.

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
/** The window reaches so many times below and above what is looked at. */
const REACH = 4;
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
  const all = lines.flatMap((line) => line.points);
  if (all.length < 2) return null;
  const looked = [at, ...points.map((point) => point.at)].filter((value) => value > 0);
  const [first, last] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x))];
  const from = Math.min(Math.max(first, Math.min(...looked) / REACH), last / 2);
  const to = Math.max(Math.min(last, Math.max(...looked) * REACH), from * 2);
  const shown = lines.map((line) => ({ ...line, points: within(line.points, from, to) }));
  const heights = [
    ...shown.flatMap((line) => line.points.map(([, mm]) => mm)),
    ...points.flatMap((point) => [point.built ?? 0, point.asked ?? 0]),
    asked ?? 0,
  ].filter((mm) => mm > 0);
  const [low, high] = [Math.min(...heights) / 1.25, Math.max(...heights) * 1.15];
  const x = scale(from, to, BOX.left, BOX.right);
  const y = scale(low, high, BOX.bottom, BOX.top);
  const labels = apart(shown.map((line) => y(line.points.at(-1)?.[1] ?? low)));
  const cross = asked === null || at < from || at > to ? null : { x: x(at), y: y(asked), at, mm: asked };
  const free = (tick: number, place: number | undefined, least: number): boolean =>
    place === undefined || Math.abs(tick - place) >= least;
  let dashed = 0;
  const shownPoints = points.filter(
    (point) => point.built !== null && point.built > 0 && point.at >= from && point.at <= to,
  );
  return {
    width: SIZE.width,
    height: SIZE.height + KEY_STEP * shownPoints.length,
    box: BOX,
    lines: shown.map(({ name, rank, points: of }, i) => ({
      name,
      rank,
      path: of.map(([a, b], k) => `${k === 0 ? 'M' : 'L'}${x(a).toFixed(1)} ${y(b).toFixed(1)}`).join(''),
      dots: rank === 'other' ? [] : of.map(([a, b]) => [x(a), y(b)] as const),
      dash: rank === 'other' ? (DASHES[dashed++ % DASHES.length] ?? '') : '',
      label: [BOX.right + 10, labels[i] ?? BOX.bottom],
    })),
    across: ticksIn(low, high)
      .map((mm) => ({ place: y(mm), says: String(mm) }))
      .filter(({ place }) => free(place, cross?.y, BESIDE.across)),
    along: thinned([...new Set(all.map(([each]) => each))].filter((each) => each >= from && each <= to))
      .map((each) => ({ place: x(each), says: String(each) }))
      .filter(({ place }) => free(place, cross?.x, BESIDE.along)),
    cross,
    points: shownPoints.map((point, i): PlottedPoint => {
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
    }),
  };
}

const scale =
  (from: number, to: number, start: number, end: number) =>
  (value: number): number =>
    start + (Math.log(value / from) / Math.log(to / from)) * (end - start);

/** The rows inside, and where the line enters and leaves. */
function within(points: TableLine['points'], from: number, to: number): TableLine['points'] {
  const ends = [from, to].flatMap((at) => {
    const mm = valueOn(points, at);
    return mm === null || points.some(([x]) => x === at) ? [] : [[at, mm] as const];
  });
  return [...points.filter(([x]) => x >= from && x <= to), ...ends].sort((a, b) => a[0] - b[0]);
}

/** On the line as it is drawn; null beyond its ends. */
function valueOn(points: TableLine['points'], at: number): number | null {
  const i = points.findIndex(([x]) => x >= at);
  const [upper, lower] = [points[i], points[i - 1]];
  if (upper === undefined) return null;
  if (upper[0] === at) return upper[1];
  if (lower === undefined) return null;
  return lower[1] + ((upper[1] - lower[1]) * (at - lower[0])) / (upper[0] - lower[0]);
}

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
