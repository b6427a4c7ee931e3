// Draws a path as a measuring staff, its missing part as a dotted ghost, punctured plies as diamonds, and its figure.

import { lengthUp } from '#words/text/number-words.ts';
import type { Point } from '#drawing/scene/outline.ts';
import { pathFigure, pathFigurePlace, type Plate } from '#drawing/scene/path-figure.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import type { StaffPath } from '#drawing/scene/staff.ts';
import { flagBody } from '#drawing/scene/flag-places.ts';
import { placesOf } from './svg-flags.ts';
import { chip, chipWidth, element, line, px, text, type View } from './svg-view.ts';

export function staff(path: StaffPath, view: View): string {
  const ink = path.short ? view.theme.pencil : view.theme.ink;
  const wide = Math.max(3, Math.min(7, view.kx * 0.09));
  const at = ([x, y]: Point): Point => [view.x(x), view.y(y)];
  const halo = path.pieces.map((piece) => line(at(piece.from), at(piece.to), view.theme.sheet, wide + 3));
  const pieces = path.pieces.map((piece) => {
    const [from, to] = [at(piece.from), at(piece.to)];
    const full = line(from, to, ink, wide);
    return piece.filled ? full : full + line(from, to, view.theme.sheet, wide - 2.4);
  });
  const ticks = path.pieces
    .filter(({ tick }) => tick)
    .map((piece) => tickAt(at(piece.from), at(piece.to), wide + 6, ink));
  const idle = path.uncounted.map(({ from, to }) =>
    line(at(from), at(to), ink, 1.3, { 'stroke-dasharray': '1.5 3' }),
  );
  const ends = path.ends.map((end) => knob(at(end), wide * 0.65, view.theme.sheet, ink));
  return [
    ...halo,
    ...pieces,
    ...ticks,
    ...idle,
    ghost(path, view, ink, wide),
    ...punctures(path, view, ink),
    ...ends,
  ].join('');
}

/** A thin line for a path of another pair. */
export function thinStaff(path: StaffPath, view: View): string {
  const ink = path.short ? view.theme.pencil : view.theme.ink;
  return path.legs
    .map(({ from, to }) =>
      line([view.x(from[0]), view.y(from[1])], [view.x(to[0]), view.y(to[1])], ink, 1.3, {
        'stroke-dasharray': '5 3',
      }),
    )
    .join('');
}

/** The figure beside the path: `4.83 of 5.6 mm`, and how much is missing at the ghost; both keep within the room. */
export function staffFigures(path: StaffPath, scene: Scene, view: View, room: Plate): string {
  if (path.legs.length === 0) return '';
  const ink = path.short ? view.theme.pencil : view.theme.ink;
  const words = pathFigure(path);
  const [x, y] = pathFigurePlace(
    path,
    scene,
    { toX: (mm) => view.x(mm), toY: (mm) => view.y(mm), room, flags: placesOf(scene, view).map(flagBody) },
    { width: chipWidth(words, SIZE), height: SIZE * 1.65 },
  );
  const filled = { fill: ink, rim: ink, ink: view.theme.sheet };
  const stackTop = view.y(Math.max(0, ...scene.layers.map(({ y1 }) => y1)));
  return chip([x, y], words, filled) + missingFigure(path, view, ink, y, room, stackTop);
}

const SIZE = 12.5;

/** How much is missing: between two projection lines above the stack, or beside the ghost where it runs outward. */
function missingFigure(
  path: StaffPath,
  view: View,
  ink: string,
  y: number,
  room: Plate,
  stackTop: number,
): string {
  if (path.ghost === null) return '';
  const words = `${lengthUp(path.ghost.missing)} short`;
  const half = chipWidth(words, SIZE) / 2 + 2;
  const look = { fill: view.theme.sheet, rim: ink, ink };
  const [from, to] = [path.ghost.from, path.ghost.to];
  const x = Math.min(room.right - half, Math.max(room.left + half, view.x(to[0])));
  const above = stackTop - 24;
  if (from[1] !== to[1] || above < room.top + 12)
    return chip([x, Math.max(y - 26, room.top + 12)], words, look);
  const [x0, x1] = [view.x(from[0]), view.x(to[0])];
  const foot = view.y(from[1]);
  const aside = x1 > x0 ? x1 + half + 6 : x1 - half - 6;
  return (
    line([x0, foot], [x0, above - 8], ink, 1) +
    line([x1, foot], [x1, above - 8], ink, 1, { 'stroke-dasharray': '8 3 2 3' }) +
    line([x0, above], [x1, above], ink, 1.3) +
    chip([Math.min(room.right - half, Math.max(room.left + half, aside)), above], words, look)
  );
}

function ghost(path: StaffPath, view: View, ink: string, wide: number): string {
  if (path.ghost === null) return '';
  const { from, to } = path.ghost;
  return line([view.x(from[0]), view.y(from[1])], [view.x(to[0]), view.y(to[1])], ink, wide - 0.5, {
    'stroke-dasharray': `${wide * 0.8} ${wide * 0.6}`,
  });
}

function punctures(path: StaffPath, view: View, ink: string): readonly string[] {
  return path.punctures.map(({ from, to, plies }) => {
    const [a, b]: readonly Point[] = [
      [view.x(from[0]), view.y(from[1])],
      [view.x(to[0]), view.y(to[1])],
    ];
    const [x, y] = [((a?.[0] ?? 0) + (b?.[0] ?? 0)) / 2, ((a?.[1] ?? 0) + (b?.[1] ?? 0)) / 2];
    const r = 5;
    const diamond = element('path', {
      d: `M${px(x - r)} ${px(y)}L${px(x)} ${px(y - r)}L${px(x + r)} ${px(y)}L${px(x)} ${px(y + r)}Z`,
      fill: view.theme.sheet,
      stroke: ink,
      'stroke-width': 1.5,
    });
    const count =
      plies > 1 ? text([x + r + 3, y + 4], `${plies}`, { size: 10.5, fill: ink, weight: 700 }) : '';
    return (
      line([view.x(from[0]), view.y(from[1])], [view.x(to[0]), view.y(to[1])], ink, 1.6) + diamond + count
    );
  });
}

/** A stroke across the staff at the end of a piece. */
function tickAt(from: Point, to: Point, length: number, ink: string): string {
  const span = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (span === 0) return '';
  const [nx, ny] = [(-(to[1] - from[1]) / span) * (length / 2), ((to[0] - from[0]) / span) * (length / 2)];
  return line([to[0] - nx, to[1] - ny], [to[0] + nx, to[1] + ny], ink, 1.3);
}

const knob = (at: Point, r: number, fill: string, stroke: string): string =>
  element('circle', { cx: at[0], cy: at[1], r: Math.max(2.5, r), fill, stroke, 'stroke-width': 1.7 });
