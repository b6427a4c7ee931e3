// Tape edges that are turned up a flange. Who climbs past them and comes back to the tape goes up behind the turned part
// and down before it, once for all plies and layers that lie on each other; who goes on up the flange is behind them
// already and gains nothing. Places behind are hidden nodes, which a drawing shows at the flange.

import type { EdgeList } from './network.ts';
import { ACROSS_AIR, THROUGH } from './network.ts';

/** A surface edge up a flange, as the walk meets it. */
export interface UpEdge {
  readonly from: number;
  readonly to: number;
  readonly cost: number;
  readonly rank: number;
  readonly kind: number;
}

/** A way up behind: where it comes from and how far that is below the node that it has reached. */
interface Track {
  readonly name: number;
  readonly from: { readonly node: number; readonly cost: number };
  readonly at: number;
  /** From this height on it is no longer behind anything. */
  readonly until: number;
  readonly rank: number;
  readonly kind: number;
}

/** Grows while lines are walked, hence a class. */
export class TurnedEdges {
  /** By hidden node, counted from the first: the grid node that it stands for in a drawing. */
  readonly shownAt: number[] = [];
  /** Nodes of the flange where a way comes out from behind turned edges. */
  readonly outAt = new Set<number>();
  /** Hidden nodes that stand for a place of the flange above turned edges, by the node there and the way that led there. */
  readonly #above = new Map<number, Map<number, number>>();
  readonly #edges: EdgeList;
  readonly #gridNodes: number;
  readonly #heightOf: (node: number) => number;
  /** Nodes of the run of turned edges at hand, the height of each above the first, and the hidden node of each. */
  #run: { node: number; height: number; hidden: number }[] = [];
  #turnUp = 0;
  #worst = { rank: 0, kind: 0 };
  #tracks: readonly Track[] = [];
  #names = 0;

  constructor(edges: EdgeList, gridNodes: number, heightOf: (node: number) => number) {
    this.#edges = edges;
    this.#gridNodes = gridNodes;
    this.#heightOf = heightOf;
  }

  /** Past one edge of a ply that is turned up so far. */
  pass({ from, to, cost, rank, kind }: UpEdge, turnUp: number): void {
    // what comes up behind other edges is before these again
    for (const track of this.#tracks) this.#join(track, from, 0);
    this.#tracks = [];
    if (this.#run.at(-1)?.node !== from) {
      this.#run = [{ node: from, height: 0, hidden: this.#hide(from) }];
      this.#worst = { rank, kind };
    }
    this.#worst = { rank: Math.max(rank, this.#worst.rank), kind: Math.max(kind, this.#worst.kind) };
    const below = this.#run.at(-1)!;
    const above = { node: to, height: below.height + cost, hidden: this.#hide(to) };
    // between two layers turned up unequally far the shorter way counts
    for (const { node, hidden } of [below, above]) this.#edges.add(node, hidden, turnUp, null, rank, kind);
    this.#edges.add(below.hidden, above.hidden, cost, null, rank, kind);
    this.#run.push(above);
    this.#turnUp = turnUp;
  }

  /** On up the flange, past no turned edge. */
  goOn({ from, to, cost, rank, kind }: UpEdge): void {
    const tracks = [...this.#tracks.filter((track) => track.at === from), ...this.#begun(from)];
    this.#run = [];
    this.#tracks = tracks.flatMap((track) => {
      const next = { ...track, rank: Math.max(rank, track.rank), kind: Math.max(kind, track.kind) };
      if (this.#heightOf(to) >= track.until) {
        this.#join(next, to, cost);
        this.outAt.add(to);
        return [];
      }
      const hidden = this.#hide(to);
      this.#join(next, hidden, cost);
      const here = this.#above.get(to) ?? new Map<number, number>();
      this.#above.set(to, here.set(track.name, hidden));
      return [{ ...next, at: to, from: { node: hidden, cost: 0 } }];
    });
  }

  /** The flange ends, or metal lies at it. */
  stop(): void {
    this.#run = [];
    this.#tracks = [];
  }

  /**
   * Surfaces, joints and thin solids that lead off the flange above turned edges do so from behind them too; air there lies
   * before them. Returns the nodes behind, by place.
   */
  finish(columnOf: (node: number) => number): ReadonlyMap<number, number> {
    const edges = this.#edges;
    const count = this.#above.size === 0 ? 0 : edges.count;
    for (let e = 0; e < count; e++) {
      const [from, to, kind] = [edges.from[e]!, edges.to[e]!, edges.kind[e]!];
      if (from >= this.#gridNodes || to >= this.#gridNodes) continue;
      const isUpright = columnOf(from) === columnOf(to);
      if (kind === ACROSS_AIR || (isUpright && kind !== THROUGH)) continue;
      this.#copy(e, from, to, isUpright);
      this.#copy(e, to, from, isUpright);
    }
    return new Map(
      [...this.#above].flatMap(([node, here]) => [...here.values()].map((hidden) => [hidden, node] as const)),
    );
  }

  #copy(e: number, from: number, to: number, isUpright: boolean): void {
    const { cost, punctured, rank, kind } = this.#edges;
    for (const [track, hidden] of this.#above.get(from) ?? []) {
      const behind = isUpright ? (this.#above.get(to)?.get(track) ?? to) : to;
      this.#edges.add(hidden, behind, cost[e]!, punctured[e] ?? null, rank[e]!, kind[e]!);
      // who has left the flange is before the edges, however near to it
      if (!isUpright && kind[e] !== THROUGH) this.#edges.add(hidden, from, 0, null, rank[e]!, kind[e]!);
    }
  }

  /** From below all turned edges, and from between any two of them: who goes up between these is not between others. */
  #begun(at: number): readonly Track[] {
    const run = this.#run;
    const top = run.at(-1);
    if (top?.node !== at) return [];
    const until = this.#heightOf(at) + this.#turnUp;
    return run.slice(0, -1).map(({ node, height }) => ({
      name: this.#names++,
      from: { node, cost: top.height - height },
      at,
      until,
      ...this.#worst,
    }));
  }

  #join({ from, rank, kind }: Track, to: number, further: number): void {
    this.#edges.add(from.node, to, from.cost + further, null, rank, kind);
  }

  #hide(node: number): number {
    this.shownAt.push(node);
    return this.#gridNodes + this.shownAt.length - 1;
  }
}
