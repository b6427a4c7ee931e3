// Closed joints (cemented or potted, with proof): solid insulation as thick as the path along them is long. Lengths along
// them and through the solids between them add up along one path, which the search does: from the least thickness up it is
// strong, a shorter way counts as one ply of unknown strength.

import type { StuffId } from '#solver/section/build.ts';
import { CLOSED, type EdgeList } from './network.ts';

/** A way along a closed joint has no length of its own: it goes so deep through solid matter. False: none is closed. */
export function sinkClosedJoints(edges: EdgeList, closedJoint: StuffId): boolean {
  let found = false;
  for (let e = 0; e < edges.count; e++) {
    if (edges.kind[e] !== CLOSED) continue;
    found = true;
    edges.depth[e] = edges.cost[e]!;
    edges.cost[e] = 0;
    edges.rank[e] = 0;
    edges.punctured[e] = [{ stuff: closedJoint, count: 1 }];
  }
  return found;
}
