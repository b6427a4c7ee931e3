// Hatches of the materials and textures of the circuits as tiles of the canvas, in the screen's own pixels.
// A tile is drawn once for each theme and pixel density; it moves with the drawing, not with the stage.

import { LINE, type MaterialKey, type Theme } from '#drawing/scene/palette.ts';
import type { HueKey } from '#words/design/circuit-look.ts';
import type { Pen } from './pen.ts';

type Key = MaterialKey | HueKey;

/** Sides of a tile in CSS pixels. */
type Side = readonly [number, number];

const tiles = new Map<string, CanvasPattern | string>();

/** The fill of a material, or of a circuit's texture. */
export function hatch(pen: Pen, key: Key): CanvasPattern | string {
  const { theme, density, view } = pen.picture;
  const name = `${theme.name} ${density} ${key}`;
  const found = tiles.get(name) ?? tileOf(pen, key);
  tiles.set(name, found);
  if (typeof found !== 'string') {
    const crisp = (value: number): number => Math.round(value * density) / density;
    found.setTransform(new DOMMatrix([1 / density, 0, 0, 1 / density, crisp(view.left), crisp(view.base)]));
  }
  return found;
}

function tileOf(pen: Pen, key: Key): CanvasPattern | string {
  const { theme, density } = pen.picture;
  const drawn = drawings[key];
  if (drawn === undefined) return theme.materials[key as MaterialKey].fill;
  const [width, height] = drawn.side;
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * density);
  canvas.height = Math.round(height * density);
  const ink = canvas.getContext('2d');
  if (ink === null) return groundOf(theme, key);
  ink.fillStyle = groundOf(theme, key);
  ink.fillRect(0, 0, canvas.width, canvas.height);
  ink.scale(canvas.width / width, canvas.height / height);
  drawn.draw(ink, theme);
  return pen.ink.createPattern(canvas, 'repeat') ?? groundOf(theme, key);
}

const groundOf = (theme: Theme, key: Key): string =>
  key in theme.materials ? theme.materials[key as MaterialKey].fill : theme.circuits[key as HueKey].fill;

interface Tile {
  readonly side: Side;
  readonly draw: (ink: CanvasRenderingContext2D, theme: Theme) => void;
}

const drawings: Partial<Record<Key, Tile>> = {
  core: slanted(13, [0, 3.5], LINE.hatch, 1, (theme) => theme.materials.core.hatch),
  former: slanted(16, [0], LINE.hatch, -1, (theme) => theme.materials.former.hatch),
  block: dotted(
    [11, 9],
    [
      [2.5, 2.5],
      [8, 7],
    ],
    0.75,
    (theme) => theme.materials.block.hatch,
  ),
  primary: slanted(7, [0], 1.6, 1, (theme) => theme.circuits.primary.ring),
  auxiliary: dotted([6, 6], [[3, 3]], 1.3, (theme) => theme.circuits.auxiliary.ring),
  output: bars([5, 5], [0, 2.5, 5, 2.5], 1.5, (theme) => theme.circuits.output.ring),
  'second-output': {
    side: [6, 6],
    draw: (ink, theme) => {
      ink.fillStyle = theme.circuits['second-output'].ring;
      ink.fillRect(1.5, 1.5, 3, 3);
    },
  },
  earth: bars([8, 4], [1, 2, 6, 2], 1.5, (theme) => theme.circuits.earth.ring),
  isolated: {
    side: [7, 7],
    draw: (ink, theme) => {
      ink.strokeStyle = theme.circuits.isolated.ring;
      ink.beginPath();
      ink.arc(3.5, 3.5, 2, 0, 2 * Math.PI);
      ink.stroke();
    },
  },
};

/** Lines at 45 degrees; `lean` 1 leans right. Each line is drawn thrice, so that the tile's edges meet. */
function slanted(
  side: number,
  offsets: readonly number[],
  width: number,
  lean: 1 | -1,
  color: (theme: Theme) => string,
): Tile {
  const draw: Tile['draw'] = (ink, theme) => {
    ink.strokeStyle = color(theme);
    ink.lineWidth = width;
    ink.beginPath();
    for (const offset of offsets)
      for (const turn of [-1, 0, 1]) {
        const from = offset + turn * side;
        ink.moveTo(from - side, lean > 0 ? 2 * side : -side);
        ink.lineTo(from + 2 * side, lean > 0 ? -side : 2 * side);
      }
    ink.stroke();
  };
  return { side: [side, side], draw };
}

function dotted(
  side: Side,
  places: readonly (readonly [number, number])[],
  radius: number,
  color: (theme: Theme) => string,
): Tile {
  const draw: Tile['draw'] = (ink, theme) => {
    ink.fillStyle = color(theme);
    for (const [x, y] of places) {
      ink.beginPath();
      ink.arc(x, y, radius, 0, 2 * Math.PI);
      ink.fill();
    }
  };
  return { side, draw };
}

function bars(
  side: Side,
  [x0, y0, x1, y1]: readonly [number, number, number, number],
  width: number,
  color: (theme: Theme) => string,
): Tile {
  const draw: Tile['draw'] = (ink, theme) => {
    ink.strokeStyle = color(theme);
    ink.lineWidth = width;
    ink.beginPath();
    ink.moveTo(x0, y0);
    ink.lineTo(x1, y1);
    ink.stroke();
  };
  return { side, draw };
}
