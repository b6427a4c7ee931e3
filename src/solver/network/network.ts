// The moves of a path as edges between grid nodes, packed by node. Node (i, j) has index j * nx + i; hidden nodes of
// turned-up edges follow after the grid's.
// One network serves both metrics: clearance crosses any gap of air and has sight lines besides, creepage leaves out the
// sight lines and the gaps that are not narrower than X.

import { columns, CONDUCTOR, type Grid } from './grid.ts';
import type { Punctured } from './pieces.ts';
import type { StuffId } from '#solver/section/build.ts';

export const SURFACE = 0;
export const THROUGH = 1;
export const ACROSS_AIR = 2;
export const CLOSED = 3;
/** A slanting line through air, for clearance only. */
export const SIGHT = 4;
/** A straight way through compound from corner to corner. */
export const SLANT = 5;

export interface Network {
  readonly grid: Grid;
  readonly nodes: number;
  /** Edges of node n are `start[n]` to `start[n + 1]`; from `sights[n]` on they are sight lines. */
  readonly start: Int32Array;
  readonly sights: Int32Array;
  readonly to: Int32Array;
  readonly cost: Float64Array;
  /** How much solid matter an edge goes through or along; nothing in solids whose joints are open. */
  readonly depth: Float64Array;
  /**
   * A way along closed joints, with proof, and through the solids between them is strong from this length on. Null: all
   * joints are open.
   */
  readonly solidFrom: number | null;
  /** Plies punctured by an edge: 0 none, else its place in `punctures` and one. */
  readonly puncture: Int32Array;
  readonly punctures: readonly (readonly Punctured[])[];
  /** What a slanting way into compound counts as besides what it punctures: its place in `punctures` and one; 0 none. */
  readonly compound: number;
  readonly rank: Uint8Array;
  /** The highest of `rank`, which is the worst. */
  readonly worstRank: number;
  readonly kind: Uint8Array;
  /** Conductor that a node touches: its index, -1 none, -2 several (then `touching` lists them). */
  readonly conductor: Int32Array;
  readonly touching: ReadonlyMap<number, readonly number[]>;
  /** Nodes of every conductor that any node touches. */
  readonly nodesOf: ReadonlyMap<number, readonly number[]>;
  /** Grid node that a hidden node stands for in a drawing. */
  readonly shownAt: readonly number[];
  /** It holds no sight line longer than this: no piece longer than this may be asked of it that needs one. */
  readonly sightsUpTo: number;
}

/** Edges while they are collected; each is walked both ways. A class, since it is a buffer that outlives one network. */
export class EdgeList {
  from = new Int32Array(FIRST_SIZE);
  to = new Int32Array(FIRST_SIZE);
  cost = new Float64Array(FIRST_SIZE);
  depth = new Float64Array(FIRST_SIZE);
  rank = new Uint8Array(FIRST_SIZE);
  kind = new Uint8Array(FIRST_SIZE);
  readonly punctured: (readonly Punctured[] | null)[] = [];
  count = 0;

  clear(): void {
    this.count = 0;
  }

  add(
    from: number,
    to: number,
    cost: number,
    punctured: readonly Punctured[] | null,
    rank: number,
    kind: number,
    depth = 0,
  ): void {
    const edge = this.count++;
    if (edge >= this.from.length) this.#grow();
    this.from[edge] = from;
    this.to[edge] = to;
    this.cost[edge] = cost;
    this.depth[edge] = depth;
    this.rank[edge] = rank;
    this.kind[edge] = kind;
    this.punctured[edge] = punctured;
  }

  /** Drops the edges that are not kept, telling each first; the others keep their order. */
  keep(keeps: (kind: number) => boolean, drop: (edge: number) => void): void {
    let kept = 0;
    for (let edge = 0; edge < this.count; edge++) {
      if (!keeps(this.kind[edge]!)) {
        drop(edge);
        continue;
      }
      this.from[kept] = this.from[edge]!;
      this.to[kept] = this.to[edge]!;
      this.cost[kept] = this.cost[edge]!;
      this.depth[kept] = this.depth[edge]!;
      this.rank[kept] = this.rank[edge]!;
      this.kind[kept] = this.kind[edge]!;
      this.punctured[kept] = this.punctured[edge]!;
      kept++;
    }
    this.count = kept;
  }

