// A solved field on a regular grid over a window: potential everywhere, field strength where there is no metal. Rows go
// outward from y0; the places are the middles of the cells. Millimetres, volts, V/mm.

import { weights, type FieldView } from './field-view.ts';
import { smoothStrength } from './smooth-strength.ts';

export interface FieldWindow {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export interface Raster extends FieldWindow {
  /** Width of a cell. */
  readonly step: number;
  readonly columns: number;
  readonly rows: number;
  readonly volts: Float32Array;
  /** -1 in metal and beyond the picture. */
  readonly strength: Float32Array;
}

export function rasterOf(view: FieldView, window: FieldWindow, columns: number): Raster {
  const step = (window.x1 - window.x0) / columns;
  const rows = Math.max(1, Math.round((window.y1 - window.y0) / step));
  const raster: Raster = {
    ...window,
    step,
    columns,
    rows,
    volts: new Float32Array(columns * rows).fill(Number.NEGATIVE_INFINITY),
    strength: new Float32Array(columns * rows).fill(-1),
  };
  const { mesh } = view.field;
  const smooth = smoothStrength(view);
  for (let t = 0; t < mesh.body.length; t++) drawTriangle(view, t, raster, smooth);
  fillMetal(view, raster);
  return raster;
}

function drawTriangle(
  view: FieldView,
  t: number,
  raster: Raster,
  smooth: ReturnType<typeof smoothStrength>,
): void {
  const { x, y, triangles } = view.field.mesh;
  const { potential } = view.state;
  const { x0, y0, step, columns, rows } = raster;
  const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
  const top = Math.max(y[a]!, y[b]!, y[c]!);
  const bottom = Math.min(y[a]!, y[b]!, y[c]!);
  const first = Math.max(0, Math.ceil((bottom - y0) / step - 0.5));
  const last = Math.min(rows - 1, Math.floor((top - y0) / step - 0.5));
  const whole = (x[b]! - x[a]!) * (y[c]! - y[a]!) - (y[b]! - y[a]!) * (x[c]! - x[a]!);
  if (first > last || whole === 0) return;
  let corners: readonly [number, number, number] | null = null;
  const [gx, gy] = [-view.vector[2 * t]!, -view.vector[2 * t + 1]!];
  for (let row = first; row <= last; row++) {
    const py = y0 + (row + 0.5) * step;
    let [left, right] = [Infinity, -Infinity];
    for (const [p, q] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const) {
      const [yp, yq] = [y[p]!, y[q]!];
      if ((yp < py && yq < py) || (yp > py && yq > py) || yp === yq) continue;
      const at = x[p]! + ((py - yp) / (yq - yp)) * (x[q]! - x[p]!);
      [left, right] = [Math.min(left, at), Math.max(right, at)];
    }
    const from = Math.max(0, Math.ceil((left - x0) / step - 0.5));
    const to = Math.min(columns - 1, Math.floor((right - x0) / step - 0.5));
    for (let column = from; column <= to; column++) {
      const px = x0 + (column + 0.5) * step;
      raster.volts[row * columns + column] = potential[a]! + gx * (px - x[a]!) + gy * (py - y[a]!);
      corners ??= smooth(t);
      const [u, v, w] = weights(view.field.mesh, t, px, py);
      raster.strength[row * columns + column] = Math.max(0, u * corners[0] + v * corners[1] + w * corners[2]);
    }
  }
}

/** Cells that no triangle reached lie in metal, and have its potential. */
function fillMetal({ field: { map }, state }: FieldView, raster: Raster): void {
  const { x0, y0, step, columns, rows, volts } = raster;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const i = row * columns + column;
      if (volts[i] !== Number.NEGATIVE_INFINITY) continue;
      const electrode = map.electrodeAt(x0 + (column + 0.5) * step, y0 + (row + 0.5) * step);
      volts[i] = electrode === -1 ? (i > 0 ? volts[i - 1]! : 0) : state.electrodes[electrode]!;
    }
  }
  for (let i = 0; i < volts.length; i++) if (!Number.isFinite(volts[i]!)) volts[i] = 0;
}
