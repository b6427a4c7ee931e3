// A scene as one self-contained SVG drawing: no script, no font, no address, all text escaped.

import { escapeText } from './escape-text.ts';
import type { Area, Scene } from './scene.ts';
import { LETTERING, LINE, READING, palette, type ThemeName } from './palette.ts';
import type { Point } from './outline.ts';
import { flags } from './svg-flags.ts';
import { patterns } from './svg-patterns.ts';
import { rulers } from './svg-rulers.ts';
import { solids } from './svg-solids.ts';
import { staff, staffFigures, thinStaff } from './svg-staff.ts';
import { drawsCircles, turns } from './svg-turns.ts';
import { chip, element, line, px, text, viewOf, widthOf, type View } from './svg-view.ts';

export interface SvgOptions {
  readonly theme?: ThemeName;
  /** Greatest width of the drawing in pixels, edge to edge. */
  readonly width?: number;
  /** Outward scale over axial scale; both staffs show it. */
  readonly radialStretch?: number;
  /** First line of the caption, and the drawing's name for those who cannot see it. */
  readonly heading?: string;
  /** Before every id, where several drawings stand in one document. */
  readonly prefix?: string;
  readonly flags?: boolean;
}

const WIDTH = 1200;
const EDGE = { left: 58, right: 22, top: 36, bottom: 44 } as const;

export function svgOf(scene: Scene, options: SvgOptions = {}): string {
  const theme = palette[options.theme ?? 'light'];
  const { frame } = scene;
  const kx = scaleFor(scene, ((options.width ?? WIDTH) - EDGE.left - EDGE.right) / (frame.x1 - frame.x0));
  const width = Math.ceil(EDGE.left + (frame.x1 - frame.x0) * kx + EDGE.right);
  const ky = kx * (options.radialStretch ?? 1);
  const deep = (frame.y1 - frame.y0) * ky;
  const height = Math.ceil(EDGE.top + deep + EDGE.bottom);
  const view = viewOf(frame, { left: EDGE.left, top: EDGE.top, kx, ky }, theme, options.prefix ?? '');
  const content = [
    element('title', {}, escapeText(options.heading ?? scene.title)),
    element('rect', { width, height, fill: theme.sheet }),
    patterns(view),
    ...drawing(scene, view, width, options.flags ?? true),
    rulers(scene, view, { top: EDGE.top - 8, left: EDGE.left - 12 }),
    caption(scene, view, [EDGE.left, EDGE.top + deep + 28], options),
  ];
  const size = { width, height, viewBox: `0 0 ${width} ${height}` };
  return element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', ...size, 'font-family': LETTERING, role: 'img' },
    content.join('\n'),
  );
}

/** A scale at which the thinnest ply is a whole number of pixels, so that plies can be counted. */
function scaleFor(scene: Scene, most: number): number {
  const plies = scene.areas.filter(({ kind }) => kind === 'ply').map(({ bounds }) => bounds.y1 - bounds.y0);
  const thinnest = Math.min(...plies);
  if (!Number.isFinite(thinnest) || thinnest * most < 1) return most;
  return Math.floor(thinnest * most) / thinnest;
}

function drawing(scene: Scene, view: View, width: number, flagged: boolean): readonly string[] {
  const circles = drawsCircles(scene, view);
  const layers = new Set(scene.areas.filter(circles).map(({ layer }) => layer));
  const stackTop = Math.max(0, ...scene.layers.map(({ y1 }) => y1));
  const edge = { top: EDGE.top, right: width - EDGE.right, stackTop };
  return [
    solids(scene, view, circles),
    turns(scene, view, (layer) => layers.has(layer)),
    ...scene.notes.map(({ text: words, at, line: span }) => note(words, at, span, view)),
    ...scene.letters.map(({ at, letter, circuit }) => {
      const hue = scene.looks.find((look) => look.circuit === circuit)?.hue ?? 'isolated';
      const ink = view.theme.circuits[hue].ring;
      const size = letterSize(scene.areas, at, view);
      return size === 0
        ? ''
        : chip([view.x(at[0]), view.y(at[1])], letter, { fill: view.theme.sheet, rim: ink, ink, size });
    }),
    ...scene.otherPaths.map((path) => thinStaff(path, view)),
    scene.path === null ? '' : staff(scene.path, view),
    flagged ? flags(scene, view) : '',
    scene.path === null ? '' : staffFigures(scene.path, view, edge),
  ];
}

/** A letter never stands higher than what it names, down to the smallest that can be read; 0 where none can. */
function letterSize(areas: readonly Area[], [x, y]: Point, view: View): number {
  const under = areas.find(({ bounds: b }) => b.x0 <= x && x <= b.x1 && b.y0 <= y && y <= b.y1);
  const high = under === undefined ? 0 : (under.bounds.y1 - under.bounds.y0) * view.ky;
  const size = Math.min(12.5, high * 0.6);
  return size < 5 ? 0 : size;
}

function note(words: string, at: Point, span: readonly [Point, Point] | null, view: View): string {
  const [x, y] = [view.x(at[0]), view.y(at[1])];
  const { second } = view.theme;
  if (span === null) return text([x, y + 4], words, { size: 11.5, fill: second, anchor: 'middle' });
  const [from, to]: readonly Point[] = span.map(([a, b]): Point => [view.x(a), view.y(b)]);
  if (from === undefined || to === undefined || Math.abs(from[1] - to[1]) < 14) return '';
  const head = (end: Point, way: number): string =>
    element('path', { d: `M${px(end[0])} ${px(end[1])}l-3 ${way * 7}h6Z`, fill: second });
  return (
    line(from, to, second, LINE.dimension) +
    head(from, -1) +
    head(to, 1) +
    text([x - 8, y + 4], words, { size: 11.5, fill: second, anchor: 'end' })
  );
}

/** Section, what is laid in, scale where it is not the same both ways. */
function caption(scene: Scene, view: View, at: Point, options: SvgOptions): string {
  const { ink, second } = view.theme;
  const bold =
    options.heading === undefined ? scene.title : `${options.heading}: ${scene.title.toLowerCase()}`;
  const stretch = options.radialStretch ?? 1;
  const scale = stretch === 1 ? 'same scale both ways' : `drawn ${stretch} times as high as wide`;
  const words = `${scene.says}; ${scale}; each piece of the staff is 1 mm`;
  const shift = widthOf(bold, 13) * 0.98 + 14;
  return (
    text(at, bold, { size: 13, fill: ink, weight: 700, family: READING }) +
    text([at[0] + shift, at[1]], words, { size: 12.5, fill: second, family: READING })
  );
}
