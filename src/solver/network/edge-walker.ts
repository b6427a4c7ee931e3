// The moves along every grid line: along surfaces and joints, straight through thin solids, across air.

import { AIR, columns, CONDUCTOR, type Grid, type GridSolid } from './grid.ts';
import { ACROSS_AIR, CLOSED, type EdgeList, SURFACE, THROUGH } from './network.ts';
import type { SolidOptions } from './pieces.ts';
import { TurnedEdges } from './turned-edges.ts';
import { puncturedBy } from './runs.ts';

/** Surfaces, joints and runs straight through solids or across air, along every grid line. */
export function collectEdges(grid: Grid, options: SolidOptions, edges: EdgeList): HiddenNodes {
  const walk = new Walk(grid, options, edges);
  const [nx, ny] = [grid.xs.length, grid.ys.length];
  const width = columns(grid);
  for (let j = 0; j < ny; j++) walk.line(j * nx, 1, nx, j * width + 1, 1, width, grid.xs, false);
  for (let i = 0; i < nx; i++) walk.line(i, nx, ny, width + i, width, 1, grid.ys, true);
  const behind = walk.turned.finish((node) => node % nx);
  const { shownAt, outAt } = walk.turned;
  return { shownAt, outAt, behind };
}

/** Nodes that stand behind turned edges, numbered on from the grid's. */
export interface HiddenNodes {
  /** Grid node that each stands for in a drawing. */
  readonly shownAt: readonly number[];
  /** Grid nodes where a way comes out from behind. */
  readonly outAt: ReadonlySet<number>;
  /** Those that touch what the grid node there touches, with that node. */
  readonly behind: ReadonlyMap<number, number>;
}

/** Walks one grid line after the other; a class, since it remembers the hidden nodes that it made. */
class Walk {
  readonly turned: TurnedEdges;
  /** Runs through solids on one side of the line at hand, and the body of each. */
  readonly #found = new Map<number, number>();

  constructor(
    readonly grid: Grid,
    readonly options: SolidOptions,
    readonly edges: EdgeList,
  ) {
    const { xs, ys } = grid;
    this.turned = new TurnedEdges(edges, xs.length * ys.length, (node) => ys[Math.floor(node / xs.length)]!);
  }

