// Shortest pieces from one conductor to all others over a network, one for every set of plies punctured and every
// tracking rank that no other piece beats: a label-setting search. Labels leave the heap by length, so a label is
// final when it leaves; it is dropped when one with no more of anything has been at its node before.
// The search stops at conductors, and for a label when every other conductor has been reached with no more.

import { hopped, noMoreThan, withHop, withPlies, withRank } from './code.ts';
import { CLOSED, type Network } from './network.ts';

/** All labels of one search, in the order made; `previous` and `edge` lead back to the start. */
export interface Labels {
  readonly node: number[];
  readonly length: number[];
  readonly code: number[];
  readonly previous: number[];
  readonly edge: number[];
}

/** A label at a conductor. */
export interface Arrival {
  readonly conductor: number;
  readonly label: number;
}

export interface Reached {
  readonly labels: Labels;
  readonly arrivals: readonly Arrival[];
}

/** Nothing longer than `limit`, and nothing outside `window` (two x) where one is given. */
export function shortestFrom(
  net: Network,
  source: number,
  limit: number,
  window?: readonly [number, number],
): Reached {
  const labels: Labels = { node: [], length: [], code: [], previous: [], edge: [] };
  const arrivals: Arrival[] = [];
  // for every node, its last settled label; for every label, the one settled before it at the same node
  const settledAt = new Int32Array(net.nodes).fill(-1);
  const settledBefore: number[] = [];
  const arrived: number[][] = net.grid.conductors.map(() => []);
  const heap = new Heap(labels);
  const push = (node: number, length: number, code: number, previous: number, edge: number) => {
    for (let s = settledAt[node]!; s >= 0; s = settledBefore[s]!)
      if (noMoreThan(labels.code[s]!, code)) return;
    labels.node.push(node);
    labels.length.push(length);
    labels.code.push(code);
    labels.previous.push(previous);
    labels.edge.push(edge);
    settledBefore.push(-1);
    heap.push(labels.node.length - 1);
  };
  const arrive = (conductor: number, label: number) => {
    if (conductor === source) return;
    const before = arrived[conductor]!;
    const code = withHop(labels.code[label]!, false);
    if (before.some((known) => noMoreThan(known, code))) return;
    before.push(code);
    arrivals.push({ conductor, label });
  };

  const { xs } = net.grid;
  const outside = (node: number) => {
    if (!window) return false;
    const x = xs[node % xs.length]!;
    return x < window[0] || x > window[1];
  };
  for (let node = 0; node < net.nodes; node++) {
    if (outside(node)) continue;
    const touched = net.conductor[node]!;
    const starts = touched === source || (touched === -2 && net.touching.get(node)!.includes(source));
    if (starts) push(node, 0, 0, -1, -1);
  }
  const targets = arrived.map((_, c) => c).filter((c) => c !== source && present(net, c));

  for (let label = heap.pop(); label >= 0; label = heap.pop()) {
    const node = labels.node[label]!;
    const length = labels.length[label]!;
    const code = labels.code[label]!;
    if (length > limit) break;
    let beaten = false;
    for (let s = settledAt[node]!; s >= 0 && !beaten; s = settledBefore[s]!) {
      beaten = noMoreThan(labels.code[s]!, code);
    }
    if (beaten) continue;
    settledBefore[label] = settledAt[node]!;
    settledAt[node] = label;
    const touched = net.conductor[node]!;
    if (touched === -2) {
      for (const conductor of net.touching.get(node)!) arrive(conductor, label);
      continue;
    }
    if (touched >= 0 && touched !== source) {
      arrive(touched, label);
      continue;
    }
    if (targets.every((c) => arrived[c]!.some((known) => noMoreThan(known, code)))) continue;
    const hop = hopped(code);
    const end = net.start[node + 1]!;
    for (let e = net.start[node]!; e < end; e++) {
      if (outside(net.to[e]!)) continue;
      const closed = net.kind[e] === CLOSED;
      // one closed joint is walked in one hop, measured as a whole
      if (closed && hop) continue;
      let next = withPlies(code, net.plies[e]!);
      if (net.rank[e]! > 0) next = withRank(next, net.rank[e]!);
      if (closed !== hop) next = withHop(next, closed);
      push(net.to[e]!, length + net.cost[e]!, next, label, e);
    }
  }
  return { labels, arrivals };
}

function present(net: Network, conductor: number): boolean {
  for (let node = 0; node < net.nodes; node++) {
    const touched = net.conductor[node]!;
    if (touched === conductor || (touched === -2 && net.touching.get(node)!.includes(conductor))) return true;
  }
  return false;
}

/** Binary heap of labels: shortest first, then fewest plies, then first made; a class, since it is a buffer. */
class Heap {
  readonly #heap: number[] = [];
  readonly #labels: Labels;

  constructor(labels: Labels) {
    this.#labels = labels;
  }

  push(label: number): void {
    const heap = this.#heap;
    let at = heap.length;
    heap.push(label);
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (!this.#before(label, heap[parent]!)) break;
      heap[at] = heap[parent]!;
      at = parent;
    }
    heap[at] = label;
  }

  /** The next label, -1 when none is left. */
  pop(): number {
    const heap = this.#heap;
    const top = heap[0];
    if (top === undefined) return -1;
    const last = heap.pop()!;
    const size = heap.length;
    if (size === 0) return top;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= size) break;
      if (child + 1 < size && this.#before(heap[child + 1]!, heap[child]!)) child++;
      if (!this.#before(heap[child]!, last)) break;
      heap[at] = heap[child]!;
      at = child;
    }
    heap[at] = last;
    return top;
  }

  #before(a: number, b: number): boolean {
    const { length, code } = this.#labels;
    const [la, lb] = [length[a]!, length[b]!];
    if (la !== lb) return la < lb;
    const [ca, cb] = [code[a]!, code[b]!];
    return ca !== cb ? ca < cb : a < b;
  }
}
