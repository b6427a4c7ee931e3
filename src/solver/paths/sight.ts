// Straight lines through air of any length (clearance only), between the places where a path may turn.
// Only corners, mouths of joints and places where a thin solid can be entered are worth a line: elsewhere a shortest
// path does not turn. A line may graze a corner: the shortest way is the limit of ways that pass it by.

import { AIR, canBeCrossed, columns, type Grid } from '#solver/network/grid.ts';
import { type Contacts, type EdgeList, SIGHT, THROUGH } from '#solver/network/network.ts';
import type { PathFinder } from './path-finder.ts';
import type { SolidOptions } from '#solver/network/pieces.ts';
import { sightLine, type View } from '#solver/network/sight-line.ts';

/** Numbers conductors apart from the bodies of solids. */
const NO_BODY = -1000;

export function collectSightLines(
  grid: Grid,
  contacts: Contacts & { readonly outAt: ReadonlySet<number> },
  options: SolidOptions,
  { edges, line: buffer }: Pick<PathFinder, 'edges' | 'line'>,
  upTo: number,
): void {
  const corners = new Set([...cornersPassed(grid, contacts), ...edgesOfVoids(grid)]);
  for (const node of corners) collectStraight(grid, edges, corners, node);
  const turns = [...turningNodes(grid, edges, contacts.outAt), ...corners].sort((a, b) => a - b);
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
  const thinUpright = grid.solids.some((s) => canBeCrossed(s, options, true));
  const column = turns.map((node) => node % nx);
  const row = turns.map((node) => Math.floor(node / nx));
  // a line that begins or ends in a solid goes on from the node at that solid's other face
  const opens = turns.map((_, p) => openTo(grid, column[p]!, row[p]!));
  // turning nodes ascend, so `p` is the lower one
  for (let p = 0; p < turns.length; p++) {
    const ai = column[p]!;
    const aj = row[p]!;
    for (let q = p + 1; q < turns.length; q++) {
      const bi = column[q]!;
      const bj = row[q]!;
      if (ai === bi || aj === bj) continue;
      const isRight = ai < bi;
      if ((opens[p]! & (isRight ? UP_RIGHT : UP_LEFT)) === 0) continue;
      if ((opens[q]! & (isRight ? DOWN_LEFT : DOWN_RIGHT)) === 0) continue;
      // the way along x always counts; upright a void may sag
      if (Math.abs(grid.xs[ai]! - grid.xs[bi]!) > upTo) continue;
      const line = sightLine(buffer, grid, upright, options, ai, aj, bi, bj);
      if (line && line.length <= upTo) edges.add(turns[p]!, turns[q]!, line.length, line.punctured, 0, SIGHT);
      if (!thinUpright) continue;
      const across = isRight
        ? sightLine(buffer, grid, sideways, options, aj, ai, bj, bi)
        : sightLine(buffer, grid, sideways, options, bj, bi, aj, ai);
      if (across?.punctured && across.length <= upTo)
        edges.add(turns[p]!, turns[q]!, across.length, across.punctured, 0, SIGHT);
    }
  }
}

const DOWN_LEFT = 1;
const DOWN_RIGHT = 2;
const UP_LEFT = 4;
const UP_RIGHT = 8;

/** The sides to which air lies at a node. */
function openTo(grid: Grid, i: number, j: number): number {
  const below = j * columns(grid) + i;
  const above = below + columns(grid);
  const { owner } = grid;
  return (
    (owner[below] === AIR ? DOWN_LEFT : 0) |
    (owner[below + 1] === AIR ? DOWN_RIGHT : 0) |
    (owner[above] === AIR ? UP_LEFT : 0) |
    (owner[above + 1] === AIR ? UP_RIGHT : 0)
  );
}

/** Grid nodes at air where a shortest path may turn or end, ascending; ways also enter the air at some `more`. */
function turningNodes(grid: Grid, edges: EdgeList, more: ReadonlySet<number>): readonly number[] {
  const nx = grid.xs.length;
  const width = columns(grid);
  const entered = new Set<number>(more);
  for (let e = 0; e < edges.count; e++) {
    if (edges.kind[e] !== THROUGH) continue;
    entered.add(edges.from[e]!);
    entered.add(edges.to[e]!);
  }
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
  const besides = xs.map((_, i) => stepsBeside(xs, i));
  const found = new Set<number>();
  for (let j = 0; j < ys.length; j++) {
    for (const dy of stepsBeside(ys, j)) {
      for (let i = 0; i < nx; i++) {
        const touches = besides[i]!.some((dx) => conductor[(j + dy) * nx + i + dx] !== -1);
        if (touches && isInAir(grid, j * nx + i)) found.add(j * nx + i);
      }
    }
  }
  return found;
}

/** To which neighbours it is one nanometre from a line. */
const stepsBeside = (at: readonly number[], k: number): readonly (-1 | 1)[] =>
  ([-1, 1] as const).filter((step) => Math.abs((at[k + step] ?? Infinity) - at[k]!) === 1);

/**
 * Nodes in air at the side of a void whose height counts 0: a line may turn there. Only above the rim of a former that is
 * overfull does a void end in air; elsewhere it ends at walls.
 */
function edgesOfVoids(grid: Grid): readonly number[] {
  const { xs, ys, sags } = grid;
  const nx = xs.length;
  const width = columns(grid);
  const found: number[] = [];
  if (!sags.includes(1)) return found;
  for (let node = 0; node < nx * ys.length; node++) {
    const cell = Math.floor(node / nx) * width + (node % nx);
    const differs = (left: number) => sags[left] !== sags[left + 1];
    if ((differs(cell) || differs(cell + width)) && isInAir(grid, node)) found.push(node);
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

/** Lines along x and y from a place where a line may turn in air to the next one or a surface. */
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
