// Paints the path as a measuring staff, what is missing as a dotted ghost, punctured plies as diamonds. While its sentence
// is read only the pieces told so far are strong; the others wait, pale.

import type { StaffPath } from '#drawing/scene/staff.ts';
import { line, letter, stroke, type Pen } from './pen.ts';
import { LETTERING } from '#drawing/scene/palette.ts';

type Point = readonly [number, number];

const WAITING = 0.25;

export function paintStaff(pen: Pen, path: StaffPath): void {
  const { ink, picture } = pen;
  const color = path.short ? picture.theme.pencil : picture.theme.ink;
  const wide = staffWidth(pen);
  const at = ([x, y]: Point): Point => [pen.x(x), pen.y(y)];
  for (const { from, to } of path.pieces) span(pen, at(from), at(to), picture.theme.sheet, wide + 3);
  for (const piece of path.pieces) {
    ink.globalAlpha = strength(pen, piece.leg);
    const [from, to] = [at(piece.from), at(piece.to)];
    const lit = picture.lit?.includes(piece.leg) === true ? 2 : 0;
    span(pen, from, to, color, wide + lit);
    if (!piece.filled) span(pen, from, to, picture.theme.sheet, wide + lit - 2.4);
  }
  for (const { from, to, tick, leg } of path.pieces) {
    ink.globalAlpha = strength(pen, leg);
    if (tick) tickAt(pen, at(from), at(to), wide + 6, color);
  }
  for (const { from, to, leg } of path.uncounted) {
    ink.globalAlpha = strength(pen, leg);
    span(pen, at(from), at(to), color, 1.3, [1.5, 3]);
  }
  ink.globalAlpha = 1;
  if (path.ghost !== null)
    span(pen, at(path.ghost.from), at(path.ghost.to), color, wide - 0.5, [wide * 0.8, wide * 0.6]);
  for (const puncture of path.punctures) diamond(pen, puncture, at(puncture.from), at(puncture.to), color);
  for (const end of path.ends) knob(pen, at(end), Math.max(2.5, wide * 0.65), color);
}

/** A thin line for a path of another pair. */
export function paintThin(pen: Pen, path: StaffPath): void {
  const color = path.short ? pen.picture.theme.pencil : pen.picture.theme.ink;
  for (const { from, to } of path.legs)
    span(pen, [pen.x(from[0]), pen.y(from[1])], [pen.x(to[0]), pen.y(to[1])], color, 1.3, [5, 3]);
}

export const staffWidth = ({ picture }: Pen): number => Math.max(3, Math.min(7, picture.view.scale * 0.09));

function strength({ picture: { lit, told } }: Pen, leg: number): number {
  return lit === null || lit.includes(leg) || told.includes(leg) ? 1 : WAITING;
}

function span(
  { ink }: Pen,
  from: Point,
  to: Point,
  color: string,
  width: number,
  dash: readonly number[] = [],
): void {
  line(ink, from[0], from[1], to[0], to[1], { color, width, dash });
}

/** A stroke across the staff at the end of a piece. */
function tickAt(pen: Pen, from: Point, to: Point, length: number, color: string): void {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (long === 0) return;
  const across: Point = [
    (-(to[1] - from[1]) / long) * (length / 2),
    ((to[0] - from[0]) / long) * (length / 2),
  ];
  span(pen, [to[0] - across[0], to[1] - across[1]], [to[0] + across[0], to[1] + across[1]], color, 1.3);
}

function diamond(
  pen: Pen,
  { plies, leg }: StaffPath['punctures'][number],
  from: Point,
  to: Point,
  color: string,
): void {
  const { ink, picture } = pen;
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const r = 5;
  ink.globalAlpha = strength(pen, leg);
  span(pen, from, to, color, 1.6);
  ink.beginPath();
  ink.moveTo(x - r, y);
  ink.lineTo(x, y - r);
  ink.lineTo(x + r, y);
  ink.lineTo(x, y + r);
  ink.closePath();
  ink.fillStyle = picture.theme.sheet;
  ink.fill();
  stroke(ink, { color, width: 1.5 });
  if (plies > 1)
    letter(ink, x + r + 3, y, `${plies}`, {
      size: 10.5,
      color,
      bold: true,
      align: 'left',
      family: LETTERING,
    });
  ink.globalAlpha = 1;
}

function knob({ ink, picture }: Pen, [x, y]: Point, radius: number, color: string): void {
  ink.beginPath();
  ink.arc(x, y, radius, 0, 2 * Math.PI);
  ink.fillStyle = picture.theme.sheet;
  ink.fill();
  stroke(ink, { color, width: 1.7 });
}