  #grow(): void {
    const size = 2 * this.from.length;
    const larger = <T extends Int32Array | Float64Array | Uint8Array>(old: T, made: T): T => {
      made.set(old);
      return made;
    };
    this.from = larger(this.from, new Int32Array(size));
    this.to = larger(this.to, new Int32Array(size));
    this.cost = larger(this.cost, new Float64Array(size));
    this.depth = larger(this.depth, new Float64Array(size));
    this.rank = larger(this.rank, new Uint8Array(size));
    this.kind = larger(this.kind, new Uint8Array(size));
  }
}

const FIRST_SIZE = 2048;

/** Conductors touched by every node. */
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

/** With the hidden nodes behind turned edges: they touch what the place that they stand at touches. */
export function withHidden(
  contacts: Contacts,
  { shownAt, behind }: { readonly shownAt: readonly number[]; readonly behind: ReadonlyMap<number, number> },
): Contacts {
  if (shownAt.length === 0) return contacts;
  const conductor = new Int32Array(contacts.conductor.length + shownAt.length).fill(-1);
  conductor.set(contacts.conductor);
  const touching = new Map(contacts.touching);
  for (const [hidden, node] of behind) {
    conductor[hidden] = contacts.conductor[node]!;
    const all = contacts.touching.get(node);
    if (all) touching.set(hidden, all);
  }
  return { conductor, touching };
}

function nodesByConductor({ conductor, touching }: Contacts): ReadonlyMap<number, readonly number[]> {
  const nodes = new Map<number, number[]>();
  const add = (touched: number, node: number): void => {
    const all = nodes.get(touched);
    if (all) all.push(node);
    else nodes.set(touched, [node]);
  };
  for (let node = 0; node < conductor.length; node++) {
    const touched = conductor[node]!;
    if (touched >= 0) add(touched, node);
    else if (touched === -2) for (const each of touching.get(node)!) add(each, node);
  }
  return nodes;
}

/** Packs collected edges by node, both ways; sight lines come last. */
export function packEdges(
  grid: Grid,
  contacts: Contacts,
  edges: EdgeList,
  shownAt: readonly number[],
  sightsUpTo: number,
  compound: { readonly solidFrom: number; readonly stuff: StuffId } | null,
): Network {
  const gridNodes = grid.xs.length * grid.ys.length;
  const nodes = gridNodes + shownAt.length;
  const n = edges.count;
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
    depth: new Float64Array(2 * n),
    puncture: new Int32Array(2 * n),
    rank: new Uint8Array(2 * n),
    kind: new Uint8Array(2 * n),
  };
  const put = (from: number, to: number, e: number, puncture: number) => {
    const at = next[from]!++;
    packed.to[at] = to;
    packed.cost[at] = edges.cost[e]!;
    packed.depth[at] = edges.depth[e]!;
    packed.puncture[at] = puncture;
    packed.rank[at] = edges.rank[e]!;
    packed.kind[at] = edges.kind[e]!;
  };
  let sights = next;
  for (let e = 0; e < n; e++) {
    // sight lines are collected last
    if (edges.kind[e] === SIGHT && sights === next) sights = next.slice();
    const punctured = edges.punctured[e];
    if (punctured) punctures.push(punctured);
    const puncture = punctured ? punctures.length : 0;
    put(edges.from[e]!, edges.to[e]!, e, puncture);
    put(edges.to[e]!, edges.from[e]!, e, puncture);
  }
  if (compound) punctures.push([{ stuff: compound.stuff, count: 1 }]);
  return {
    grid,
    nodes,
    start,
    sights,
    ...packed,
    ...contacts,
    worstRank: packed.rank.reduce((worst, rank) => Math.max(worst, rank), 0),
    nodesOf: nodesByConductor(contacts),
    punctures,
    shownAt,
    sightsUpTo,
    solidFrom: compound?.solidFrom ?? null,
    compound: compound ? punctures.length : 0,
  };
}
