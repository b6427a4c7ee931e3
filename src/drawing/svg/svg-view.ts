// From millimetres on the section to points on the paper, and the few SVG elements that everything is drawn with.
// y grows outward on the section and downward on paper.

import { escapeText } from '#words/text/escape-text.ts';
import type { Box, Point } from '#drawing/scene/outline.ts';
import type { Theme } from '#drawing/scene/palette.ts';

export interface View {
  readonly theme: Theme;
  /** Pixels a millimetre along the axis. */
  readonly kx: number;
  /** Pixels a millimetre outward: `kx` times the radial stretch. */
  readonly ky: number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
  /** Before every id, so that several drawings may stand in one document. */
  readonly prefix: string;
}

export function viewOf(
  frame: Box,
  at: { readonly left: number; readonly top: number; readonly kx: number; readonly ky: number },
  theme: Theme,
  prefix: string,
): View {
  return {
    theme,
    kx: at.kx,
    ky: at.ky,
    x: (mm) => at.left + (mm - frame.x0) * at.kx,
    y: (mm) => at.top + (frame.y1 - mm) * at.ky,
    prefix,
  };
}

type Attributes = Readonly<Record<string, string | number | null>>;

/** One element; attributes that are null are left out, numbers are cut to a hundredth. */
export function element(name: string, attributes: Attributes, content = ''): string {
  const text = Object.entries(attributes)
    .flatMap(([key, value]) => (value === null ? [] : [` ${key}="${attribute(value)}"`]))
    .join('');
  return content === '' ? `<${name}${text}/>` : `<${name}${text}>${content}</${name}>`;
}

const attribute = (value: string | number): string =>
  typeof value === 'number' ? px(value) : escapeText(value);

export const px = (value: number): string => String(Math.round(value * 100) / 100);

export const line = (from: Point, to: Point, stroke: string, width: number, more: Attributes = {}): string =>
  element('line', {
    x1: from[0],
    y1: from[1],
    x2: to[0],
    y2: to[1],
    stroke,
    'stroke-width': width,
    ...more,
  });

export interface TextStyle {
  readonly size: number;
  readonly fill: string;
  readonly weight?: 400 | 700;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Lettering where left out. */
  readonly family?: string;
}

export const text = (at: Point, words: string, style: TextStyle): string =>
  element(
    'text',
    {
      x: at[0],
      y: at[1],
      fill: style.fill,
      'font-family': style.family ?? null,
      'font-size': style.size,
      'font-weight': style.weight ?? null,
      'text-anchor': style.anchor ?? null,
    },
    escapeText(words) || ' ',
  );

/** About how wide bold lettering runs; no font can be measured here. */
const widthOf = (words: string, size: number): number => [...words].length * size * 0.6;

export const chipWidth = (words: string, size: number): number => widthOf(words, size) + size;

/** A label in a box with its middle at `at`. */
export function chip(
  at: Point,
  words: string,
  look: { readonly fill: string; readonly rim: string; readonly ink: string; readonly size?: number },
): string {
  const size = look.size ?? 12.5;
  const [width, height] = [chipWidth(words, size), size * 1.65];
  return (
    element('rect', {
      x: at[0] - width / 2,
      y: at[1] - height / 2,
      width,
      height,
      rx: 2.5,
      fill: look.fill,
      stroke: look.rim,
      'stroke-width': 1.3,
    }) + text([at[0], at[1] + size * 0.36], words, { size, fill: look.ink, weight: 700, anchor: 'middle' })
  );
}
