// A lower bound for a search: how far every node is from a conductor when plies may be punctured and air crossed at will
// and closed joints walked freely. What is too far even so need not be followed.

import { LabelHeap } from './label-heap.ts';
import type { Network } from './network.ts';

const known = new WeakMap<Network, Map<number, Float64Array>>();

/** By node, nanometres, infinite where no way leads. */
export function leastLengthTo(net: Network, conductor: number): Float64Array {
  const mine = known.get(net) ?? new Map<number, Float64Array>();
  known.set(net, mine);
  const bounds = mine.get(conductor) ?? search(net, conductor);
  mine.set(conductor, bounds);
  return bounds;
}

/** One search is over before the next begins, so all share the buffer. */
const HEAP = new LabelHeap();

function search(net: Network, conductor: number): Float64Array {
  const { start, to, cost } = net;
  const least = new Float64Array(net.nodes).fill(Infinity);
  HEAP.clear(0);
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
        else HEAP.push(next, far, 0, -1, -1);
      }
    }
    const label = HEAP.pop();
    if (label < 0) return least;
    length = HEAP.length[label]!;
    if (length <= least[HEAP.node[label]!]!) alike.push(HEAP.node[label]!);
  }
}
