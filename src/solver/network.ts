// The moves of a path as edges between grid nodes: along surfaces and joints, straight through thin solids,
// across air. Node (i, j) has index j * nx + i; hidden nodes of turned-up edges follow after the grid's.
// One network serves both metrics: clearance crosses any gap of air and has sight lines besides, creepage leaves out the
// sight lines and the gaps that are not narrower than X.

import { AIR, columns, CONDUCTOR, type Grid, type GridSolid } from './grid.ts';
import type { Punctured, SolidOptions } from './pieces.ts';

export const SURFACE = 0;
export const THROUGH = 1;
export const ACROSS_AIR = 2;
export const CLOSED = 3;
/** A slanting line through air, for clearance only. */
export const SIGHT = 4;

export interface Network {
  readonly grid: Grid;
  readonly nodes: number;
  /** Edges of node n are `start[n]` to `start[n + 1]`; from `sights[n]` on they are sight lines. */
  readonly start: Int32Array;
  readonly sights: Int32Array;
  readonly to: Int32Array;
  readonly cost: Float64Array;
  /** Plies punctured by an edge: 0 none, else its place in `punctures` and one. */
  readonly puncture: Int32Array;
  readonly punctures: readonly (readonly Punctured[])[];
  readonly rank: Uint8Array;
  readonly kind: Uint8Array;
  /** Conductor that a node touches: its index, -1 none, -2 several (then `touching` lists them). */
  readonly conductor: Int32Array;
  readonly touching: ReadonlyMap<number, readonly number[]>;
  /** Conductors that any node touches. */
  readonly present: readonly number[];
  /** Grid node that a hidden node stands for in a drawing. */
  readonly shownAt: readonly number[];
}

/** Edges while they are collected; each is walked both ways. */
export class EdgeList {
  readonly from: number[] = [];
  readonly to: number[] = [];
  readonly cost: number[] = [];
  readonly punctured: (readonly Punctured[] | null)[] = [];
  readonly rank: number[] = [];
  readonly kind: number[] = [];

  add(
    from: number,
    to: number,
    cost: number,
    punctured: readonly Punctured[] | null,
    rank: number,
    kind: number,
  ): void {
    this.from.push(from);
    this.to.push(to);
    this.cost.push(cost);
    this.punctured.push(punctured);
    this.rank.push(rank);
    this.kind.push(kind);
  }
}

/** Conductors touched by every node of the grid. */
export type Contacts = Pick<Network, 'conductor' | 'touching'>;

export function contactsOf(grid: Grid): Contacts {
  const width = columns(grid);
  const [nx, ny] = [grid.xs.length, grid.ys.length];
  const conductor = new Int32Array(nx * ny).fill(-1);
  const touching = new Map<number, readonly number[]>();
  for (let j = 0; j < ny; j++) {
    for (let i = 0; i < nx; i++) {
      const cell = j * width + i;
      const node = j * nx + i;
      for (let corner = 0; corner < 4; corner++) {
        const owner = grid.owner[cell + (corner & 1) + (corner >> 1) * width]!;
        if (owner > CONDUCTOR) continue;
        const found = CONDUCTOR - owner;
        const known = conductor[node]!;
        if (known === found) continue;
        if (known === -1) conductor[node] = found;
        else {
          const all = touching.get(node) ?? [known];
          if (!all.includes(found)) touching.set(node, [...all, found]);
          conductor[node] = -2;
        }
      }
    }
  }
  return { conductor, touching };
}

/** Surfaces, joints and runs straight through solids or across air, along every grid line. */
export function collectEdges(grid: Grid, options: SolidOptions, edges: EdgeList): readonly number[] {
  const walk = new Walk(grid, options, edges);
  const [nx, ny] = [grid.xs.length, grid.ys.length];
  const width = columns(grid);
  for (let j = 0; j < ny; j++) walk.line(j * nx, 1, nx, j * width + 1, 1, width, grid.xs, false);
  for (let i = 0; i < nx; i++) walk.line(i, nx, ny, width + i, width, 1, grid.ys, true);
  return walk.shownAt;
}

/** Walks one grid line after the other; a class, since it remembers the hidden nodes that it made. */
class Walk {
  readonly shownAt: number[] = [];
  readonly #hidden = new Map<string, number>();
  /** Runs through solids on one side of the line at hand, and the body of each. */
  readonly #found = new Map<number, number>();
  readonly #gridNodes: number;

