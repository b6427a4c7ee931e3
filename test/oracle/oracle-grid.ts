// The oracle's grid: lines at every coordinate of a section (and finer ones where asked), what fills each cell, and
// what kind of way each edge between two nodes is. Nodes are i + nx * j; cells lie up and right of their node.

import type { Region, Section, SolidRegion } from '#solver/section/section.ts';

export type GridSection = Pick<Section, 'regions' | 'frame' | 'sagging' | 'potted'>;

export const OUTSIDE = -2;
export const AIR = -1;

export interface Grid {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly regions: readonly Region[];
  /** Index in `regions`, or AIR, or OUTSIDE; cell (i, j) at i + (nx - 1) * j. */
  readonly cells: Int32Array;
  readonly sags: Uint8Array;
  readonly conductors: readonly string[];
  /** Bits of the conductors that a node touches. */
  readonly touches: Uint32Array;
  /** A node that lies on some solid or conductor. */
  readonly onSomething: Uint8Array;
}

export function gridOf(section: GridSection, extraX: readonly number[], extraY: readonly number[]): Grid {
  const all = [...section.regions, section.frame, ...section.sagging];
  const lines = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b);
  const xs = lines([...all.flatMap((r) => [r.x0, r.x1]), ...extraX]);
  const ys = lines([...all.flatMap((r) => [r.y0, r.y1]), ...extraY]);
  const columns = xs.length - 1;
  const cells = new Int32Array(columns * (ys.length - 1)).fill(AIR);
  const sags = new Uint8Array(cells.length);
  const { frame } = section;
  eachCell(xs, ys, { x0: xs[0]!, y0: ys[0]!, x1: xs[columns]!, y1: ys[ys.length - 1]! }, (at, x, y) => {
    if (x < frame.x0 || x >= frame.x1 || y < frame.y0 || y >= frame.y1) cells[at] = OUTSIDE;
  });
  section.regions.forEach((region, index) => eachCell(xs, ys, region, (at) => (cells[at] = index)));
  for (const rect of section.sagging) eachCell(xs, ys, rect, (at) => (sags[at] = 1));
  const conductors = lines2(section.regions.flatMap((r) => (r.kind === 'conductor' ? [r.conductor] : [])));
  if (conductors.length > 31) throw new Error('the oracle tells at most 31 conductors apart');
  const grid: Grid = {
    xs,
    ys,
    regions: section.regions,
    cells,
    sags,
    conductors,
    touches: new Uint32Array(xs.length * ys.length),
    onSomething: new Uint8Array(xs.length * ys.length),
  };
  markNodes(grid);
  return grid;
}

const lines2 = (ids: readonly string[]): string[] => [...new Set(ids)].sort();

type Rectangle = { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number };

function eachCell(
  xs: readonly number[],
  ys: readonly number[],
  r: Rectangle,
  visit: (at: number, x: number, y: number) => void,
): void {
  const columns = xs.length - 1;
  for (let j = ys.indexOf(r.y0); ys[j]! < r.y1; j++) {
    for (let i = xs.indexOf(r.x0); xs[i]! < r.x1; i++) visit(i + columns * j, xs[i]!, ys[j]!);
  }
}

export function cellAt(grid: Grid, i: number, j: number): number {
  const columns = grid.xs.length - 1;
  if (i < 0 || j < 0 || i >= columns || j >= grid.ys.length - 1) return OUTSIDE;
  return grid.cells[i + columns * j]!;
}

export function sagAt(grid: Grid, i: number, j: number): boolean {
  const columns = grid.xs.length - 1;
  if (i < 0 || j < 0 || i >= columns || j >= grid.ys.length - 1) return false;
  return grid.sags[i + columns * j] === 1;
}

function markNodes(grid: Grid): void {
  const nx = grid.xs.length;
  grid.ys.forEach((_, j) =>
    grid.xs.forEach((_, i) => {
      for (const [a, b] of [
        [i - 1, j - 1],
        [i, j - 1],
        [i - 1, j],
        [i, j],
      ] as const) {
        const region = grid.regions[cellAt(grid, a, b)];
        if (region === undefined) continue;
        grid.onSomething[i + nx * j] = 1;
        if (region.kind === 'conductor')
          grid.touches[i + nx * j]! |= 1 << grid.conductors.indexOf(region.conductor);
      }
    }),
  );
}

export interface Edge {
  readonly to: number;
  /** With travel along y across a sagging void left out. */
  readonly length: number;
  readonly kind: 'surface' | 'air' | 'inside' | 'metal' | 'none';
  /** Kind `inside`: the solid; `surface`: the ply whose turned-up edge lies at a flange here. */
  readonly solid: SolidRegion | null;
  readonly closed: boolean;
  /** A flange, tube or divider on one side. */
  readonly atFlange: boolean;
}

export const STEPS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;

/** The edge from a node one step along an axis; null at the end of the grid. */
export function edgeFrom(
  grid: Grid,
  node: number,
  step: readonly [number, number],
  potted: boolean,
): Edge | null {
  const nx = grid.xs.length;
  const i = node % nx;
  const j = Math.floor(node / nx);
  const [di, dj] = step;
  const x = grid.xs[i + di];
  const y = grid.ys[j + dj];
  if (x === undefined || y === undefined) return null;
  // The two cells on either side of the edge.
  const ci = di < 0 ? i - 1 : i;
  const cj = dj < 0 ? j - 1 : j;
  const [ai, aj] = di === 0 ? [i - 1, cj] : [ci, j - 1];
  const [bi, bj] = di === 0 ? [i, cj] : [ci, j];
  const free = dj !== 0 && (sagAt(grid, ai, aj) || sagAt(grid, bi, bj));
  const length = free ? 0 : Math.abs(x - grid.xs[i]!) + Math.abs(y - grid.ys[j]!);
  const to = i + di + nx * (j + dj);
  return { to, length, ...between(grid, cellAt(grid, ai, aj), cellAt(grid, bi, bj), potted) };
}

function between(grid: Grid, a: number, b: number, potted: boolean): Omit<Edge, 'to' | 'length'> {
  const one = grid.regions[a];
  const other = grid.regions[b];
  const atFlange = one?.kind === 'moulding' || other?.kind === 'moulding';
  if (a === OUTSIDE && b === OUTSIDE) return { kind: 'none', solid: null, closed: false, atFlange };
  if (one?.kind === 'conductor' || other?.kind === 'conductor')
    return { kind: 'metal', solid: null, closed: false, atFlange };
  if (one === undefined || other === undefined) {
    const kind = one === undefined && other === undefined ? 'air' : 'surface';
    return { kind, solid: null, closed: potted, atFlange };
  }
  if (one.body === other.body) return { kind: 'inside', solid: one, closed: false, atFlange };
  const turned = [one, other].find((s) => s.turnUp > 0) ?? null;
  const closed = potted || isCemented(one, other);
  return { kind: 'surface', solid: atFlange ? turned : null, closed, atFlange };
}

/** Only the joints between the plies of one layer are cemented, not those to its neighbours. */
const isCemented = (a: SolidRegion, b: SolidRegion): boolean =>
  a.closed && b.closed && a.layer !== null && a.layer === b.layer;
