// The figure that stands beside a path: its words, and where on the drawing it hides least of what is drawn.

import { lengthUnit } from '#words/text/length-unit.ts';
import { lengthDown, lengthUp } from '#words/text/number-words.ts';
import { listed, solidsCrossed } from '#words/paths/path-words.ts';
import type { Scene, PathScale } from '#drawing/scene/scene.ts';
import type { Plate } from '#drawing/scene/view.ts';

/** `4.83 of 5.6 mm`, and what the path goes through. */
export function pathFigure(path: PathScale): string {
  const crossed = solidsCrossed(path.legs);
  return `${pathLength(path)}${crossed.length === 0 ? '' : `, through ${listed(crossed)}`}`;
}

export const pathLength = ({ length, required }: PathScale): string =>
  `${lengthDown(length)}${required === null ? '' : ` of ${lengthUp(required)}`} ${lengthUnit()}`;

export interface Paper {
  readonly toX: (mm: number) => number;
  readonly toY: (mm: number) => number;
  /** What the figure keeps within. */
  readonly room: Plate;
  /** What is not to be covered: flags, grips, rulers. */
  readonly kept: readonly Plate[];
}

interface Obstacle extends Plate {
  /** How bad it is to hide, for each pixel of it. */
  readonly weight: number;
}

const WEIGHTS = { kept: 30, path: 5, letter: 5, copper: 1 } as const;
/** Pixels between the figure and the path. */
const GAP = 12;
/** Half the side of a letter's box. */
const LETTER = 10;
/** Half the width of the path scale with its ticks. */
const SCALE = 7;
/** Hidden pixels that a figure puts up with rather than stand one pixel farther from its path. */
const NEAR = 12;

/** Middle of the figure; `width` and `height` are its own. */
export function pathFigurePlace(
  path: PathScale,
  scene: Scene,
  paper: Paper,
  { width, height }: { readonly width: number; readonly height: number },
): readonly [number, number] {
  const xs = path.legs.flatMap(({ from, to }) => [paper.toX(from[0]), paper.toX(to[0])]);
  const ys = path.legs.flatMap(({ from, to }) => [paper.toY(from[1]), paper.toY(to[1])]);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const around = obstacles(path, scene, paper);
  const places = placesRound({ left, right, top, bottom }, { width, height }, paper.room);
  const costOf = ([x, y]: readonly [number, number]): number => {
    const plate = { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
    const hidden = around.reduce((sum, one) => sum + one.weight * shared(plate, one), 0);
    const aside =
      Math.max(0, left - plate.right, plate.left - right) +
      Math.max(0, top - plate.bottom, plate.top - bottom);
    return hidden + NEAR * aside;
  };
  return places.reduce((best, place) => (costOf(place) < costOf(best) ? place : best));
}

/** Above and below the path, beside it and level with it, none outside the room. */
function placesRound(
  { left, right, top, bottom }: Plate,
  { width, height }: { readonly width: number; readonly height: number },
  room: Plate,
): readonly (readonly [number, number])[] {
  const columns = [
    (left + right) / 2,
    left - width / 2 - GAP,
    right + width / 2 + GAP,
    left + width / 2,
    right - width / 2,
  ];
  const rows = [0, 1, 2, 3, 4, 5].flatMap((step) => [
    top - GAP - height / 2 - step * height,
    bottom + GAP + height / 2 + step * height,
  ]);
  const level = [(top + bottom) / 2];
  return columns.flatMap((x, i) =>
    [...rows, ...(i === 1 || i === 2 ? level : [])].map(
      (y) =>
        [
          within(x, room.left + width / 2 + 4, room.right - width / 2 - 4),
          within(y, room.top + height / 2 + 2, room.bottom - height / 2 - 2),
        ] as const,
    ),
  );
}

const within = (value: number, least: number, most: number): number => Math.max(least, Math.min(most, value));

function obstacles(path: PathScale, scene: Scene, { toX, toY, kept }: Paper): readonly Obstacle[] {
  const box = (x0: number, y0: number, x1: number, y1: number, grown: number): Plate => ({
    left: Math.min(toX(x0), toX(x1)) - grown,
    right: Math.max(toX(x0), toX(x1)) + grown,
    top: Math.min(toY(y0), toY(y1)) - grown,
    bottom: Math.max(toY(y0), toY(y1)) + grown,
  });
  const of = (weight: number, plates: readonly Plate[]): readonly Obstacle[] =>
    plates.map((plate) => ({ ...plate, weight }));
  const copper = scene.areas.filter(({ circuit }) => circuit !== null);
  const lines = [...path.legs, ...(path.shortfall?.isPlace === true ? [path.shortfall] : [])];
  return [
    ...of(WEIGHTS.kept, kept),
    ...of(
      WEIGHTS.path,
      lines.map(({ from, to }) => box(from[0], from[1], to[0], to[1], SCALE)),
    ),
    ...of(
      WEIGHTS.letter,
      scene.letters.map(({ at: [x, y] }) => box(x, y, x, y, LETTER)),
    ),
    ...of(
      WEIGHTS.copper,
      copper.map(({ bounds: { x0, y0, x1, y1 } }) => box(x0, y0, x1, y1, 0)),
    ),
  ];
}

const shared = (a: Plate, b: Plate): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));
