// Hatches of the materials and textures of the circuits as data: one tile each, in pixels, that repeats both ways.
// The same tiles for every writer, so that a material looks alike on the page and on paper.

import { LINE, type MaterialKey, type Theme } from '#drawing/scene/palette.ts';
import type { HueKey } from '#words/design/circuit-look.ts';

export interface Hatch {
  readonly kind: 'hatch';
  /** Names the tile within its theme. */
  readonly key: string;
  readonly theme: Theme['name'];
  readonly ground: string;
  readonly color: string;
  readonly side: readonly [number, number];
  /** Strokes from end to end; they may reach over the tile's edges. */
  readonly strokes: readonly (readonly [number, number, number, number])[];
  readonly width: number;
  /** Discs, filled or as rings of the stroke's width: x, y, radius. */
  readonly dots: readonly (readonly [number, number, number])[];
  readonly isRing: boolean;
}

type Tile = Pick<Hatch, 'side'> & Partial<Pick<Hatch, 'strokes' | 'width' | 'dots' | 'isRing'>>;

/** A material's fill: its hatch, or its plain ground. */
export function materialFill(theme: Theme, key: MaterialKey): Hatch | string {
  const { fill, hatch } = theme.materials[key];
  const tile = MATERIALS[key];
  return tile === undefined ? fill : hatchOf(theme, key, tile, fill, hatch);
}

/** A circuit's texture, for rows too low for circles and for black and white. */
export const textureFill = (theme: Theme, hue: HueKey): Hatch =>
  hatchOf(theme, hue, TEXTURES[hue], theme.circuits[hue].fill, theme.circuits[hue].ring);

/** Where the worst case counts metal that is not there: thin lines in the circuit's colour on bare sheet. */
export const countedFill = (theme: Theme, hue: HueKey): Hatch =>
  hatchOf(theme, `counted-${hue}`, COUNTED, theme.sheet, theme.circuits[hue].ring);

function hatchOf(theme: Theme, key: string, tile: Tile, ground: string, color: string): Hatch {
  const { side, strokes = [], width = LINE.hatch, dots = [], isRing = false } = tile;
  return { kind: 'hatch', key, theme: theme.name, ground, color, side, strokes, width, dots, isRing };
}

/** Lines at 45 degrees; each is drawn thrice, so that the tile's edges meet. `lean` 1 leans right. */
function slanted(side: number, offsets: readonly number[], width: number, lean: 1 | -1): Tile {
  const strokes = offsets.flatMap((offset) =>
    [-1, 0, 1].map((turn): readonly [number, number, number, number] => {
      const from = offset + turn * side;
      return lean > 0
        ? [from - side, 2 * side, from + 2 * side, -side]
        : [from - side, -side, from + 2 * side, 2 * side];
    }),
  );
  return { side: [side, side], strokes, width };
}

const MATERIALS: Partial<Record<MaterialKey, Tile>> = {
  core: slanted(13, [0, 3.5], LINE.hatch, 1),
  former: slanted(16, [0], LINE.hatch, -1),
  block: {
    side: [11, 9],
    dots: [
      [2.5, 2.5, 0.75],
      [8, 7, 0.75],
    ],
  },
};

const COUNTED = slanted(6, [0], LINE.hatch, -1);

const TEXTURES: Readonly<Record<HueKey, Tile>> = {
  primary: slanted(7, [0], 1.6, 1),
  auxiliary: { side: [6, 6], dots: [[3, 3, 1.3]] },
  output: { side: [5, 5], strokes: [[0, 2.5, 5, 2.5]], width: 1.5 },
  'second-output': { side: [6, 6], strokes: [[1.5, 3, 4.5, 3]], width: 3 },
  earth: { side: [8, 4], strokes: [[1, 2, 6, 2]], width: 1.5 },
  isolated: { side: [7, 7], dots: [[3.5, 3.5, 2]], width: 1, isRing: true },
};
