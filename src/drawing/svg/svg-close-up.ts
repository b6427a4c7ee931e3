// A weak spot seen close: a window on the section round its path, at a scale of its own.

import { guessedWidth, type Paper } from '#drawing/paper/paper.ts';
import { pathAndFlagMarks, groundMarks } from '#drawing/marks/section-marks.ts';
import { ALL_STRONG } from '#drawing/marks/path-marks.ts';
import { place } from '#drawing/paper/paper.ts';
import { flagPlaces } from '#drawing/scene/flag-places.ts';
import type { Box } from '#drawing/scene/outline.ts';
import { palette, type ThemeName } from '#drawing/scene/palette.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { element } from './svg-element.ts';
import { svgMarks } from './svg-marks.ts';
import { svgPage } from './svg.ts';

export interface CloseUpOptions {
  readonly theme: ThemeName;
  readonly width: number;
  readonly height: number;
  readonly prefix: string;
  readonly label: string;
}

/** Free space round the path, and the least that is shown, mm. */
const ROUND_MM = 0.8;
const LEAST_MM = 3;
/** Pixels that words keep from the edge. */
const EDGE = 6;

export const closeUp = (scene: Scene, at: readonly [number, number], options: CloseUpOptions): string =>
  windowOn(scene, windowRound(scene, at, options.width / options.height), options);

/** The section through this window, which has the shape of the picture. */
export function windowOn(scene: Scene, window: Box, options: CloseUpOptions): string {
  const { width, height, prefix } = options;
  const scale = width / (window.x1 - window.x0);
  const paper: Paper = {
    theme: palette[options.theme],
    view: { scale, stretch: 1, left: -window.x0 * scale, base: window.y1 * scale },
    bounds: { left: 0, top: 0, right: width, bottom: height },
    room: { left: EDGE, top: EDGE, right: width - EDGE, bottom: height - EDGE },
    density: null,
    printed: true,
    measure: guessedWidth,
  };
  const near = within(scene, window);
  const flags = flagPlaces(near.flags, (spot) => place(paper, spot));
  const marks = [
    ...groundMarks(near, paper, false),
    ...pathAndFlagMarks(near, paper, flags, { told: ALL_STRONG, picked: null }),
  ];
  const size = { width, height, viewBox: `0 0 ${width} ${height}`, 'aria-label': options.label };
  const ground = element('rect', { width, height, fill: paper.theme.sheet });
  return svgPage(size, ground + svgMarks(marks, prefix));
}

/** Round the path where there is one, else round the flag; never smaller than can be read. */
function windowRound(scene: Scene, at: readonly [number, number], ratio: number): Box {
  const points = scene.path === null ? [at] : [at, ...scene.path.legs.flatMap(({ from, to }) => [from, to])];
  const shortfall = scene.path?.shortfall?.isPlace === true ? [scene.path.shortfall.to] : [];
  const [xs, ys] = [0, 1].map((axis) => [...points, ...shortfall].map((point) => point[axis as 0 | 1]));
  const [x0, x1] = [Math.min(...(xs ?? [])), Math.max(...(xs ?? []))];
  const [y0, y1] = [Math.min(...(ys ?? [])), Math.max(...(ys ?? []))];
  const width = Math.max(x1 - x0 + 2 * ROUND_MM, (y1 - y0 + 2 * ROUND_MM) * ratio, LEAST_MM);
  const [cx, cy] = [(x0 + x1) / 2, (y0 + y1) / 2];
  return { x0: cx - width / 2, x1: cx + width / 2, y0: cy - width / ratio / 2, y1: cy + width / ratio / 2 };
}

/** Only the path that it is about; the paper leaves out solids and turns beyond its edges by itself. */
function within(scene: Scene, { x0, x1, y0, y1 }: Box): Scene {
  const isIn = ([x, y]: readonly [number, number]): boolean => x0 <= x && x <= x1 && y0 <= y && y <= y1;
  return {
    ...scene,
    letters: scene.letters.filter(({ at }) => isIn(at)),
    flags: scene.flags.filter(({ here, at }) => here && isIn(at)),
    notes: [],
    unknowns: [],
    otherPaths: [],
  };
}
