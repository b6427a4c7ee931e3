// One straight line through air. It may pass voids whose height counts 0 and thin solids, which it crosses straight; both
// are folded away, and what is left of the line is straight.

import { AIR, CONDUCTOR, type Grid } from './grid.ts';
import type { Punctured, SolidOptions } from './pieces.ts';
import { puncturedBy } from './runs.ts';

/** Nearer than this (nanometres) a line counts as passing through the node itself. */
const GRAZE = 1e-3;
/** Folding settles in two or three rounds; a line that has not settled by then bends elsewhere. */
const ROUNDS = 6;
/** The grid seen with the folded axis as `v`: y as it is, or x after swapping. */
export interface View {
  readonly us: readonly number[];
  readonly vs: readonly number[];
  readonly cell: (u: number, v: number) => number;
  readonly node: (u: number, v: number) => number;
  readonly swapped: boolean;
}

interface Line {
  readonly length: number;
  /** Null: none. */
  readonly punctured: readonly Punctured[] | null;
}

/** For one line at a time: heights of the rows that it climbs, and what is left of them once folded. */
export class LineBuffer {
  heights = new Float64Array(256);
  folded = new Float64Array(256);

  /** Room for so many rows. */
  reserve(rows: number): void {
    if (rows <= this.heights.length) return;
    this.heights = new Float64Array(2 * rows);
    this.folded = new Float64Array(2 * rows);
  }
}

/** The line from (ua, va) to (ub, vb), va < vb in grid indices, or null where something is in the way. */
export function sightLine(
  buffer: LineBuffer,
  grid: Grid,
  view: View,
  options: SolidOptions,
  ua: number,
  va: number,
  ub: number,
  vb: number,
): Line | null {
  const { us, vs } = view;
  const rows = vb - va;
  buffer.reserve(rows);
  const { heights, folded } = buffer;
  let height = 0;
  for (let r = 0; r < rows; r++) {
    heights[r] = vs[va + r + 1]! - vs[va + r]!;
    // a row that is passed where it sags counts nothing there, whatever else lies in it
    folded[r] = sagsBetween(grid, view, va + r + 1, ua, ub) ? 0 : heights[r]!;
    height += folded[r]!;
  }
  const du = us[ub]! - us[ua]!;
  for (let round = 0; round < ROUNDS; round++) {
    if (height === 0) return overVoids(grid, view, ua, va, ub, vb);
    let changed = false;
    let clear = true;
    let at = us[ua]!;
    let near = ua;
    let climbed = 0;
    for (let r = 0; r < rows; r++) {
      climbed += folded[r]!;
      const next = us[ua]! + (du * climbed) / height;
      const found = rowKind(grid, view, va + r + 1, at, next, near, du > 0);
      if (found === null) return null;
      clear &&= found === 'air';
      const wanted = found === 'air' ? heights[r]! : 0;
      if (folded[r] !== wanted) {
        folded[r] = wanted;
        changed = true;
      }
      at = next;
      near = columnAt(us, at, near);
    }
    if (clear && !changed) return { length: Math.hypot(du, height), punctured: null };
    if (!changed) return settled(buffer, grid, view, options, ua, va, ub, height, rows);
    height = 0;
    for (let r = 0; r < rows; r++) height += folded[r]!;
  }
  return null;
}

/** A row has a void whose height counts 0 between two grid lines. */
function sagsBetween(grid: Grid, view: View, row: number, ua: number, ub: number): boolean {
  if (view.swapped) return false;
  const last = view.cell(Math.max(ua, ub), row);
  for (let cell = view.cell(Math.min(ua, ub) + 1, row); cell <= last; cell++) {
    if (grid.sags[cell] === 1) return true;
  }
  return false;
}

/**
 * What a line meets in one row between two places: air, a void that counts 0, a solid; null where it cannot go. `near`:
 * a column near both; `forth`: the line runs towards larger u.
 */
