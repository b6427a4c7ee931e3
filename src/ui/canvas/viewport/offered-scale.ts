// Which scales the drawing offers: those at which one ply is a whole number of the screen's own pixels,
// so that plies of one tape look alike and can be counted. Below a few pixels a ply there is nothing to count.

import { limitScale } from './view.ts';

export interface PlyGrid {
  /** Thickness of the ply that sets the grid, mm; null: the drawing has none. */
  readonly ply: number | null;
  readonly stretch: number;
  /** Screen pixels per CSS pixel. */
  readonly density: number;
}

/** From here on a ply is drawn in whole screen pixels. */
const COUNTABLE = 3;

/** The offered scale next to this one. */
export function nearestScale(scale: number, grid: PlyGrid): number {
  return matched(scale, grid, Math.round);
}

/** The largest offered scale that is not above this one. */
export function scaleAtMost(scale: number, grid: PlyGrid): number {
  return matched(scale, grid, (pixels) => Math.floor(pixels + 1e-6));
}

/** One press of the zoom keys: about a quarter more or less, at least one pixel a ply. */
export function nextScale(scale: number, grid: PlyGrid, direction: 1 | -1): number {
  const wished = scale * (direction > 0 ? 1.25 : 0.8);
  const offered = nearestScale(wished, grid);
  if (grid.ply === null || Math.sign(offered - scale) === direction) return limitScale(offered);
  const perPixel = scaleOfPixels(1, grid.ply, grid);
  return limitScale(nearestScale(scale + direction * perPixel, grid));
}

function matched(scale: number, grid: PlyGrid, round: (pixels: number) => number): number {
  const wished = limitScale(scale);
  if (grid.ply === null || grid.ply <= 0) return wished;
  const pixels = wished / scaleOfPixels(1, grid.ply, grid);
  if (pixels < COUNTABLE) return wished;
  return limitScale(scaleOfPixels(round(pixels), grid.ply, grid));
}

const scaleOfPixels = (pixels: number, ply: number, grid: PlyGrid): number =>
  pixels / (ply * grid.stretch * grid.density);
