// Straight ways through compound (potted, with proof) from corner to corner, slanting or not. All is one mass there: what a
// way gains sideways is solid matter too, and the straight way is the shortest, so it tells how thick the insulation is.
// Only ways shorter than what makes compound strong are collected. A slanting way through a solid counts as one across it.

import { columns, CONDUCTOR, type Grid } from './grid.ts';
import { type Contacts, type EdgeList, SLANT } from './network.ts';
import type { Punctured, SolidOptions } from './pieces.ts';
import { puncturedBy } from './runs.ts';
import type { Crossing } from '#solver/section/section.ts';

/** Of ways through compound that are shorter than `below`, nanometres. */
export function collectSlants(
  grid: Grid,
  { conductor }: Pick<Contacts, 'conductor'>,
  options: SolidOptions,
  edges: EdgeList,
  below: number,
): void {
  if (!Number.isFinite(below)) return;
  const { xs, ys } = grid;
  const nx = xs.length;
  const corners = cornersOf(grid, conductor);
  const isCorner = new Set(corners);
  corners.forEach((from, p) => {
    const [i, j] = [from % nx, Math.floor(from / nx)];
    for (let q = p + 1; q < corners.length; q++) {
      const to = corners[q]!;
      const [bi, bj] = [to % nx, Math.floor(to / nx)];
      const up = ys[bj]! - ys[j]!;
      if (up >= below) break;
      const length = Math.hypot(xs[bi]! - xs[i]!, up);
      if (bi === i || bj === j || length >= below) continue;
      const punctured = passed(grid, options, slanting(grid, [i, j], [bi, bj]));
      if (punctured) edges.add(from, to, 0, punctured, 0, SLANT, length);
    }
    for (const [di, dj] of STEPS) straight(grid, options, edges, below, from, di, dj, isCorner, conductor);
  });
}

const STEPS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;

/** Nodes where a shortest way may turn or end, ascending: corners of everything, and one nanometre off those of metal. */
function cornersOf(grid: Grid, conductor: Int32Array): readonly number[] {
  const { xs, ys, owner, solids } = grid;
  const nx = xs.length;
  const width = columns(grid);
  const bodyAt = (cell: number): string => {
    const here = owner[cell]!;
    return here >= 0 ? `${solids[here]!.body}` : `metal ${here}`;
  };
  const found = new Set<number>();
  for (let node = 0; node < nx * ys.length; node++) {
    const [i, j] = [node % nx, Math.floor(node / nx)];
    const cell = j * width + i;
    const [a, b, c, d] = [bodyAt(cell), bodyAt(cell + 1), bodyAt(cell + width), bodyAt(cell + width + 1)];
    if ((a === b && c === d) || (a === c && b === d)) continue;
    found.add(node);
    if (conductor[node] === -1) continue;
    for (const di of [-1, 1]) {
      for (const dj of [-1, 1]) {
        const isHair =
          Math.abs((xs[i + di] ?? Infinity) - xs[i]!) === 1 &&
          Math.abs((ys[j + dj] ?? Infinity) - ys[j]!) === 1;
        const beside = node + di + dj * nx;
        if (isHair && conductor[beside] === -1) found.add(beside);
      }
    }
  }
  return [...found].sort((a, b) => a - b);
}

/** Along a grid line from a corner to every further one, and to the first conductor. */
function straight(
  grid: Grid,
  options: SolidOptions,
  edges: EdgeList,
  below: number,
  from: number,
  di: -1 | 0 | 1,
  dj: -1 | 0 | 1,
  corners: ReadonlySet<number>,
  conductor: Int32Array,
): void {
  const { xs, ys } = grid;
  const nx = xs.length;
  const [i, j] = [from % nx, Math.floor(from / nx)];
  for (let k = 1; ; k++) {
    const [x, y] = [xs[i + k * di], ys[j + k * dj]];
    if (x === undefined || y === undefined) return;
    const length = Math.abs(x - xs[i]!) + Math.abs(y - ys[j]!);
    if (length >= below) return;
    const to = from + k * (di + dj * nx);
    const isMetal = conductor[to] !== -1;
    // of two corners the way is found from the first
    if (isMetal || (corners.has(to) && from < to)) {
      for (const side of [0, 1] as const) {
        const punctured = passed(grid, options, alongLine(grid, from, to, side));
        if (punctured) edges.add(from, to, 0, punctured, 0, SLANT, length);
      }
    }
    if (isMetal) return;
  }
}

