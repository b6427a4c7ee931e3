// A weak spot seen close: a window on the section round its path, at a scale of its own.

import type { Box } from '#drawing/scene/outline.ts';
import { LETTERING, palette, type ThemeName } from '#drawing/scene/palette.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { drawing } from './svg-drawing.ts';
import { patterns } from './svg-patterns.ts';
import { element, px, viewOf } from './svg-view.ts';

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

export function closeUp(scene: Scene, at: readonly [number, number], options: CloseUpOptions): string {
  const window = windowRound(scene, at, options.width / options.height);
  const k = options.width / (window.x1 - window.x0);
  const near = within(scene, window);
  const view = viewOf(scene.frame, { left: 0, top: 0, kx: k, ky: k }, palette[options.theme], options.prefix);
  const [left, top] = [view.x(window.x0), view.y(window.y1)];
  const room = {
    left: left + 6,
    top: top + 6,
    right: left + options.width - 6,
    bottom: top + options.height - 6,
  };
  const content = [patterns(view), ...drawing(near, view, room, true)].join('\n');
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: options.width,
      height: options.height,
      viewBox: `${px(left)} ${px(top)} ${options.width} ${options.height}`,
      'font-family': LETTERING,
      role: 'img',
      'aria-label': options.label,
    },
    element('rect', {
      x: left,
      y: top,
      width: options.width,
      height: options.height,
      fill: view.theme.sheet,
    }) + content,
  );
}

/** Round the path where there is one, else round the flag; never smaller than can be read. */
function windowRound(scene: Scene, at: readonly [number, number], ratio: number): Box {
  const points = scene.path === null ? [at] : [at, ...scene.path.legs.flatMap(({ from, to }) => [from, to])];
  const ghost = scene.path?.ghost ? [scene.path.ghost.to] : [];
  const [xs, ys] = [0, 1].map((axis) => [...points, ...ghost].map((point) => point[axis as 0 | 1]));
  const [x0, x1] = [Math.min(...(xs ?? [])), Math.max(...(xs ?? []))];
  const [y0, y1] = [Math.min(...(ys ?? [])), Math.max(...(ys ?? []))];
  const width = Math.max(x1 - x0 + 2 * ROUND_MM, (y1 - y0 + 2 * ROUND_MM) * ratio, LEAST_MM);
  const [cx, cy] = [(x0 + x1) / 2, (y0 + y1) / 2];
  return { x0: cx - width / 2, x1: cx + width / 2, y0: cy - width / ratio / 2, y1: cy + width / ratio / 2 };
}

/** What touches the window; the rest would only make the file larger. */
function within(scene: Scene, window: Box): Scene {
  const touches = (box: Box): boolean =>
    box.x0 <= window.x1 && box.x1 >= window.x0 && box.y0 <= window.y1 && box.y1 >= window.y0;
  const round = (x: number, y: number, r: number): Box => ({ x0: x - r, x1: x + r, y0: y - r, y1: y + r });
  return {
    ...scene,
    areas: scene.areas.filter(({ bounds }) => touches(bounds)),
    turns: scene.turns.filter(({ x, y, overall }) => touches(round(x, y, overall / 2))),
    letters: scene.letters.filter(({ at: [x, y] }) => touches(round(x, y, 0))),
    flags: scene.flags.filter(({ here, at: [x, y] }) => here && touches(round(x, y, 0))),
    notes: [],
    otherPaths: [],
  };
}
