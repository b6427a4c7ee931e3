// Marks written on a canvas. The context is the public one of the canvas library, or the browser's own: both have what is
// used here. All places of a stamp are one path, so that a thousand turns cost what ten do.

import { LETTERING } from '#drawing/scene/palette.ts';
import type { Hatch } from '#drawing/paper/hatches.ts';
import type { CircleMark, Fill, LineMark, Mark, Point, Stroke, WordsMark } from '#drawing/paper/mark.ts';

export type Canvas = Pick<
  CanvasRenderingContext2D,
  | 'beginPath'
  | 'closePath'
  | 'moveTo'
  | 'lineTo'
  | 'ellipse'
  | 'rect'
  | 'roundRect'
  | 'fill'
  | 'stroke'
  | 'fillText'
  | 'setLineDash'
  | 'fillStyle'
  | 'strokeStyle'
  | 'lineWidth'
  | 'globalAlpha'
  | 'font'
  | 'textAlign'
  | 'textBaseline'
>;

/** What a hatch is filled with on this canvas. */
export type Tiles = (hatch: Hatch) => CanvasPattern | string;

const CENTRE: readonly Point[] = [[0, 0]];

export function drawMark(canvas: Canvas, mark: Mark, tiles: Tiles): void {
  canvas.globalAlpha = mark.opacity ?? 1;
  if (mark.kind === 'stamp') for (const each of mark.marks) drawAt(canvas, each, mark.at, tiles);
  else drawAt(canvas, mark, CENTRE, tiles);
}

function drawAt(
  canvas: Canvas,
  mark: Exclude<Mark, { kind: 'stamp' }>,
  at: readonly Point[],
  tiles: Tiles,
): void {
  switch (mark.kind) {
    case 'area':
      canvas.beginPath();
      for (const loop of mark.loops) {
        trace(canvas, loop, at[0] ?? [0, 0]);
        canvas.closePath();
      }
      return finish(canvas, mark.fill, mark.stroke, tiles);
    case 'line':
      return drawLine(canvas, mark, at);
    case 'circle':
      return drawCircles(canvas, mark, at, tiles);
    case 'words':
      return drawWords(canvas, mark);
    case 'chip': {
      const {
        at: [x, y],
        width,
        height,
        fill,
        rim,
        dash = [],
      } = mark;
      canvas.beginPath();
      canvas.roundRect(x - width / 2, y - height / 2, width, height, 2.5);
      finish(canvas, fill, { color: rim, width: 1.3, dash }, tiles);
      return drawWords(canvas, { ...mark, kind: 'words', bold: true });
    }
  }
}

function drawLine(canvas: Canvas, { runs, stroke }: LineMark, at: readonly Point[]): void {
  canvas.beginPath();
  for (const spot of at) for (const run of runs) trace(canvas, run, spot);
  outline(canvas, stroke);
}

function drawCircles(
  canvas: Canvas,
  { at: [cx, cy], rx, ry, fill, stroke }: CircleMark,
  at: readonly Point[],
  tiles: Tiles,
): void {
  canvas.beginPath();
  for (const [x, y] of at) {
    canvas.moveTo(x + cx + rx, y + cy);
    canvas.ellipse(x + cx, y + cy, rx, ry, 0, 0, 2 * Math.PI);
  }
  finish(canvas, fill, stroke, tiles);
}

function trace(canvas: Canvas, run: readonly Point[], [dx, dy]: Point): void {
  run.forEach(([x, y], place) => {
    if (place === 0) canvas.moveTo(x + dx, y + dy);
    else canvas.lineTo(x + dx, y + dy);
  });
}

function finish(canvas: Canvas, fill: Fill, stroke: Stroke | null, tiles: Tiles): void {
  if (fill !== null) {
    canvas.fillStyle = typeof fill === 'string' ? fill : tiles(fill);
    canvas.fill();
  }
  if (stroke !== null) outline(canvas, stroke);
}

const SOLID: number[] = [];

function outline(canvas: Canvas, { color, width, dash }: Stroke): void {
  canvas.strokeStyle = color;
  canvas.lineWidth = width;
  canvas.setLineDash(dash === undefined ? SOLID : [...dash]);
  canvas.stroke();
}

function drawWords(canvas: Canvas, { at, words, size, color, bold, align }: WordsMark): void {
  canvas.font = fontOf(size, bold === true);
  canvas.textAlign = align ?? 'center';
  canvas.textBaseline = 'middle';
  canvas.fillStyle = color;
  canvas.fillText(words, at[0], at[1] + size * 0.06);
}

export const fontOf = (size: number, bold: boolean): string => `${bold ? 700 : 400} ${size}px ${LETTERING}`;