function rowKind(
  grid: Grid,
  view: View,
  row: number,
  from: number,
  to: number,
  near: number,
  forth: boolean,
): 'air' | 'void' | number | null {
  const lo = Math.min(from, to);
  const hi = Math.max(from, to);
  const { us } = view;
  let first = columnAt(us, lo + GRAZE, near);
  let last = Math.max(first, columnAt(us, hi - GRAZE, first));
  if (hi - lo <= GRAZE) first = last = uprightColumn(grid, view, row, lo, first, forth);
  let kind: 'air' | 'void' | number | null = null;
  for (let column = first; column <= last; column++) {
    const cell = view.cell(column, row);
    const owner = grid.owner[cell]!;
    if (owner <= CONDUCTOR) return null;
    const here = owner >= 0 ? owner : !view.swapped && grid.sags[cell] === 1 ? 'void' : 'air';
    if (kind === null) kind = here;
    else if (kind !== here) {
      if (typeof kind !== 'number' || typeof here !== 'number') return null;
      if (grid.solids[kind]!.body !== grid.solids[here]!.body) return null;
    }
  }
  return kind;
}

/**
 * Column of a line that stands upright in a row: on a grid line the one ahead, or behind where metal is ahead, or a solid
 * beside a void whose height counts 0: its face is climbed for nothing.
 */
function uprightColumn(
  grid: Grid,
  view: View,
  row: number,
  at: number,
  near: number,
  forth: boolean,
): number {
  const right = columnAt(view.us, at + GRAZE, near);
  const left = columnAt(view.us, at - GRAZE, right);
  const [ahead, behind] = forth ? [right, left] : [left, right];
  const owner = grid.owner[view.cell(ahead, row)]!;
  const isFree = !view.swapped && owner >= 0 && grid.sags[view.cell(behind, row)] === 1;
  return owner <= CONDUCTOR || isFree ? behind : ahead;
}

/** Column of cells (as counted by the grid) that holds a coordinate, looked for from one that is near. */
function columnAt(lines: readonly number[], value: number, near: number): number {
  let column = near;
  while (column < lines.length && lines[column]! <= value) column++;
  while (column > 0 && lines[column - 1]! > value) column--;
  return column;
}

function settled(
  { heights, folded }: LineBuffer,
  grid: Grid,
  view: View,
  options: SolidOptions,
  ua: number,
  va: number,
  ub: number,
  height: number,
  rows: number,
): Line | null {
  const { us } = view;
  const du = us[ub]! - us[ua]!;
  const punctured: Punctured[] = [];
  let at = us[ua]!;
  let near = ua;
  let climbed = 0;
  // the solid that the line is in, in which column, and how far through it
  let inside = -1;
  let column = 0;
  let through = 0;
  /** A solid is crossed from face to face: it does not go on in the row before or after. */
  const goesOn = (row: number): boolean => {
    const owner = grid.owner[view.cell(column, row)]!;
    return owner >= 0 && grid.solids[owner]!.body === grid.solids[inside]!.body;
  };
  const leave = (row: number): boolean => {
    if (inside < 0) return true;
    if (goesOn(row)) return false;
    const solid = grid.solids[inside]!;
    const crossed = puncturedBy(options, solid, view.swapped ? solid.crossX : solid.crossY, through);
    if (crossed === null) return false;
    punctured.push(crossed);
    inside = -1;
    through = 0;
    return true;
  };
  for (let r = 0; r < rows; r++) {
    climbed += folded[r]!;
    const next = us[ua]! + (du * climbed) / height;
    const kind = rowKind(grid, view, va + r + 1, at, next, near, du > 0);
    if (typeof kind === 'number') {
      const same = inside >= 0 && grid.solids[inside]!.body === grid.solids[kind]!.body;
      if (!same) {
        if (!leave(va + r + 1)) return null;
        inside = kind;
        // what a settled line crosses is folded: it stands upright there
        column = uprightColumn(grid, view, va + r + 1, at, near, du > 0);
        if (goesOn(va + r)) return null;
      }
      through += heights[r]!;
    } else if (!leave(va + r + 1)) return null;
    at = next;
    near = columnAt(us, at, near);
  }
  if (!leave(va + rows + 1)) return null;
  return { length: Math.hypot(du, height), punctured: punctured.length > 0 ? punctured : null };
}

/** Sideways through voids whose height counts 0. */
function overVoids(grid: Grid, view: View, ua: number, va: number, ub: number, vb: number): Line | null {
  if (view.swapped) return null;
  const [first, last] = [Math.min(ua, ub) + 1, Math.max(ua, ub)];
  for (let row = va + 1; row <= vb; row++) {
    for (let column = first; column <= last; column++) {
      const cell = view.cell(column, row);
      if (grid.owner[cell] !== AIR || grid.sags[cell] !== 1) return null;
    }
  }
  return { length: Math.abs(view.us[ub]! - view.us[ua]!), punctured: null };
}
