// Extra grid lines. A hair beside an edge: a ply can be punctured as near to its edge as one likes, and a path may pass
// a third conductor as near as one likes without touching it. Finer ones for straight lines through air: where air lies
// at a solid that can be punctured, or at the border of a sagging void, the best place may lie between coordinates.

import type { PathOptions } from '#solver/network/pieces.ts';
import type { Crossing } from '#solver/section/section.ts';
import type { Grid, GridSection } from './oracle-grid.ts';
import { AIR, cellAt, sagAt } from './oracle-grid.ts';

/** One nanometre, the least that lengths are told apart by. */
export const HAIR = 1;

export function hairLines(section: GridSection, options: PathOptions): { xs: number[]; ys: number[] } {
  const xs: number[] = [];
  const ys: number[] = [];
  for (const r of section.regions) {
    if (r.kind === 'conductor') {
      xs.push(r.x0 - HAIR, r.x1 + HAIR);
      ys.push(r.y0 - HAIR, r.y1 + HAIR);
      continue;
    }
    if (isThin(r.crossY, r.y1 - r.y0, options)) xs.push(r.x0 + HAIR, r.x1 - HAIR);
    if (isThin(r.crossX, r.x1 - r.x0, options)) ys.push(r.y0 + HAIR, r.y1 - HAIR);
    // where an edge that is turned up ends, a way comes out from behind it
    if (r.turnUp > 0) ys.push(r.y1 + r.turnUp);
  }
  const { frame } = section;
  return {
    xs: xs.filter((x) => x > frame.x0 && x < frame.x1),
    ys: ys.filter((y) => y > frame.y0 && y < frame.y1),
  };
}

const isThin = (crossing: Crossing, thickness: number, options: PathOptions): boolean =>
  crossing !== 'strong' && (crossing !== 'measured' || thickness < options.leastThickness);

export function refinedLines(
  grid: Grid,
  options: PathOptions,
  spacing: number,
): { xs: number[]; ys: number[] } {
  const columns = grid.xs.length - 1;
  const rows = grid.ys.length - 1;
  const wantX = new Set<number>();
  const wantY = new Set<number>();
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j < rows; j++) {
      if (bends(grid, options, [i, j], [i, j + 1], 'y')) wantX.add(i);
      if (bends(grid, options, [i, j], [i + 1, j], 'x')) wantY.add(j);
    }
  }
  return { xs: between(grid.xs, wantX, spacing), ys: between(grid.ys, wantY, spacing) };
}

type Cell = readonly [number, number];

function bends(grid: Grid, options: PathOptions, a: Cell, b: Cell, along: 'x' | 'y'): boolean {
  const one = cellAt(grid, ...a);
  const other = cellAt(grid, ...b);
  if (one === AIR && other === AIR) return sagAt(grid, ...a) !== sagAt(grid, ...b);
  if (one !== AIR && other !== AIR) return false;
  const region = grid.regions[one === AIR ? other : one];
  if (region === undefined || region.kind === 'conductor') return false;
  return along === 'x'
    ? isThin(region.crossX, region.x1 - region.x0, options)
    : isThin(region.crossY, region.y1 - region.y0, options);
}

function between(lines: readonly number[], wanted: ReadonlySet<number>, spacing: number): number[] {
  return [...wanted].flatMap((k) => {
    const low = lines[k]!;
    const width = lines[k + 1]! - low;
    const parts = Math.ceil(width / spacing);
    return Array.from({ length: parts - 1 }, (_, n) => low + (width * (n + 1)) / parts);
  });
}
