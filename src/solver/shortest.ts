// Shortest pieces from one conductor to all others over a network, one for every set of plies punctured and every
// tracking rank that no other piece beats: a label-setting search. Labels leave the heap by length, so a label is
// final when it leaves; it is dropped when one with no more of anything has been at its node before.
// The search stops at conductors, and for a label when every other conductor has been reached with no more.

import { countOf, hopped, noMoreThan, withHop, withPlies, withRank } from './code.ts';
import type { Counting } from './counting.ts';
import type { LabelHeap } from './label-heap.ts';
import { ACROSS_AIR, CLOSED, type Network, SIGHT } from './network.ts';
import type { Metric } from './pieces.ts';

/** A shortest way to a conductor, from the source on: nodes passed and edges taken between them. */
export interface Arrival {
  readonly conductor: number;
  readonly length: number;
  readonly nodes: readonly number[];
  readonly edges: readonly number[];
}

export interface SearchLimits {
  readonly metric: Metric;
  /** Creepage crosses gaps of air narrower than this. */
  readonly x: number;
  /**
   * The conductors looked for, by their number, each with the length beyond which no way to it is wanted: by the count of
   * the first class where the list has several. Other conductors only stop a path.
   */
  readonly lengthTo: ReadonlyMap<number, readonly number[]>;
  /** Nothing outside these two x. */
  readonly window: readonly [number, number] | null;
}

export function shortestFrom(
  net: Network,
  source: number,
  counting: Counting,
  /** What each of the network's punctures counts. */
  plies: readonly number[],
  limits: SearchLimits,
  heap: LabelHeap,
): readonly Arrival[] {
  const { start, to, cost, kind, rank, puncture } = net;
  const { lengthTo } = limits;
  const onSurface = limits.metric === 'creepage';
  const byRank = counting.byRank && onSurface;
  const given = counting.enough.flatMap((most, cls) => (most === undefined ? [] : [{ most, cls }]));
  heap.clear();
  const arrivals: Arrival[] = [];
  // for every node its last settled label, which knows the one before
  const settledAt = new Int32Array(net.nodes).fill(-1);
  const arrived: number[][] = net.grid.conductors.map(() => []);
  const targets = net.present.filter((conductor) => lengthTo.has(conductor));
  const counts = Math.max(1, ...targets.map((target) => lengthTo.get(target)!.length));
  const longest = Array.from({ length: counts }, (_, count) =>
    Math.max(...targets.map((target) => longestBy(lengthTo.get(target)!, count))),
  );
  const outside = outsideOf(net, limits.window);
  const arrive = (conductor: number, label: number) => {
    if (!targets.includes(conductor)) return;
    const before = arrived[conductor]!;
    const code = withHop(heap.code[label]!, false);
    for (const known of before) if (noMoreThan(known, code)) return;
    before.push(code);
    arrivals.push(arrivalOf(heap, conductor, label));
  };
  for (let node = 0; node < net.nodes; node++) {
    const touched = net.conductor[node]!;
    const starts = touched === source || (touched === -2 && net.touching.get(node)!.includes(source));
    if (starts && !outside?.[node]) heap.push(node, 0, 0, -1, -1);
  }
  for (let label = heap.pop(); label >= 0; label = heap.pop()) {
    const node = heap.node[label]!;
    const length = heap.length[label]!;
    const code = heap.code[label]!;
    let beaten = false;
    for (let s = settledAt[node]!; s >= 0 && !beaten; s = heap.settledBefore[s]!) {
      beaten = noMoreThan(heap.code[s]!, code);
    }
    if (beaten) continue;
    heap.settledBefore[label] = settledAt[node]!;
    settledAt[node] = label;
    const touched = net.conductor[node]!;
    if (touched === -2) {
      const all = net.touching.get(node)!;
      for (const conductor of all) arrive(conductor, label);
      // a piece may end where a third conductor touches as well, so that it may start there too
      if (!all.includes(source)) continue;
    } else if (touched !== -1 && touched !== source) {
      arrive(touched, label);
      continue;
    }
    if (allReached(targets, arrived, code, length, lengthTo)) continue;
    const hop = hopped(code);
    const end = start[node + 1]!;
    edges: for (let e = start[node]!; e < end; e++) {
      const way = kind[e]!;
      if (onSurface && (way === SIGHT || (way === ACROSS_AIR && cost[e]! >= limits.x))) continue;
      const closed = way === CLOSED;
      // one closed joint is walked in one hop, measured as a whole
      if (closed && hop) continue;
      const next = to[e]!;
      const far = length + cost[e]!;
      if (outside?.[next]) continue;
      let picked = code;
      if (puncture[e]! > 0) {
        picked = withPlies(code, plies[puncture[e]! - 1]!);
        for (const { most, cls } of given) if (countOf(picked, cls) >= most) continue edges;
      }
      if (far > longestBy(longest, countOf(picked, 0))) continue;
      if (byRank && rank[e]! > 0) picked = withRank(picked, rank[e]!);
      if (closed !== hop) picked = withHop(picked, closed);
      for (let s = settledAt[next]!; s >= 0; s = heap.settledBefore[s]!) {
        if (noMoreThan(heap.code[s]!, picked)) continue edges;
      }
      heap.push(next, far, picked, label, e);
    }
  }
  return arrivals;
}

const longestBy = (lengths: readonly number[], count: number): number =>
  lengths[Math.min(count, lengths.length - 1)]!;

/** Every target is too far, or has been reached by a way that is no longer and has no more of anything. */
function allReached(
  targets: readonly number[],
  arrived: readonly number[][],
  code: number,
  length: number,
  lengthTo: SearchLimits['lengthTo'],
): boolean {
  const count = countOf(code, 0);
  for (const target of targets) {
    let reached = length > longestBy(lengthTo.get(target)!, count);
    for (const known of arrived[target]!) {
      if (reached) break;
      reached = noMoreThan(known, code);
    }
    if (!reached) return false;
  }
  return true;
}

function arrivalOf(heap: LabelHeap, conductor: number, label: number): Arrival {
  const nodes: number[] = [];
  const edges: number[] = [];
  for (let at = label; at >= 0; at = heap.previous[at]!) {
    nodes.push(heap.node[at]!);
    if (heap.edge[at]! >= 0) edges.push(heap.edge[at]!);
  }
  return { conductor, length: heap.length[label]!, nodes: nodes.reverse(), edges: edges.reverse() };
}

/** Nodes left of or right of the window; null where there is none. */
function outsideOf(net: Network, window: SearchLimits['window']): Uint8Array | null {
  if (!window) return null;
  const { xs } = net.grid;
  const onGrid = net.nodes - net.shownAt.length;
  const outside = new Uint8Array(net.nodes);
  for (let node = 0; node < net.nodes; node++) {
    const x = xs[(node < onGrid ? node : net.shownAt[node - onGrid]!) % xs.length]!;
    if (x < window[0] || x > window[1]) outside[node] = 1;
  }
  return outside;
}
