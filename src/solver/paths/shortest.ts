// Shortest pieces from one conductor to all others over a network, one for every set of plies punctured and every
// tracking rank that no other piece beats: one that is no longer, through no more plies, along no better material. A
// label-setting search. Labels leave the heap by length, so a label is final when it leaves; it is dropped when one with
// no more of anything has been at its node before.
// The search stops at conductors, and for a label when every conductor looked for has been reached with no more or cannot
// be reached within its length.

import {
  alongWorst,
  begun,
  countOf,
  hopped,
  noMoreThan,
  withHop,
  withMaterial,
  withPlies,
} from './path-label.ts';
import type { Counting } from './ply-count.ts';
import type { LabelHeap } from './label-heap.ts';
import { ACROSS_AIR, CLOSED, SLANT, THROUGH, type Network } from '#solver/network/network.ts';
import type { PathFinder } from './path-finder.ts';
import type { Metric } from '#units/terms.ts';

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
  { heap, bounds }: PathFinder,
): readonly Arrival[] {
  const { start, sights, to, cost, kind, rank, puncture, depth, solidFrom } = net;
  const onSurface = limits.metric === 'creepage';
  const byRank = counting.byRank && onSurface;
  const ranks = byRank ? net.worstRank : 0;
  const fresh = begun(ranks);
  const given = counting.enough.flatMap((most, cls) => (most === undefined ? [] : [{ most, cls }]));
  heap.clear(net.nodes);
  const arrivals: Arrival[] = [];
  const madeAt = heap.lastAt;
  const targets = [...limits.lengthTo].flatMap(([conductor, longest]): Target[] => {
    if (!net.nodesOf.has(conductor)) return [];
    return [{ conductor, longest, least: bounds.to(net, conductor), reached: [] }];
  });
  const outside = outsideOf(net, limits.window);
  const arrive = (conductor: number, label: number) => {
    const target = targets.find((each) => each.conductor === conductor);
    const code = withHop(heap.code[label]!, false);
    if (!target || heap.length[label]! > longestAt(target, code)) return;
    for (const known of target.reached) if (noMoreThan(known, code)) return;
    target.reached.push(code);
    arrivals.push(arrivalOf(heap, conductor, label));
  };
  /** A label has no more of anything; where joints are closed it has come no deeper and is as far begun. */
  const beats = (other: number, code: number, deep: number): boolean =>
    noMoreThan(heap.code[other]!, code) &&
    (solidFrom === null || (heap.depth[other]! <= deep && hopped(heap.code[other]!) === hopped(code)));
  for (const node of net.nodesOf.get(source) ?? []) {
    if (outside?.[node] || !leads(targets, node, 0, fresh)) continue;
    madeAt[node] = heap.push(node, 0, fresh, -1, -1);
    heap.madeBefore[madeAt[node]!] = -1;
  }
  for (let label = heap.pop(); label >= 0; label = heap.pop()) {
    const node = heap.node[label]!;
    const length = heap.length[label]!;
    const code = heap.code[label]!;
    // labels leave by length and then by code, so one that beats this one has left before
    let beaten = false;
    for (let other = madeAt[node]!; other >= 0 && !beaten; other = heap.madeBefore[other]!) {
      beaten = other !== label && heap.length[other]! <= length && beats(other, code, heap.depth[label]!);
    }
    if (beaten) continue;
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
    // when it was made it led on; since then only arrivals can have come before it
    if (arrivals.length > 0 && !leads(targets, node, length, code)) continue;
    const hop = hopped(code);
    const end = onSurface ? sights[node]! : start[node + 1]!;
    edges: for (let e = start[node]!; e < end; e++) {
      const way = kind[e]!;
      if (onSurface && way === ACROSS_AIR && cost[e]! >= limits.x) continue;
      const slant = way === SLANT;
      const closed = way === CLOSED || slant;
      const next = to[e]!;
      const far = length + cost[e]!;
      if (outside?.[next]) continue;
      let picked = code;
      let deep = 0;
      const isSolid = solidFrom !== null && (closed || (way === THROUGH && depth[e]! > 0));
      if (isSolid) {
        deep = heap.depth[label]! + depth[e]!;
        if ((closed || hop) && deep >= solidFrom) continue;
      }
      const entered = slant && !hop;
      if ((puncture[e]! > 0 && (slant || !(closed && hop))) || entered) {
        if (puncture[e]! > 0) picked = withPlies(code, plies[puncture[e]! - 1]!);
        if (entered) picked = withPlies(picked, plies[net.compound - 1]!);
        for (const { most, cls } of given) if (countOf(picked, cls) >= most) continue edges;
      }
      if (byRank && rank[e]! > 0) picked = withMaterial(picked, ranks - rank[e]!);
      const goesOn = closed || (isSolid && hop);
      if (goesOn !== hop) picked = withHop(picked, goesOn);
      for (let other = madeAt[next]!; other >= 0; other = heap.madeBefore[other]!) {
        if (heap.length[other]! <= far && beats(other, picked, deep)) continue edges;
      }
      if (!leads(targets, next, far, picked)) continue;
      const made = heap.push(next, far, picked, label, e, deep);
      heap.madeBefore[made] = madeAt[next]!;
      madeAt[next] = made;
    }
  }
  return arrivals;
}

/** A conductor looked for. */
interface Target {
  readonly conductor: number;
  readonly longest: readonly number[];
  /** Lower bound of the way to it, by node. */
  readonly least: Float64Array;
  /** Codes of the ways that have arrived. */
  readonly reached: number[];
}

/** Sums of sight lines in another order may differ by less than this, nanometres. */
const ROUNDING = 1e-3;

/** The length beyond which no way with this count is wanted. */
function longestAt({ longest }: Target, code: number): number {
  const count = countOf(code, 0);
  return longest[count < longest.length ? count : longest.length - 1]! + ROUNDING;
}

/**
 * A label may still end at a target within its length, and none that has arrived there has no more of anything, whatever
 * this one may yet run along.
 */
function leads(targets: readonly Target[], node: number, length: number, code: number): boolean {
  targets: for (const target of targets) {
    if (length + target.least[node]! > longestAt(target, code)) continue;
    for (const known of target.reached) if (noMoreThan(known, alongWorst(code))) continue targets;
    return true;
  }
  return false;
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
