// Hatches as tiles of the canvas, in the screen's own pixels. A tile is drawn once for each theme and pixel density; it moves
// with the drawing, not with the stage.

import type { Hatch } from '#drawing/paper/hatches.ts';
import type { View } from '#drawing/scene/view.ts';

export class HatchTiles {
  readonly #tiles = new Map<string, CanvasPattern>();

  /** The plain ground where no canvas can be had. */
  fill(hatch: Hatch, view: View, density: number): CanvasPattern | string {
    const name = `${hatch.theme} ${density} ${hatch.key}`;
    const found = this.#tiles.get(name) ?? tileOf(hatch, density);
    if (found === null) return hatch.ground;
    this.#tiles.set(name, found);
    const crisp = (value: number): number => Math.round(value * density) / density;
    found.setTransform(new DOMMatrix([1 / density, 0, 0, 1 / density, crisp(view.left), crisp(view.base)]));
    return found;
  }
}

function tileOf(
  { side, ground, color, width, strokes, dots, isRing }: Hatch,
  density: number,
): CanvasPattern | null {
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(side[0] * density);
  canvas.height = Math.round(side[1] * density);
  const ink = canvas.getContext('2d');
  if (ink === null) return null;
  ink.fillStyle = ground;
  ink.fillRect(0, 0, canvas.width, canvas.height);
  ink.scale(canvas.width / side[0], canvas.height / side[1]);
  ink.strokeStyle = ink.fillStyle = color;
  ink.lineWidth = width;
  ink.beginPath();
  for (const [x0, y0, x1, y1] of strokes) {
    ink.moveTo(x0, y0);
    ink.lineTo(x1, y1);
  }
  ink.stroke();
  for (const [x, y, radius] of dots) {
    ink.beginPath();
    ink.arc(x, y, radius, 0, 2 * Math.PI);
    if (isRing) ink.stroke();
    else ink.fill();
  }
  return ink.createPattern(canvas, 'repeat');
}