/** A cell that a way passes, how far inside it, and which ways it leads. */
interface Cell {
  readonly owner: number;
  readonly length: number;
  readonly across: 'x' | 'y' | 'slanting';
}

/** Cells between two nodes of one grid line, on one side of it; none where metal lies at either side. */
function alongLine(grid: Grid, a: number, b: number, side: 0 | 1): readonly Cell[] | null {
  const { xs, ys, owner } = grid;
  const nx = xs.length;
  const width = columns(grid);
  const [from, to] = a < b ? [a, b] : [b, a];
  const isLevel = to - from < nx;
  const [at, lines, cellStep, beside] = isLevel
    ? [from % nx, xs, 1, width]
    : [Math.floor(from / nx), ys, width, 1];
  const count = isLevel ? to - from : (to - from) / nx;
  const first = Math.floor(from / nx) * width + (from % nx) + (isLevel ? 1 : width);
  const found: Cell[] = [];
  for (let k = 0; k < count; k++) {
    const cell = first + k * cellStep;
    if (owner[cell]! <= CONDUCTOR || owner[cell + beside]! <= CONDUCTOR) return null;
    const length = lines[at + k + 1]! - lines[at + k]!;
    found.push({ owner: owner[cell + side * beside]!, length, across: isLevel ? 'x' : 'y' });
  }
  return found;
}

/** Cells that the straight line between two nodes passes, the second above the first; null where metal is in the way. */
function slanting(
  grid: Grid,
  [ai, aj]: readonly [number, number],
  [bi, bj]: readonly [number, number],
): readonly Cell[] | null {
  const { xs, ys, owner } = grid;
  const width = columns(grid);
  const [dx, dy] = [xs[bi]! - xs[ai]!, ys[bj]! - ys[aj]!];
  const length = Math.hypot(dx, dy);
  const [left, right] = [Math.min(ai, bi), Math.max(ai, bi)];
  const found: Cell[] = [];
  for (let j = aj; j < bj; j++) {
    for (let i = left; i < right; i++) {
      const [x0, x1] = [(xs[i]! - xs[ai]!) / dx, (xs[i + 1]! - xs[ai]!) / dx];
      const enter = Math.max((ys[j]! - ys[aj]!) / dy, Math.min(x0, x1));
      const leave = Math.min((ys[j + 1]! - ys[aj]!) / dy, Math.max(x0, x1));
      if (leave - enter < GRAZE) continue;
      const here = owner[(j + 1) * width + i + 1]!;
      if (here <= CONDUCTOR) return null;
      found.push({ owner: here, length: (leave - enter) * length, across: 'slanting' });
    }
  }
  return found;
}

/** Less of a way than this share only grazes a cell. */
const GRAZE = 1e-9;

/** The plies that a way through these cells punctures, without the compound; null where one is strong. */
function passed(
  { solids }: Grid,
  options: SolidOptions,
  cells: readonly Cell[] | null,
): readonly Punctured[] | null {
  if (cells === null) return null;
  const within = new Map<number, Cell>();
  for (const cell of cells) {
    const { body } = solids[cell.owner]!;
    const before = within.get(body)?.length ?? 0;
    within.set(body, { ...cell, length: before + cell.length });
  }
  const punctured: Punctured[] = [];
  for (const { owner, length, across } of within.values()) {
    const solid = solids[owner]!;
    if (solid.region === null) continue;
    const { crossX, crossY } = solid;
    const crossing = across === 'x' ? crossX : across === 'y' ? crossY : weaker(crossX, crossY);
    const found = puncturedBy(options, solid, crossing, length);
    if (found === null) return null;
    punctured.push(found);
  }
  return punctured;
}

/** What a way counts as that goes neither straight along the one axis nor the other. */
const weaker = (a: Crossing, b: Crossing): Crossing => {
  if (a === 'strong') return b;
  if (b === 'strong') return a;
  return a === 'measured' || b === 'measured' ? 'measured' : Math.min(a, b);
};
