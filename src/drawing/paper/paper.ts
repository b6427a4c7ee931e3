// What a drawing is put on: the theme, where millimetres lie in pixels, how far the paper goes, how wide words run on it.

import type { Plate } from '#drawing/scene/view.ts';
import type { Theme } from '#drawing/scene/palette.ts';
import { toScreenX, toScreenY, type View } from '#drawing/scene/view.ts';
import type { Point } from './mark.ts';

export interface Paper {
  readonly theme: Theme;
  readonly view: View;
  /** All of it; what lies beyond is left out. */
  readonly bounds: Plate;
  /** The part that the section has for itself, inside the rulers. */
  readonly room: Plate;
  /** Screen pixels to a pixel: edges of solids fall between them. Null: the paper has none. */
  readonly density: number | null;
  /** Words on what is printed are nowhere smaller than can be read there. */
  readonly printed?: boolean;
  /** Width of these words in pixels. */
  readonly measure: (words: string, size: number, bold: boolean) => number;
}

export const place = ({ view }: Paper, [x, y]: Point): Point => [toScreenX(view, x), toScreenY(view, y)];

/** To the nearest edge between screen pixels. */
export function crisp({ view, density }: Paper, [x, y]: Point): Point {
  const at: Point = [toScreenX(view, x), toScreenY(view, y)];
  return density === null
    ? at
    : [Math.round(at[0] * density) / density, Math.round(at[1] * density) / density];
}

/** Pixels a millimetre outward. */
export const scaleUp = ({ view }: Paper): number => view.scale * view.stretch;

/** A plain guess where no font can be measured: bold lettering runs about so wide. */
export const guessedWidth = (words: string, size: number, bold: boolean): number =>
  [...words].length * size * (bold ? 0.6 : 0.55);

export const touches = (a: Plate, b: Plate): boolean =>
  a.left <= b.right && a.right >= b.left && a.top <= b.bottom && a.bottom >= b.top;
