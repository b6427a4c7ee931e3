// The oracle's ways behind turned-up edges: who has climbed past them and goes on up the flange gains nothing, wherever
// the way leaves the flange above. Each such way is one move, there and back.

import type { Grid } from './oracle-grid.ts';
import { edgeFrom } from './oracle-grid.ts';
import { afterClimb, alongOne, turned, type Way } from './oracle-ways.ts';

/** `sideways`: what leads off the flange at a node. */
export function behindTurned(
  grid: Grid,
  potted: boolean,
  sideways: (node: number) => readonly Way[],
): ReadonlyMap<number, readonly Way[]> {
  const all = new Map<number, Way[]>();
  const add = (from: number, way: Way): void => {
    all.set(from, [...(all.get(from) ?? []), way]);
  };
  for (let node = 0; node < grid.xs.length * grid.ys.length; node++) {
    for (const way of goingOn(grid, node, potted, sideways)) {
      add(node, way);
      add(way.to, turned(way, node));
    }
  }
  return all;
}

function goingOn(
  grid: Grid,
  node: number,
  potted: boolean,
  sideways: (node: number) => readonly Way[],
): readonly Way[] {
  const heightOf = (at: number): number => grid.ys[Math.floor(at / grid.xs.length)]!;
  let at = node;
  let length = 0;
  let turnUp: number | null = null;
  let edge = edgeFrom(grid, at, [0, 1], potted);
  while (edge?.kind === 'surface' && edge.solid !== null && edge.solid.turnUp > 0) {
    turnUp = edge.solid.turnUp;
    length += edge.length;
    at = edge.to;
    edge = edgeFrom(grid, at, [0, 1], potted);
  }
  if (turnUp === null) return [];
  const until = heightOf(at) + turnUp;
  const found: Way[] = [];
  for (; edge?.kind === 'surface' && edge.atFlange; edge = edgeFrom(grid, at, [0, 1], potted)) {
    // before these edges it is at the flange again
    if (edge.solid !== null && edge.solid.turnUp > 0) break;
    at = edge.to;
    length += edge.length;
    const here = alongOne(at, length, edge.closed);
    if (heightOf(at) >= until) return [...found, here];
    if (grid.touches[at] !== 0) found.push(here);
    const climbed = length;
    found.push(...sideways(at).map((way) => afterClimb(way, climbed, potted)));
  }
  // other turned edges lie above: before these
  const meetsOthers = edge?.kind === 'surface' && edge.atFlange;
  return meetsOthers ? [...found, alongOne(at, length, potted)] : found;
}
