// The figures of a path: `4.83 of 5.6 mm` beside it, and how much is missing: as a dimension above the stack where a place
// in the chamber would do, else in a chip of its own. Both keep inside the room.

import { pathFigure, pathFigurePlace } from '#drawing/path/path-figure.ts';
import { touches, place, type Paper } from '#drawing/paper/paper.ts';
import type { Plate } from '#drawing/scene/view.ts';
import type { Scene, PathScale } from '#drawing/scene/scene.ts';
import { lengthUp } from '#words/text/number-words.ts';
import type { ChipMark, Mark, Point } from '#drawing/paper/mark.ts';
import { pathColor } from './path-marks.ts';
import { rulerPlates } from './ruler-marks.ts';
import { arrowHead, chip, chipHeight, chipWidth, line, type ChipLook } from '#drawing/paper/shapes.ts';

const ROLE = 'path';

/** `kept`: flags and grips, which the figures do not cover. */
export function figureMarks(
  path: PathScale,
  scene: Scene,
  paper: Paper,
  kept: readonly Plate[],
): readonly Mark[] {
  if (!isInSight(path, paper)) return [];
  const color = pathColor(path, paper.theme);
  const words = pathFigure(path);
  const plate = { width: chipWidth(paper, words), height: chipHeight() };
  const free = [...kept, ...rulerPlates(scene, paper)];
  const toX = (mm: number): number => place(paper, [mm, 0])[0];
  const toY = (mm: number): number => place(paper, [0, mm])[1];
  const at = pathFigurePlace(path, scene, { toX, toY, room: paper.room, kept: free }, plate);
  const figure = chip(paper, ROLE, at, words, { fill: color, rim: color, color: paper.theme.sheet });
  return [...missingMarks(path, scene, paper, [...free, plateOf(figure)], figure), figure];
}

/** Any of its legs; else a figure at the edge would speak of nothing that is seen. */
const isInSight = ({ legs }: PathScale, paper: Paper): boolean =>
  legs.some(({ from, to }) => {
    const [a, b] = [place(paper, from), place(paper, to)];
    const [left, right] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])];
    const [top, bottom] = [Math.min(a[1], b[1]), Math.max(a[1], b[1])];
    return touches({ left, right, top, bottom }, paper.room);
  });

function missingMarks(
  path: PathScale,
  scene: Scene,
  paper: Paper,
  kept: readonly Plate[],
  figure: ChipMark,
): readonly Mark[] {
  const { shortfall } = path;
  if (shortfall === null) return [];
  const color = pathColor(path, paper.theme);
  const look: ChipLook = { fill: paper.theme.sheet, rim: color, color };
  const words = `${lengthUp(shortfall.missing)} short`;
  const stackTop = Math.max(0, ...scene.layers.map(({ y1 }) => y1));
  const [foot, end] = [place(paper, shortfall.from), place(paper, shortfall.to)];
  const above = place(paper, [0, stackTop])[1] - 24;
  const way = end[0] > foot[0] ? 1 : -1;
  const half = chipWidth(paper, words) / 2 + 6;
  const plain = chip(paper, ROLE, figure.at, words, look);
  if (!shortfall.isPlace || shortfall.from[1] !== shortfall.to[1] || above < paper.room.top + 14)
    return [{ ...plain, at: freePlace(plain, around(figure, half), paper, kept) }];
  const span = (from: Point, to: Point, width: number, dash: readonly number[] = []): Mark =>
    line('missing', from, to, { color, width, dash });
  const [x0, x1] = [foot[0], end[0]];
  const beside: readonly Point[] = [
    [x1 + way * half, above],
    [x0 - way * half, above],
    [x1 + way * half, above - chipHeight() - 3],
  ];
  return [
    span([x0, foot[1]], [x0, above - 8], 1),
    span([x1, foot[1]], [x1, above - 8], 1, [8, 3, 2, 3]),
    span([x0, above], [x1, above], 1.3),
    arrowHead('missing', [x0, above], [-way, 0], color),
    arrowHead('missing', [x1, above], [way, 0], color),
    { ...plain, at: freePlace(plain, beside, paper, kept) },
  ];
}

/** Beside the figure, over and under it, and farther off where all of these are taken. */
function around({ at: [x, y], width, height }: ChipMark, half: number): readonly Point[] {
  const aside = width / 2 + half;
  return [0, 1, -1, 2, -2, 3, -3].flatMap((step): readonly Point[] => {
    const row = y + step * (height + 3);
    return step === 0
      ? [
          [x + aside, y],
          [x - aside, y],
        ]
      : [
          [x, row],
          [x + aside, row],
          [x - aside, row],
        ];
  });
}

/** The first place in the room at which nothing that is kept is covered; the first of all where there is none. */
function freePlace(mark: ChipMark, places: readonly Point[], { room }: Paper, kept: readonly Plate[]): Point {
  const [across, up] = [mark.width / 2 + 4, mark.height / 2 + 2];
  const within = places.map(([x, y]): Point => [
    Math.max(room.left + across, Math.min(room.right - across, x)),
    Math.max(room.top + up, Math.min(room.bottom - up, y)),
  ]);
  const isFree = (at: Point): boolean => !kept.some((plate) => touches(plateOf({ ...mark, at }), plate));
  return within.find(isFree) ?? within[0] ?? mark.at;
}

const plateOf = ({ at: [x, y], width, height }: ChipMark): Plate => ({
  left: x - width / 2,
  right: x + width / 2,
  top: y - height / 2,
  bottom: y + height / 2,
});
