// A solved field on a regular grid over a window: potential everywhere, field strength where there is no metal. Rows go
// outward from y0; the places are the middles of the cells. Millimetres, volts, V/mm.

import type { FieldView } from './field-view.ts';

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
  for (let t = 0; t < mesh.body.length; t++) drawTriangle(view, t, raster);
  fillMetal(view, raster);
  return raster;
}

/** Rows of cells whose middles lie in the triangle; strength runs evenly between its three corners. */
function drawTriangle(view: FieldView, t: number, raster: Raster): void {
  const { x, y, triangles } = view.field.mesh;
  const { x0, y0, step, columns, rows, volts, strength } = raster;
  const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
  const [xa, ya, xb, yb, xc, yc] = [x[a]!, y[a]!, x[b]!, y[b]!, x[c]!, y[c]!];
  const first = Math.max(0, Math.ceil((Math.min(ya, yb, yc) - y0) / step - 0.5));
  const last = Math.min(rows - 1, Math.floor((Math.max(ya, yb, yc) - y0) / step - 0.5));
  const whole = (xb - xa) * (yc - ya) - (yb - ya) * (xc - xa);
  if (first > last || whole === 0) return;
  const base = view.state.potential[a]!;
  const [gx, gy] = [-view.vector[2 * t]!, -view.vector[2 * t + 1]!];
  let corners: readonly [number, number, number] | null = null;
  for (let row = first; row <= last; row++) {
    const py = y0 + (row + 0.5) * step;
    const left = Math.min(leftAt(xa, ya, xb, yb, py), leftAt(xb, yb, xc, yc, py), leftAt(xc, yc, xa, ya, py));
    const right = -Math.min(
      leftAt(-xa, ya, -xb, yb, py),
      leftAt(-xb, yb, -xc, yc, py),
      leftAt(-xc, yc, -xa, ya, py),
    );
    const from = Math.max(0, Math.ceil((left - x0) / step - 0.5));
    const to = Math.min(columns - 1, Math.floor((right - x0) / step - 0.5));
    if (from > to) continue;
    corners ??= view.cornerStrength(t);
    const [sa, sb, sc] = corners;
    const [slopeX, slopeY] = [
      ((sb - sa) * (yc - ya) - (sc - sa) * (yb - ya)) / whole,
      ((sc - sa) * (xb - xa) - (sb - sa) * (xc - xa)) / whole,
    ];
    for (let column = from; column <= to; column++) {
      const [dx, dy] = [x0 + (column + 0.5) * step - xa, py - ya];
      const i = row * columns + column;
      volts[i] = base + gx * dx + gy * dy;
      strength[i] = Math.max(0, sa + slopeX * dx + slopeY * dy);
    }
  }
}

/** Where a side crosses a row; `Infinity` where it does not. */
function leftAt(xp: number, yp: number, xq: number, yq: number, py: number): number {
  if ((yp < py && yq < py) || (yp > py && yq > py) || yp === yq) return Infinity;
  return xp + ((py - yp) / (yq - yp)) * (xq - xp);
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
