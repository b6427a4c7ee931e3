// The figures of a path: `4.83 of 5.6 mm` beside it, and how much is missing: as a dimension above the stack where a place
// in the chamber would do, else in a chip of its own. Both keep inside the room.

import { pathFigure, pathFigurePlace } from '#drawing/scene/path-figure.ts';
import { touches } from './paper.ts';
import type { Plate } from '#drawing/scene/view.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import type { PathScale } from '#drawing/scene/path-scale.ts';
import { lengthUp } from '#words/text/number-words.ts';
import type { ChipMark, Mark, Point } from './mark.ts';
import { place, type Paper } from './paper.ts';
import { pathColor } from './path-marks.ts';
import { arrowHead, chip, chipHeight, chipWidth, line, type ChipLook } from './shapes.ts';

const ROLE = 'path';

/** `flags`: bodies that the figures do not cover. */
export function figureMarks(
  path: PathScale,
  scene: Scene,
  paper: Paper,
  flags: readonly Plate[],
): readonly Mark[] {
  if (!isInSight(path, paper)) return [];
  const color = pathColor(path, paper.theme);
  const words = pathFigure(path);
  const plate = { width: chipWidth(paper, words), height: chipHeight() };
  const at = pathFigurePlace(
    path,
    scene,
    { toX: (mm) => place(paper, [mm, 0])[0], toY: (mm) => place(paper, [0, mm])[1], room: paper.room, flags },
    plate,
  );
  const figure = chip(paper, ROLE, at, words, { fill: color, rim: color, color: paper.theme.sheet });
  return [...missingMarks(path, scene, paper, figure), figure];
}

/** Any of its legs; else a figure at the edge would speak of nothing that is seen. */
const isInSight = ({ legs }: PathScale, paper: Paper): boolean =>
  legs.some(({ from, to }) => {
    const [a, b] = [place(paper, from), place(paper, to)];
    const [left, right] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])];
    const [top, bottom] = [Math.min(a[1], b[1]), Math.max(a[1], b[1])];
    return touches({ left, right, top, bottom }, paper.room);
  });

function missingMarks(path: PathScale, scene: Scene, paper: Paper, figure: ChipMark): readonly Mark[] {
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
  if (!shortfall.isPlace || shortfall.from[1] !== shortfall.to[1] || above < paper.room.top + 14)
    return [chip(paper, ROLE, aside(figure, paper, half), words, look)];
  const span = (from: Point, to: Point, width: number, dash: readonly number[] = []): Mark =>
    line('missing', from, to, { color, width, dash });
  const [x0, x1] = [foot[0], end[0]];
  return [
    span([x0, foot[1]], [x0, above - 8], 1),
    span([x1, foot[1]], [x1, above - 8], 1, [8, 3, 2, 3]),
    span([x0, above], [x1, above], 1.3),
    arrowHead('missing', [x0, above], [-way, 0], color),
    arrowHead('missing', [x1, above], [way, 0], color),
    chip(paper, ROLE, [keptAcross(x1 + way * half, half, paper), above], words, look),
  ];
}

/** Beside the figure, on the side where the room has more of it; above or below where neither is wide enough. */
function aside(figure: ChipMark, { room }: Paper, half: number): Point {
  const [x, y] = figure.at;
  const [left, right] = [x - figure.width / 2 - half, x + figure.width / 2 + half];
  if (right + half <= room.right) return [right, y];
  if (left - half >= room.left) return [left, y];
  return [x, y - figure.height > room.top + 14 ? y - figure.height - 3 : y + figure.height + 3];
}

const keptAcross = (x: number, half: number, { room }: Paper): number =>
  Math.max(room.left + half, Math.min(room.right - half, x));
