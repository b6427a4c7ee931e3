// Paints the figures of the path: `4.83 of 5.6 mm` beside its longest leg, how much is missing above the stack.
// Labels keep inside the drawing's room.

import { pathFigure, pathFigurePlace, type Paper } from '#drawing/scene/path-figure.ts';
import { LETTERING } from '#drawing/scene/palette.ts';
import { lengthUp } from '#words/text/number-words.ts';
import type { StaffPath } from '#drawing/scene/staff.ts';
import { chip, chipWidth, line, type Chip, type Ink, type Pen } from './pen.ts';

const SIZE = 12.5;

export function paintFigures(pen: Pen, path: StaffPath): void {
  if (!isInSight(pen, path)) return;
  const { theme } = pen.picture;
  const color = path.short ? theme.pencil : theme.ink;
  const look: Chip = { fill: color, rim: color, color: theme.sheet, size: SIZE, family: LETTERING };
  const words = pathFigure(path);
  const plate = { width: chipWidth(pen.ink, words, look), height: SIZE * 1.65 };
  const [x, y] = pathFigurePlace(path, pen.picture.scene, paperOf(pen), plate);
  chip(pen.ink, x, y, words, look);
  missing(pen, path, { ...look, fill: theme.sheet, color }, y);
}

/** Any of its legs; else a figure at the edge would speak of nothing that is seen. */
const isInSight = ({ x, y, picture: { room } }: Pen, { legs }: StaffPath): boolean =>
  legs.some(({ from, to }) => {
    const [xs, ys] = [
      [x(from[0]), x(to[0])],
      [y(from[1]), y(to[1])],
    ];
    const across = Math.max(...xs) >= room.left && Math.min(...xs) <= room.right;
    return across && Math.max(...ys) >= room.top && Math.min(...ys) <= room.bottom;
  });

const paperOf = ({ x, y, picture: { room, flags } }: Pen): Paper => ({ toX: x, toY: y, room, flags });

/** Between two projection lines above the stack, or beside the ghost where it runs outward. */
function missing(pen: Pen, { ghost }: StaffPath, look: Chip, figureY: number): void {
  if (ghost === null) return;
  const { scene, room } = pen.picture;
  const words = `${lengthUp(ghost.missing)} short`;
  const stackTop = Math.max(0, ...scene.layers.map(({ y1 }) => y1));
  const [x0, x1] = [pen.x(ghost.from[0]), pen.x(ghost.to[0])];
  const above = pen.y(stackTop) - 24;
  if (ghost.from[1] !== ghost.to[1] || above < room.top + 14) {
    chip(pen.ink, keptAcross(pen, x1, words, look), keptDown(pen, figureY - 26), words, look);
    return;
  }
  const foot = pen.y(ghost.from[1]);
  const { ink } = pen;
  line(ink, x0, foot, x0, above - 8, { color: look.rim, width: 1 });
  line(ink, x1, foot, x1, above - 8, { color: look.rim, width: 1, dash: [8, 3, 2, 3] });
  line(ink, x0, above, x1, above, { color: look.rim, width: 1.3 });
  arrow(ink, x0, above, x1 > x0 ? 1 : -1, look.rim);
  arrow(ink, x1, above, x1 > x0 ? -1 : 1, look.rim);
  const half = chipWidth(ink, words, look) / 2 + 6;
  chip(ink, keptAcross(pen, x1 > x0 ? x1 + half : x1 - half, words, look), above, words, look);
}

/** `way`: to which side it opens from its tip. */
function arrow(ink: Ink, x: number, y: number, way: 1 | -1, color: string): void {
  ink.beginPath();
  ink.moveTo(x, y);
  ink.lineTo(x + way * 7, y - 3);
  ink.lineTo(x + way * 7, y + 3);
  ink.closePath();
  ink.fillStyle = color;
  ink.fill();
}

function keptAcross({ ink, picture: { room } }: Pen, x: number, words: string, look: Chip): number {
  const half = chipWidth(ink, words, look) / 2 + 4;
  return Math.max(room.left + half, Math.min(room.right - half, x));
}

const keptDown = ({ picture: { room } }: Pen, y: number): number =>
  Math.max(room.top + 14, Math.min(room.bottom - 14, y));
