// A path as a measuring scale: millimetres filled and hollow in turn, a tick at each, punctured plies as diamonds, what is
// missing as dots beyond its end. While its sentence is read only the pieces told so far are strong; the others wait, pale.

import type { Puncture, PathScale } from '#drawing/scene/scene.ts';
import type { Theme } from '#drawing/scene/palette.ts';
import type { AreaMark, LineMark, Mark, Point, Stroke } from '#drawing/paper/mark.ts';
import { place, type Paper } from '#drawing/paper/paper.ts';
import { line } from '#drawing/paper/shapes.ts';

/** Legs that light up (null: all are as strong), and legs already told. */
export interface Told {
  readonly lit: readonly number[] | null;
  readonly told: readonly number[];
}

export const ALL_STRONG: Told = { lit: null, told: [] };

const ROLE = 'path';
const WAITING = 0.25;

export const pathColor = ({ short }: Pick<PathScale, 'short'>, theme: Theme): string =>
  short ? theme.pencil : theme.ink;

export function pathMarks(path: PathScale, paper: Paper, told: Told): readonly Mark[] {
  const { theme, view } = paper;
  const wide = Math.max(3, Math.min(7, view.scale * 0.09));
  const color = pathColor(path, theme);
  const at = (spot: Point): Point => place(paper, spot);
  const straight = (leg: number, from: Point, to: Point, stroke: Stroke): LineMark => ({
    ...line(ROLE, at(from), at(to), stroke),
    opacity: strength(told, leg),
  });
  const halo = path.pieces.map(({ from, to }) =>
    line(ROLE, at(from), at(to), { color: theme.sheet, width: wide + 3 }),
  );
  const pieces = path.pieces.flatMap(({ leg, from, to, filled }) => {
    const width = wide + (told.lit?.includes(leg) === true ? 2 : 0);
    const full = straight(leg, from, to, { color, width });
    return filled ? [full] : [full, straight(leg, from, to, { color: theme.sheet, width: width - 2.4 })];
  });
  const ticks = path.pieces.flatMap(({ leg, from, to, tick }) => {
    const mark = tick ? tickAt(at(from), at(to), wide + 6, color) : null;
    return mark === null ? [] : [{ ...mark, opacity: strength(told, leg) }];
  });
  const idle = path.uncounted.map(({ leg, from, to }) =>
    straight(leg, from, to, { color, width: 1.3, dash: [1.5, 3] }),
  );
  const shortfall =
    path.shortfall?.isPlace !== true
      ? []
      : [dots(at(path.shortfall.from), at(path.shortfall.to), color, wide)];
  const crossed = path.punctures.flatMap((puncture) => punctureMarks(puncture, at, color, theme, told));
  const ends = path.ends.map((end): Mark => ({
    kind: 'circle',
    role: ROLE,
    at: at(end),
    rx: Math.max(2.5, wide * 0.65),
    ry: Math.max(2.5, wide * 0.65),
    fill: theme.sheet,
    stroke: { color, width: 1.7 },
  }));
  return [...halo, ...pieces, ...ticks, ...idle, ...shortfall, ...crossed, ...ends];
}

/** A thin line for a path of another pair. */
export function thinPathMarks(path: PathScale, paper: Paper): readonly LineMark[] {
  if (path.legs.length === 0) return [];
  const runs = path.legs.map(({ from, to }) => [place(paper, from), place(paper, to)]);
  return [
    {
      kind: 'line',
      role: ROLE,
      runs,
      stroke: { color: pathColor(path, paper.theme), width: 1.3, dash: [5, 3] },
    },
  ];
}

const strength = ({ lit, told }: Told, leg: number): number =>
  lit === null || lit.includes(leg) || told.includes(leg) ? 1 : WAITING;

const dots = (from: Point, to: Point, color: string, wide: number): LineMark =>
  line('missing', from, to, { color, width: wide - 0.5, dash: [wide * 0.8, wide * 0.6] });

/** A stroke across the scale at the end of a piece. */
function tickAt(from: Point, to: Point, length: number, color: string): LineMark | null {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (long === 0) return null;
  const [nx, ny] = [(-(to[1] - from[1]) / long) * (length / 2), ((to[0] - from[0]) / long) * (length / 2)];
  return line(ROLE, [to[0] - nx, to[1] - ny], [to[0] + nx, to[1] + ny], { color, width: 1.3 });
}

function punctureMarks(
  { leg, from, to, plies }: Puncture,
  at: (spot: Point) => Point,
  color: string,
  theme: Theme,
  told: Told,
): readonly Mark[] {
  const [a, b] = [at(from), at(to)];
  const [x, y] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const opacity = strength(told, leg);
  const diamond: AreaMark = {
    kind: 'area',
    role: ROLE,
    loops: [diamondAt(x, y, 5)],
    fill: theme.sheet,
    stroke: { color, width: 1.5 },
    opacity,
  };
  const through = { ...line(ROLE, a, b, { color, width: 1.6 }), opacity };
  if (plies <= 1) return [through, diamond];
  const look = { size: 11, color, bold: true, align: 'left', opacity } as const;
  return [through, diamond, { kind: 'words', role: ROLE, at: [x + 8, y], words: `${plies}`, ...look }];
}

const diamondAt = (x: number, y: number, r: number): readonly Point[] => [
  [x - r, y],
  [x, y - r],
  [x + r, y],
  [x, y + r],
];
