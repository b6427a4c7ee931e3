// A lower bound for a search: how far every node is from a conductor when plies may be punctured and air crossed at will
// and closed joints walked freely. What is too far even so need not be followed.

import { LabelHeap } from './label-heap.ts';
import type { Network } from '#solver/network/network.ts';

/** Keeps what it found of a network for as long as the network is there. */
export class LowerBounds {
  readonly #known = new WeakMap<Network, Map<number, Float64Array>>();
  readonly #heap = new LabelHeap();

  /** By node, nanometres, infinite where no way leads. */
  to(net: Network, conductor: number): Float64Array {
    const mine = this.#known.get(net) ?? new Map<number, Float64Array>();
    this.#known.set(net, mine);
    const bounds = mine.get(conductor) ?? search(net, conductor, this.#heap);
    mine.set(conductor, bounds);
    return bounds;
  }
}

function search(net: Network, conductor: number, heap: LabelHeap): Float64Array {
  const { start, to, cost } = net;
  const least = new Float64Array(net.nodes).fill(Infinity);
  heap.clear(0);
  // nodes of one length: what is reached without any further length needs no place in the heap
  const alike = [...(net.nodesOf.get(conductor) ?? [])];
  for (const node of alike) least[node] = 0;
  for (let length = 0; ;) {
    for (let node = alike.pop(); node !== undefined; node = alike.pop()) {
      const touched = net.conductor[node]!;
      if (touched >= 0 && touched !== conductor) continue;
      for (let e = start[node]!; e < start[node + 1]!; e++) {
        const next = to[e]!;
        const far = length + cost[e]!;
        if (far >= least[next]!) continue;
        least[next] = far;
        if (far === length) alike.push(next);
        else heap.push(next, far, 0, -1, -1);
      }
    }
    const label = heap.pop();
    if (label < 0) return least;
    length = heap.length[label]!;
    if (length <= least[heap.node[label]!]!) alike.push(heap.node[label]!);
  }
}
