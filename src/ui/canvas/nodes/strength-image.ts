// Field strength as one image under the marks of a field: its raster once as pixels, laid over the drawing. As marks it would be
// thousands of strokes at every step of an edge that is dragged.

import { rampColor, stepOf, STEPS } from '#drawing/field/ramp.ts';
import { scaleEnd } from '#drawing/field/whole-marks.ts';
import type { Paper } from '#drawing/paper/paper.ts';
import { toScreenX, toScreenY } from '#drawing/scene/view.ts';
import type { FieldPicture } from '#state/searches/field-search.svelte.ts';
import type { Library } from './mark-nodes.ts';

type Shape = InstanceType<Library['Shape']>;

export class StrengthImage {
  readonly node: Shape;
  readonly #pixels = document.createElement('canvas');
  #picture: FieldPicture | null = null;
  #theme = '';
  #paper: Paper | null = null;

  constructor(library: Library) {
    this.node = new library.Shape({
      listening: false,
      perfectDrawEnabled: false,
      sceneFunc: (context) => this.#draw(context),
    });
  }

  /** Null: nothing is shown. */
  show(picture: FieldPicture | null, paper: Paper): void {
    const { name } = paper.theme;
    if (picture !== null && (picture !== this.#picture || name !== this.#theme)) this.#fill(picture, name);
    [this.#picture, this.#theme, this.#paper] = [picture, name, paper];
  }

  #fill(picture: FieldPicture, theme: Paper['theme']['name']): void {
    if (picture.whole === null) return;
    const { columns, rows, strength } = picture.whole.raster;
    [this.#pixels.width, this.#pixels.height] = [columns, rows];
    const canvas = this.#pixels.getContext('2d');
    if (canvas === null) return;
    const image = canvas.createImageData(columns, rows);
    const words = new Uint32Array(image.data.buffer);
    const colors = Array.from({ length: STEPS }, (_, step) => wordOf(rampColor(theme, step)));
    const strongest = scaleEnd(picture);
    for (let row = 0; row < rows; row++) {
      // rows of the raster run upward
      const to = (rows - 1 - row) * columns;
      for (let column = 0; column < columns; column++) {
        const here = strength[row * columns + column]!;
        if (here >= 0) words[to + column] = colors[stepOf(here, strongest)]!;
      }
    }
    canvas.putImageData(image, 0, 0);
  }

  #draw(canvas: Pick<CanvasRenderingContext2D, 'drawImage' | 'imageSmoothingEnabled'>): void {
    const raster = this.#picture?.whole?.raster;
    if (raster === undefined || this.#paper === null) return;
    const { view } = this.#paper;
    const [left, top] = [toScreenX(view, raster.x0), toScreenY(view, raster.y1)];
    const [right, bottom] = [toScreenX(view, raster.x1), toScreenY(view, raster.y0)];
    canvas.imageSmoothingEnabled = false;
    canvas.drawImage(this.#pixels, left, top, right - left, bottom - top);
  }
}

/** `#rrggbb` as a pixel, opaque: red lies in the lowest byte. */
function wordOf(color: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => parseInt(color.slice(at, at + 2), 16)) as [
    number,
    number,
    number,
  ];
  return ((255 << 24) | (blue << 16) | (green << 8) | red) >>> 0;
}
