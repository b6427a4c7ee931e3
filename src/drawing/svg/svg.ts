// A scene as one self-contained SVG drawing: no script, no font, no address, all text escaped.

import { escapeText } from '#words/text/escape-text.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { LETTERING, READING, palette, type ThemeName } from '#drawing/scene/palette.ts';
import type { Point } from '#drawing/scene/outline.ts';
import { drawing } from './svg-drawing.ts';
import { patterns } from './svg-patterns.ts';
import { rulers } from './svg-rulers.ts';
import { element, text, viewOf, type View } from './svg-view.ts';

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
  /** False where the words under it are set elsewhere. */
  readonly caption?: boolean;
}

const WIDTH = 1200;
const EDGE = { left: 58, right: 22, top: 36, bottom: 62 } as const;

export function svgOf(scene: Scene, options: SvgOptions = {}): string {
  const theme = palette[options.theme ?? 'light'];
  const { frame } = scene;
  const kx = scaleFor(scene, ((options.width ?? WIDTH) - EDGE.left - EDGE.right) / (frame.x1 - frame.x0));
  const width = Math.ceil(EDGE.left + (frame.x1 - frame.x0) * kx + EDGE.right);
  const ky = kx * (options.radialStretch ?? 1);
  const deep = (frame.y1 - frame.y0) * ky;
  const captioned = options.caption ?? true;
  const height = Math.ceil(EDGE.top + deep + (captioned ? EDGE.bottom : 8));
  const view = viewOf(frame, { left: EDGE.left, top: EDGE.top, kx, ky }, theme, options.prefix ?? '');
  const room = { left: EDGE.left, top: EDGE.top, right: width - EDGE.right, bottom: EDGE.top + deep };
  const content = [
    element('title', {}, escapeText(options.heading ?? scene.title)),
    element('rect', { width, height, fill: theme.sheet }),
    patterns(view),
    rulers(scene, view, { top: EDGE.top - 8, left: EDGE.left - 12 }),
    ...drawing(scene, view, room, options.flags ?? true),
    captioned ? caption(scene, view, [EDGE.left, EDGE.top + deep + 28], options) : '',
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

/** Section, what is laid in, scale where it is not the same both ways. */
function caption(scene: Scene, view: View, at: Point, options: SvgOptions): string {
  const { ink, second } = view.theme;
  const bold =
    options.heading === undefined ? scene.title : `${options.heading}: ${scene.title.toLowerCase()}`;
  const stretch = options.radialStretch ?? 1;
  const scale = stretch === 1 ? 'same scale both ways' : `drawn ${stretch} times as high as wide`;
  const words = `${scene.says}; ${scale}; each piece of the staff is 1 mm`;
  return (
    text(at, bold, { size: 13, fill: ink, weight: 700, family: READING }) +
    text([at[0], at[1] + 18], words, { size: 11.5, fill: second, family: READING })
  );
}