  /**
   * One line: its nodes are `node + k * step`, its edge k has the cells `cell + k * cellStep` and that plus `beside`
   * on its two sides (below and above, or left and right).
   */
  line(
    node: number,
    step: number,
    count: number,
    cell: number,
    cellStep: number,
    beside: number,
    at: readonly number[],
    vertical: boolean,
  ): void {
    this.#throughSolids(node, step, count, cell, cellStep, beside, at, vertical);
    const { owner, sags, solids } = this.grid;
    let runFrom = -1;
    let runLength = 0;
    this.turned.stop();
    for (let k = 0; k < count; k++) {
      const a = cell + k * cellStep;
      const from = node + k * step;
      const last = k === count - 1;
      const one = last ? CONDUCTOR : owner[a]!;
      const other = last ? CONDUCTOR : owner[a + beside]!;
      const air = one === AIR && other === AIR;
      if (runFrom >= 0 && (!air || this.#isSurface(from))) {
        this.#acrossAir(runFrom, from, runLength);
        runFrom = -1;
      }
      if (last) return;
      const length = at[k + 1]! - at[k]!;
      const sagging =
        vertical && ((one === AIR && sags[a] === 1) || (other === AIR && sags[a + beside] === 1));
      if (air) {
        this.turned.stop();
        if (runFrom < 0) {
          runFrom = from;
          runLength = 0;
        }
        runLength += sagging ? 0 : length;
        continue;
      }
      const inside = one >= 0 && other >= 0 && solids[one]!.body === solids[other]!.body;
      if (inside || one <= CONDUCTOR || other <= CONDUCTOR) {
        this.turned.stop();
        continue;
      }
      this.#surface(from, from + step, one, other, length, sagging, vertical);
    }
  }

  /** Runs through one solid, on either side of the line: a solid is closed, so its own edge is inside it too. */
  #throughSolids(
    node: number,
    step: number,
    count: number,
    cell: number,
    cellStep: number,
    beside: number,
    at: readonly number[],
    vertical: boolean,
  ): void {
    const { owner, solids } = this.grid;
    const body = (a: number) => (owner[a]! >= 0 ? solids[owner[a]!]!.body : null);
    const found = this.#found;
    found.clear();
    for (let side = 0; side < 2; side++) {
      const near = side * beside;
      let start = 0;
      for (let k = 1; k < count; k++) {
        const before = cell + (k - 1) * cellStep + near;
        const now = k === count - 1 ? null : body(before + cellStep);
        if (now !== null && now === body(before)) continue;
        // a run inside one solid on both sides of the line is the same run twice; two solids may end alike
        const run = start * count + k;
        const at0 = start;
        const through = body(before);
        start = k;
        if (through === null || found.get(run) === through) continue;
        found.set(run, through);
        this.#through(
          node + at0 * step,
          node + k * step,
          solids[owner[before]!]!,
          at[k]! - at[at0]!,
          vertical,
        );
      }
    }
  }

  #acrossAir(from: number, to: number, length: number): void {
    if (this.#isSurface(from) && this.#isSurface(to)) {
      this.edges.add(from, to, length, null, 0, ACROSS_AIR);
    }
  }

  #through(from: number, to: number, solid: GridSolid, length: number, vertical: boolean): void {
    const punctured = puncturedBy(this.options, solid, vertical ? solid.crossY : solid.crossX, length);
    const depth = this.grid.potted || solid.closed ? length : 0;
    if (punctured) this.edges.add(from, to, 0, [punctured], 0, THROUGH, depth);
  }

  #surface(
    from: number,
    to: number,
    one: number,
    other: number,
    length: number,
    sagging: boolean,
    vertical: boolean,
  ): void {
    const { solids } = this.grid;
    const a = one >= 0 ? solids[one]! : null;
    const b = other >= 0 ? solids[other]! : null;
    const rank = Math.max(this.#rank(a), this.#rank(b));
    const joint = a !== null && b !== null;
    const closed = joint && (this.grid.potted || isCemented(a, b));
    const kind = closed ? CLOSED : SURFACE;
    const turned = vertical && joint ? turnedUp(a, b) : null;
    const edge = { from, to, cost: sagging ? 0 : length, rank, kind };
    if (turned) return this.turned.pass(edge, turned.turnUp);
    this.edges.add(from, to, edge.cost, null, rank, kind);
    if (vertical && (a?.isMoulding || b?.isMoulding)) this.turned.goOn(edge);
    else this.turned.stop();
  }

  #rank(solid: GridSolid | null): number {
    return solid ? (this.options.trackingRank[solid.stuff] ?? 0) : 0;
  }

  #isSurface(node: number): boolean {
    const width = columns(this.grid);
    const nx = this.grid.xs.length;
    const cell = Math.floor(node / nx) * width + (node % nx);
    const { owner } = this.grid;
    return !(
      owner[cell] === AIR &&
      owner[cell + 1] === AIR &&
      owner[cell + width] === AIR &&
      owner[cell + width + 1] === AIR
    );
  }
}

/** A joint between two plies of one cemented layer. */
const isCemented = (a: GridSolid, b: GridSolid): boolean =>
  a.closed && b.closed && a.region !== null && a.region.layer !== null && a.region.layer === b.region?.layer;

/** The solid whose edge is turned up the flange, at a joint of the two. */
function turnedUp(a: GridSolid, b: GridSolid): GridSolid | null {
  const solid = a.isMoulding ? b : a;
  return a.isMoulding !== b.isMoulding && solid.turnUp > 0 ? solid : null;
}
