// Closed joints (cemented or potted, with proof): solid insulation as thick as the path along them is long.
// From the least thickness up they are strong; a shorter way along them counts as one ply of unknown strength. In compound
// all is one mass: lengths along joints and through the solids between them add up, which the search does.

import type { StuffId } from '#solver/section/build.ts';
import { CLOSED, type EdgeList } from './network.ts';

/** Replaces the closed edges by hops of no length between all nodes less than the least thickness apart along them. */
export function hopClosedJoints(edges: EdgeList, leastThickness: number, closedJoint: StuffId): void {
  const next = new Map<number, { readonly to: number; readonly cost: number }[]>();
  const link = (from: number, to: number, cost: number) => {
    const all = next.get(from) ?? [];
    all.push({ to, cost });
    next.set(from, all);
  };
  edges.keep(
    (kind) => kind !== CLOSED,
    (e) => {
      link(edges.from[e]!, edges.to[e]!, edges.cost[e]!);
      link(edges.to[e]!, edges.from[e]!, edges.cost[e]!);
    },
  );
  for (const from of next.keys()) {
    const reached = new Map<number, number>([[from, 0]]);
    const queue = [from];
    while (queue.length > 0) {
      queue.sort((a, b) => reached.get(b)! - reached.get(a)!);
      const node = queue.pop()!;
      for (const { to, cost } of next.get(node)!) {
        const length = reached.get(node)! + cost;
        if (length >= leastThickness || length >= (reached.get(to) ?? Infinity)) continue;
        reached.set(to, length);
        if (!queue.includes(to)) queue.push(to);
      }
    }
    for (const to of reached.keys())
      if (to > from) edges.add(from, to, 0, [{ stuff: closedJoint, count: 1 }], 0, CLOSED);
  }
}

/** In compound a way along a joint has no length of its own: it goes so deep through solid matter. */
export function sinkIntoCompound(edges: EdgeList, closedJoint: StuffId): void {
  for (let e = 0; e < edges.count; e++) {
    if (edges.kind[e] !== CLOSED) continue;
    edges.depth[e] = edges.cost[e]!;
    edges.cost[e] = 0;
    edges.rank[e] = 0;
    edges.punctured[e] = [{ stuff: closedJoint, count: 1 }];
  }
}