  constructor(
    readonly grid: Grid,
    readonly options: SolidOptions,
    readonly edges: EdgeList,
  ) {
    this.#gridNodes = grid.xs.length * grid.ys.length;
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
        if (runFrom < 0) {
          runFrom = from;
          runLength = 0;
        }
        runLength += sagging ? 0 : length;
        continue;
      }
      const inside = one >= 0 && other >= 0 && solids[one]!.body === solids[other]!.body;
      if (inside || one <= CONDUCTOR || other <= CONDUCTOR) continue;
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
    const crossing = vertical ? solid.crossY : solid.crossX;
    if (crossing === 'strong') return;
    const weak = this.options.weak.includes(solid.stuff) && (vertical || solid.region?.kind !== 'ply');
    if (crossing === 'measured' && length >= this.options.leastThickness && !weak) return;
    const plies = crossing === 'measured' ? 1 : crossing;
    this.edges.add(from, to, 0, [{ stuff: solid.stuff, count: plies }], 0, THROUGH);
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
    const cost = sagging ? 0 : length;
    if (!turned) {
      this.edges.add(from, to, cost, null, rank, kind);
      return;
    }
    // past edges turned up the flange: once up and once down, however many plies are passed
    this.edges.add(this.#behind(from, turned, rank), this.#behind(to, turned, rank), cost, null, rank, kind);
  }

  /** The hidden node at the upper edge of a turned-up ply, reached from `node` along the turned part. */
  #behind(node: number, solid: GridSolid, rank: number): number {
    // every layer is passed by itself: between two of them the path is back at the flange
    const key = `${node} ${solid.region?.layer}`;
    const known = this.#hidden.get(key);
    if (known !== undefined) return known;
    const hidden = this.#gridNodes + this.shownAt.length;
    this.shownAt.push(node);
    this.#hidden.set(key, hidden);
    this.edges.add(node, hidden, solid.turnUp, null, rank, SURFACE);
    return hidden;
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

/** Packs collected edges by node, both ways. */
export function packEdges(
  grid: Grid,
  contacts: Contacts,
  edges: EdgeList,
  shownAt: readonly number[],
): Network {
  const gridNodes = grid.xs.length * grid.ys.length;
  const nodes = gridNodes + shownAt.length;
  const conductor = new Int32Array(nodes).fill(-1);
  conductor.set(contacts.conductor);
  const present = new Set<number>([...contacts.touching.values()].flat());
  for (const touched of conductor) if (touched >= 0) present.add(touched);
  const n = edges.from.length;
  const start = new Int32Array(nodes + 1);
  for (let e = 0; e < n; e++) {
    start[edges.from[e]! + 1]!++;
    start[edges.to[e]! + 1]!++;
  }
  for (let v = 0; v < nodes; v++) start[v + 1]! += start[v]!;
  const next = start.slice(0, nodes);
  const punctures: (readonly Punctured[])[] = [];
  const packed = {
    to: new Int32Array(2 * n),
    cost: new Float64Array(2 * n),
    puncture: new Int32Array(2 * n),
    rank: new Uint8Array(2 * n),
    kind: new Uint8Array(2 * n),
  };
  const put = (from: number, to: number, e: number, puncture: number) => {
    const at = next[from]!++;
    packed.to[at] = to;
    packed.cost[at] = edges.cost[e]!;
    packed.puncture[at] = puncture;
    packed.rank[at] = edges.rank[e]!;
    packed.kind[at] = edges.kind[e]!;
  };
  const putAll = (wanted: (kind: number) => boolean) => {
    for (let e = 0; e < n; e++) {
      if (!wanted(edges.kind[e]!)) continue;
      const punctured = edges.punctured[e];
      if (punctured) punctures.push(punctured);
      const puncture = punctured ? punctures.length : 0;
      put(edges.from[e]!, edges.to[e]!, e, puncture);
      put(edges.to[e]!, edges.from[e]!, e, puncture);
    }
  };
  putAll((kind) => kind !== SIGHT);
  const sights = next.slice();
  putAll((kind) => kind === SIGHT);
  return {
    grid,
    nodes,
    start,
    sights,
    ...packed,
    conductor,
    touching: contacts.touching,
    present: [...present],
    punctures,
    shownAt,
  };
}
