// The field as SVG: the whole section with its gaps numbered and a scale, or the close picture of one gap.

import type { FieldPicture } from '#judge/field/field-picture.ts';
import type { FieldGap } from '#judge/field/field-report.ts';
import type { Mark, Point } from '#drawing/paper/mark.ts';
import { guessedWidth, type Paper } from '#drawing/paper/paper.ts';
import { palette, READING, type ThemeName } from '#drawing/scene/palette.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { element } from '#drawing/svg/svg-element.ts';
import { svgMarks } from '#drawing/svg/svg-marks.ts';
import { svgPage } from '#drawing/svg/svg.ts';
import { escapeText } from '#words/text/escape-text.ts';
import { fieldMarks, strengthMarks } from './field-marks.ts';
import { gapMarks } from './gap-marks.ts';
import { SCALE, scaleMarks } from './scale-marks.ts';
import { lined, scaleEnd, wholeMarks, type FieldShown } from './whole-marks.ts';

export interface FieldSvgOptions extends FieldShown {
  readonly theme: ThemeName;
  readonly width: number;
  readonly prefix: string;
  /** First line under the picture; null: none. */
  readonly heading: string | null;
  /** What is said under it. */
  readonly says: string;
}

/** Room over the picture, for the scale. */
const TOP = 34;
const UNDER = 44;

/** Empty where there is no field. */
export function fieldSvg(scene: Scene, picture: FieldPicture, options: FieldSvgOptions): string {
  const { whole, report } = picture;
  if (whole === null) return '';
  const { x0, y0, x1, y1 } = whole.raster;
  const scale = options.width / (x1 - x0);
  const deep = (y1 - y0) * scale;
  const height = Math.ceil(TOP + deep + (options.heading === null ? 2 : UNDER));
  const paper = paperOf(options, scale, { left: -x0 * scale, base: TOP + y1 * scale }, deep, TOP);
  const marks: readonly Mark[] = [
    ...wholeMarks(scene, picture, paper, options),
    ...scaleMarks(paper.theme, scaleEnd(picture), options.width),
  ];
  const { theme } = paper;
  const text = (y: number, size: number, weight: number, words: string) =>
    element(
      'text',
      { x: 4, y, 'font-size': size, 'font-weight': weight, fill: theme.ink, 'font-family': READING },
      escapeText(words),
    );
  const caption =
    options.heading === null
      ? ''
      : text(TOP + deep + 18, 13, 700, options.heading) + text(TOP + deep + 36, 11.5, 400, options.says);
  const label = `field strength and lines of equal potential of ${report.title}`;
  return page(options, height, svgMarks(marks, options.prefix) + caption, theme.sheet, label);
}

/** A gap and what lies round it; empty where there is no such picture. */
export function gapSvg(scene: Scene, picture: FieldPicture, gap: number, options: FieldSvgOptions): string {
  const shot = picture.close[gap];
  const found = picture.report.gaps[gap];
  if (shot === undefined || found === undefined) return '';
  const { x0, y0, x1, y1 } = shot.raster;
  const scale = options.width / (x1 - x0);
  const deep = (y1 - y0) * scale;
  const paper = paperOf(options, scale, { left: -x0 * scale, base: y1 * scale }, deep, 0);
  const near = { ...scene, turns: scene.turns.filter(({ x, y, overall }) => isNear([x, y], overall, found)) };
  const marks = [
    ...strengthMarks(shot, paper, scaleEnd(picture)),
    ...fieldMarks(near, lined(shot, options), picture.boxes, paper),
    ...gapMarks(found, gap, paper),
  ];
  const label = `gap ${gap + 1} and what lies round it`;
  return page(options, Math.ceil(deep), svgMarks(marks, options.prefix), paper.theme.sheet, label);
}

const isNear = ([x, y]: Point, overall: number, { at }: FieldGap): boolean =>
  Math.hypot(x - at[0], y - at[1]) < 3 + overall;

/** The scale of field strength alone. */
export function scaleSvg(picture: FieldPicture, theme: ThemeName): string {
  const width = SCALE.width + SCALE.right + SCALE.left;
  const marks = scaleMarks(palette[theme], scaleEnd(picture), width);
  const label = 'scale of field strength, kV/mm';
  const size = { width, height: TOP - 4, viewBox: `0 0 ${width} ${TOP - 4}`, 'aria-label': label };
  return svgPage(size, svgMarks(marks, 'scale-'));
}

function page(
  { width }: FieldSvgOptions,
  height: number,
  content: string,
  sheet: string,
  label: string,
): string {
  const size = { width, height, viewBox: `0 0 ${width} ${height}`, 'aria-label': label };
  return svgPage(size, element('rect', { width, height, fill: sheet }) + content);
}

function paperOf(
  { theme, width }: FieldSvgOptions,
  scale: number,
  origin: Pick<Paper['view'], 'left' | 'base'>,
  deep: number,
  top: number,
): Paper {
  const room = { left: 2, top: top + 2, right: width - 2, bottom: top + deep - 2 };
  return {
    theme: palette[theme],
    view: { scale, stretch: 1, ...origin },
    bounds: { left: 0, top, right: width, bottom: top + deep },
    room,
    density: null,
    measure: guessedWidth,
  };
}
