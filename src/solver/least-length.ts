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
  for (let node = 0; node < net.nodes; node++) {
    const touched = net.conductor[node]!;
    if (touched !== conductor && !(touched === -2 && net.touching.get(node)!.includes(conductor))) continue;
    least[node] = 0;
    HEAP.push(node, 0, 0, -1, -1);
  }
  for (let label = HEAP.pop(); label >= 0; label = HEAP.pop()) {
    const node = HEAP.node[label]!;
    const length = HEAP.length[label]!;
    if (length > least[node]!) continue;
    const touched = net.conductor[node]!;
    if (touched >= 0 && touched !== conductor) continue;
    for (let e = start[node]!; e < start[node + 1]!; e++) {
      const far = length + cost[e]!;
      if (far >= least[to[e]!]!) continue;
      least[to[e]!] = far;
      HEAP.push(to[e]!, far, 0, label, e);
    }
  }
  return least;
}
