// A scene as one self-contained SVG drawing: no script, no font, no address, all text escaped.

import { flagPlaces } from '#drawing/scene/flag-places.ts';
import { LETTERING, READING, palette, type ThemeName } from '#drawing/scene/palette.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { guessedWidth, place, type Paper } from '#drawing/paper/paper.ts';
import { ALL_STRONG } from '#drawing/marks/path-marks.ts';
import { notePlates, numberPlates } from '#drawing/marks/note-marks.ts';
import { rulerMarks } from '#drawing/marks/ruler-marks.ts';
import { groundMarks, otherPathMarks, pathAndFlagMarks } from '#drawing/marks/section-marks.ts';
import { escapeText } from '#words/text/escape-text.ts';
import { element, type Attributes } from './svg-element.ts';
import { svgMarks } from './svg-marks.ts';

export interface SvgOptions {
  readonly theme?: ThemeName;
  /** Greatest width of the drawing in pixels, edge to edge. */
  readonly width?: number;
  /** Outward scale over axial scale; both rulers show it. */
  readonly radialStretch?: number;
  /** First line of the caption, and the drawing's name for those who cannot see it. */
  readonly heading?: string;
  /** Before every id, where several drawings stand in one document. */
  readonly prefix?: string;
  readonly flags?: boolean;
  /** False where the words under it are set elsewhere. */
  readonly caption?: boolean;
  /** Layers carry the numbers that they have in the list. */
  readonly numbered?: boolean;
  /** For a page of paper on which a pixel of the drawing is a pixel of the page. */
  readonly printed?: boolean;
}

const WIDTH = 1200;
const EDGE = { left: 58, right: 22, top: 36, bottom: 62 } as const;
/** Half the widest outline, that the section needs beyond its frame. */
const RIM = 2;
const CAPTION = { bold: 13, plain: 11.5, line: 18 } as const;

export function svgOf(scene: Scene, options: SvgOptions = {}): string {
  const { frame } = scene;
  const across = (options.width ?? WIDTH) - EDGE.left - EDGE.right;
  const scale = scaleFor(scene, across / (frame.x1 - frame.x0));
  const stretch = options.radialStretch ?? 1;
  const width = Math.ceil(EDGE.left + (frame.x1 - frame.x0) * scale + EDGE.right);
  const deep = (frame.y1 - frame.y0) * scale * stretch;
  const captioned = options.caption ?? true;
  const height = Math.ceil(EDGE.top + deep + (captioned ? EDGE.bottom : 8));
  const paper: Paper = {
    theme: palette[options.theme ?? 'light'],
    view: {
      scale,
      stretch,
      left: EDGE.left - frame.x0 * scale,
      base: EDGE.top + frame.y1 * scale * stretch,
    },
    bounds: { left: 0, top: 0, right: width, bottom: height },
    room: {
      left: EDGE.left - RIM,
      top: EDGE.top - RIM,
      right: width - EDGE.right + RIM,
      bottom: EDGE.top + deep + RIM,
    },
    density: null,
    ...(options.printed === true && { printed: true }),
    measure: guessedWidth,
  };
  const content = [
    element('title', {}, escapeText(options.heading ?? scene.title)),
    element('rect', { width, height, fill: paper.theme.sheet }),
    sectionSvg(scene, paper, options),
    captioned ? caption(scene, paper, EDGE.top + deep + 28, options) : '',
  ];
  return svgPage({ width, height, viewBox: `0 0 ${width} ${height}` }, content.join('\n'));
}

export const svgPage = (size: Attributes, content: string): string =>
  element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', ...size, 'font-family': LETTERING, role: 'img' },
    content,
  );

/** The section itself on this paper: rulers, solids, turns, words, paths and flags. */
export function sectionSvg(
  scene: Scene,
  paper: Paper,
  { prefix = '', flags = true, numbered = false }: Pick<SvgOptions, 'prefix' | 'flags' | 'numbered'>,
): string {
  const kept = numbered ? numberPlates(scene, paper) : [];
  const places = flags ? flagPlaces(scene.flags, (at) => place(paper, at), kept) : [];
  const marks = [
    ...groundMarks(scene, paper, numbered),
    ...rulerMarks(scene, paper),
    ...otherPathMarks(scene, paper),
    ...pathAndFlagMarks(scene, paper, places, {
      told: ALL_STRONG,
      picked: null,
      kept: notePlates(scene, paper),
    }),
  ];
  return svgMarks(marks, prefix);
}

/** A scale at which the thinnest ply is a whole number of pixels, so that plies can be counted. */
function scaleFor(scene: Scene, most: number): number {
  const plies = scene.areas.filter(({ kind }) => kind === 'ply').map(({ bounds }) => bounds.y1 - bounds.y0);
  const thinnest = Math.min(...plies);
  if (!Number.isFinite(thinnest) || thinnest * most < 1) return most;
  return Math.floor(thinnest * most) / thinnest;
}

/** Section, what is laid in, scale where it is not the same both ways. */
function caption(scene: Scene, { theme }: Paper, top: number, options: SvgOptions): string {
  const bold =
    options.heading === undefined ? scene.title : `${options.heading}: ${scene.title.toLowerCase()}`;
  const stretch = options.radialStretch ?? 1;
  const scale = stretch === 1 ? 'same scale both ways' : `drawn ${stretch} times as high as wide`;
  const plain = `${scene.says}; ${scale}; each piece of ruler and path is 1 mm`;
  const look = { x: EDGE.left, 'font-family': READING };
  return (
    element(
      'text',
      { ...look, y: top, 'font-size': CAPTION.bold, 'font-weight': 700, fill: theme.ink },
      escapeText(bold),
    ) +
    element(
      'text',
      { ...look, y: top + CAPTION.line, 'font-size': CAPTION.plain, fill: theme.second },
      escapeText(plain),
    )
  );
}
