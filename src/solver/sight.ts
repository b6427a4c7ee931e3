// Straight lines through air of any length (clearance only). A line may pass voids whose height counts 0 and thin
// solids, which it crosses straight; both are folded away, and what is left of the line is straight.
// Only corners, mouths of joints and places where a thin solid can be entered are worth a line: elsewhere a shortest
// path does not turn. A line may graze a corner: the shortest way is the limit of ways that pass it by.

import { AIR, columns, CONDUCTOR, type Grid } from './grid.ts';
import { type Contacts, type EdgeList, SIGHT, THROUGH } from './network.ts';
import type { Punctured, SolidOptions } from './pieces.ts';

/** Nearer than this (nanometres) a line counts as passing through the node itself. */
const GRAZE = 1e-3;
/** Folding settles in two or three rounds; a line that has not settled by then bends elsewhere. */
const ROUNDS = 6;
/** Numbers conductors apart from the bodies of solids. */
const NO_BODY = -1000;

/** The grid seen with the folded axis as `v`: y as it is, or x after swapping. */
interface View {
  readonly us: readonly number[];
  readonly vs: readonly number[];
  readonly cell: (u: number, v: number) => number;
  readonly node: (u: number, v: number) => number;
  readonly swapped: boolean;
}

export function collectSightLines(
  grid: Grid,
  contacts: Contacts,
  options: SolidOptions,
  edges: EdgeList,
): void {
  const corners = cornersPassed(grid, contacts);
  for (const node of corners) collectStraight(grid, edges, corners, node);
  const turns = [...turningNodes(grid, edges), ...corners].sort((a, b) => a - b);
  const nx = grid.xs.length;
  const width = columns(grid);
  const upright: View = {
    us: grid.xs,
    vs: grid.ys,
    cell: (u, v) => v * width + u,
    node: (u, v) => v * nx + u,
    swapped: false,
  };
  const sideways: View = {
    us: grid.ys,
    vs: grid.xs,
    cell: (u, v) => u * width + v,
    node: (u, v) => u * nx + v,
    swapped: true,
  };
  const thinUpright = grid.solids.some((s) => canBeThin(s, options, true));
  for (let p = 0; p < turns.length; p++) {
    for (let q = p + 1; q < turns.length; q++) {
      const [a, b] = [turns[p]!, turns[q]!];
      const [ai, aj, bi, bj] = [a % nx, Math.floor(a / nx), b % nx, Math.floor(b / nx)];
      if (ai === bi || aj === bj) continue;
      // turning nodes ascend, so `a` is the lower one
      const line = sightLine(grid, upright, options, ai, aj, bi, bj);
      if (line) edges.add(a, b, line.length, line.punctured, 0, SIGHT);
      if (!thinUpright) continue;
      const [l, r] = ai < bi ? [a, b] : [b, a];
      const across = sightLine(
        grid,
        sideways,
        options,
        ...([Math.floor(l / nx), l % nx, Math.floor(r / nx), r % nx] as const),
      );
      if (across?.punctured) edges.add(a, b, across.length, across.punctured, 0, SIGHT);
    }
  }
}

function canBeThin(solid: Grid['solids'][number], options: SolidOptions, alongX: boolean): boolean {
  const crossing = alongX ? solid.crossX : solid.crossY;
  if (crossing === 'strong') return false;
  if (crossing !== 'measured' || !solid.region) return true;
  const { x0, x1, y0, y1 } = solid.region;
  return (alongX ? x1 - x0 : y1 - y0) < options.leastThickness;
}

/** Grid nodes at air where a shortest path may turn or end, ascending. */
function turningNodes(grid: Grid, edges: EdgeList): readonly number[] {
  const nx = grid.xs.length;
  const width = columns(grid);
  const entered = new Set<number>();
  edges.kind.forEach((kind, e) => {
    if (kind !== THROUGH) return;
    entered.add(edges.from[e]!);
    entered.add(edges.to[e]!);
  });
  const nodes: number[] = [];
  const { owner, solids } = grid;
  const bodyAt = (cell: number) => {
    const here = owner[cell]!;
    return here >= 0 ? solids[here]!.body : here === AIR ? null : NO_BODY - here;
  };
  for (let node = 0; node < nx * grid.ys.length; node++) {
    const cell = Math.floor(node / nx) * width + (node % nx);
    const [a, b] = [bodyAt(cell), bodyAt(cell + 1)];
    const [c, d] = [bodyAt(cell + width), bodyAt(cell + width + 1)];
    const airs = Number(a === null) + Number(b === null) + Number(c === null) + Number(d === null);
    if (airs === 0 || airs === 4) continue;
    const diagonal = airs === 2 && (a === null) === (d === null);
    if (airs === 3 || diagonal || entered.has(node) || differ(a, b, c, d)) nodes.push(node);
  }
  return nodes;
}

/** Two different bodies among those that are not air. */
function differ(...bodies: readonly (number | null)[]): boolean {
  let first: number | null = null;
  for (const body of bodies) {
    if (body === null) continue;
    if (first !== null && body !== first) return true;
    first = body;
  }
  return false;
}

/** Nodes one nanometre off the corner of a conductor in air: there a line turns that passes it by. */
function cornersPassed(grid: Grid, { conductor }: Contacts): ReadonlySet<number> {
  const { xs, ys } = grid;
  const nx = xs.length;
  const near = (at: readonly number[], k: number, step: number) =>
    Math.abs((at[k + step] ?? Infinity) - at[k]!) === 1;
  const found = new Set<number>();
  const steps = [-1, 1] as const;
  for (let j = 0; j < ys.length; j++) {
    const ups = steps.filter((dy) => near(ys, j, dy));
    if (ups.length === 0) continue;
    for (let i = 0; i < xs.length; i++) {
      const touches = (dx: number) =>
        near(xs, i, dx) && ups.some((dy) => conductor[(j + dy) * nx + i + dx] !== -1);
      if (steps.some(touches) && isInAir(grid, j * nx + i)) found.add(j * nx + i);
    }
  }
  return found;
}

function isInAir(grid: Grid, node: number): boolean {
  const nx = grid.xs.length;
  const width = columns(grid);
  const cell = Math.floor(node / nx) * width + (node % nx);
  const { owner } = grid;
  return (
    owner[cell] === AIR &&
    owner[cell + 1] === AIR &&
    owner[cell + width] === AIR &&
    owner[cell + width + 1] === AIR
  );
}

/** Lines along x and y from a corner passed to the next corner or surface. */
function collectStraight(grid: Grid, edges: EdgeList, corners: ReadonlySet<number>, from: number): void {
  const nx = grid.xs.length;
  const width = columns(grid);
  for (const [dx, dy] of [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const) {
    let length = 0;
    for (let node = from; ;) {
      const [i, j] = [node % nx, Math.floor(node / nx)];
      if (i + dx < 0 || i + dx >= nx || j + dy < 0 || j + dy >= grid.ys.length) break;
      const next = (j + dy) * nx + i + dx;
      length += stepLength(grid, i, j, dx, dy, width);
      node = next;
      if (!isInAir(grid, node) || corners.has(node)) {
        // found from both ends between two corners, which does no harm
        edges.add(from, node, length, null, 0, SIGHT);
        break;
      }
    }
  }
}

/** One step along a grid line; climbing through a void that sags costs nothing. */
function stepLength(grid: Grid, i: number, j: number, dx: number, dy: number, width: number): number {
  if (dy === 0) return Math.abs(grid.xs[i + dx]! - grid.xs[i]!);
  const row = dy > 0 ? j + 1 : j;
  const sags = grid.sags[row * width + i] === 1 || grid.sags[row * width + i + 1] === 1;
  return sags ? 0 : Math.abs(grid.ys[j + dy]! - grid.ys[j]!);
}

interface Line {
  readonly length: number;
  /** Null: none. */
  readonly punctured: readonly Punctured[] | null;
}

/** Buffers for one line at a time: heights of the rows that it climbs, and what is left of them once folded. */
let heights = new Float64Array(256);
let folded = new Float64Array(256);

/** The line from (ua, va) to (ub, vb), va < vb in grid indices, or null where something is in the way. */
function sightLine(
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
  if (rows > heights.length) [heights, folded] = [new Float64Array(2 * rows), new Float64Array(2 * rows)];
  let height = 0;
  for (let r = 0; r < rows; r++) {
    heights[r] = folded[r] = vs[va + r + 1]! - vs[va + r]!;
    height += heights[r]!;
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
      const found = rowKind(grid, view, va + r + 1, at, next, near);
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
    if (!changed) return settled(grid, view, options, ua, va, ub, height, rows);
    height = 0;
    for (let r = 0; r < rows; r++) height += folded[r]!;
  }
  return null;
}

/**
 * What a line meets in one row between two places: air, a void that counts 0, a solid; null where it cannot go. `near`:
 * a column near both.
 */
function rowKind(
  grid: Grid,
  view: View,
  row: number,
  from: number,
  to: number,
  near: number,
): 'air' | 'void' | number | null {
  const lo = Math.min(from, to);
  const hi = Math.max(from, to);
  const { us } = view;
  const first = columnAt(us, lo + GRAZE, near);
  const last = Math.max(first, columnAt(us, hi - GRAZE, first));
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

/** Column of cells (as counted by the grid) that holds a coordinate, looked for from one that is near. */
function columnAt(lines: readonly number[], value: number, near: number): number {
  let column = near;
  while (column < lines.length && lines[column]! <= value) column++;
  while (column > 0 && lines[column - 1]! > value) column--;
  return column;
}

function settled(
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
  // the solid that the line is in, and how far through it
  let inside = -1;
  let through = 0;
  const leave = (): boolean => {
    if (inside < 0) return true;
    const solid = grid.solids[inside]!;
    const crossing = view.swapped ? solid.crossX : solid.crossY;
    if (crossing === 'strong') return false;
    if (crossing === 'measured' && through >= options.leastThickness) return false;
    punctured.push({ stuff: solid.stuff, count: crossing === 'measured' ? 1 : crossing });
    inside = -1;
    through = 0;
    return true;
  };
  for (let r = 0; r < rows; r++) {
    climbed += folded[r]!;
    const next = us[ua]! + (du * climbed) / height;
    const kind = rowKind(grid, view, va + r + 1, at, next, near);
    if (typeof kind === 'number') {
      const same = inside >= 0 && grid.solids[inside]!.body === grid.solids[kind]!.body;
      if (!same && !leave()) return null;
      inside = kind;
      through += heights[r]!;
    } else if (!leave()) return null;
    at = next;
    near = columnAt(us, at, near);
  }
  if (!leave()) return null;
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
