// The oracle's ways: from one node, every move that a path may make, for one metric.

import type { PathOptions } from '#solver/pieces.ts';
import type { Grid, GridSection } from './oracle-grid.ts';
import { STEPS, edgeFrom } from './oracle-grid.ts';
import { sightOf } from './oracle-sight.ts';

export interface Way {
  readonly to: number;
  readonly length: number;
  readonly plies: number;
  /** Runs along a closed joint: counts as a solid as thick as the run is long. */
  readonly closed: boolean;
}

export type Ways = (node: number) => readonly Way[];

export function waysOf(section: GridSection, grid: Grid, options: PathOptions): Ways {
  const known = new Map<number, readonly Way[]>();
  const sight = options.metric === 'clearance' ? sightOf(section, grid) : null;
  return (node) => {
    const before = known.get(node);
    if (before !== undefined) return before;
    const found = STEPS.flatMap((step) => [
      ...along(grid, node, step, section.potted, options),
      ...through(grid, node, step, section.potted, options),
      ...(options.metric === 'creepage' ? jump(grid, node, step, section.potted, options.x) : []),
    ]);
    if (sight !== null) found.push(...sight(node));
    known.set(node, found);
    return found;
  };
}

type Step = readonly [number, number];

/** One edge along a surface or joint, or through air where the metric is clearance; past turned-up edges as a whole. */
function along(grid: Grid, node: number, step: Step, potted: boolean, options: PathOptions): Way[] {
  const edge = edgeFrom(grid, node, step, potted);
  if (edge === null) return [];
  if (edge.kind === 'air' && options.metric === 'clearance') return [{ ...edge, plies: 0 }];
  if (edge.kind !== 'surface') return [];
  if (edge.solid === null || step[1] === 0) return [{ ...edge, plies: 0 }];
  const found: Way[] = [];
  let length = 2 * edge.solid.turnUp;
  for (let next: typeof edge | null = edge; next !== null; next = edgeFrom(grid, next.to, step, potted)) {
    if (next.kind !== 'surface' || next.solid === null || next.solid.layer !== edge.solid.layer) break;
    length += next.length;
    found.push({ to: next.to, length, plies: 0, closed: edge.closed });
  }
  return found;
}

/** Straight through one solid to its far side. */
function through(grid: Grid, node: number, step: Step, potted: boolean, options: PathOptions): Way[] {
  const first = edgeFrom(grid, node, step, potted);
  if (first?.kind !== 'inside') return [];
  let to = node;
  let plies = 0;
  let measured = false;
  for (let edge: typeof first | null = first; edge !== null; edge = edgeFrom(grid, to, step, potted)) {
    if (edge.kind !== 'inside' || edge.solid === null || edge.solid.body !== first.solid?.body) break;
    const crossing = step[0] === 0 ? edge.solid.crossY : edge.solid.crossX;
    if (crossing === 'strong') return [];
    if (crossing === 'measured') measured = true;
    else plies = Math.max(plies, crossing);
    to = edge.to;
  }
  if (measured && distance(grid, node, to) >= options.leastThickness) return [];
  return [{ to, length: 0, plies: Math.max(plies, measured ? 1 : 0), closed: false }];
}

function distance(grid: Grid, a: number, b: number): number {
  const nx = grid.xs.length;
  const dx = grid.xs[a % nx]! - grid.xs[b % nx]!;
  return Math.abs(dx) + Math.abs(grid.ys[Math.floor(a / nx)]! - grid.ys[Math.floor(b / nx)]!);
}

/** Straight over an air gap narrower than X, from surface to surface. */
function jump(grid: Grid, node: number, step: Step, potted: boolean, x: number): Way[] {
  if (grid.onSomething[node] === 0) return [];
  let length = 0;
  for (
    let edge = edgeFrom(grid, node, step, potted);
    edge?.kind === 'air';
    edge = edgeFrom(grid, edge.to, step, potted)
  ) {
    length += edge.length;
    if (length >= x) return [];
    if (grid.onSomething[edge.to] === 1) return [{ to: edge.to, length, plies: 0, closed: potted }];
  }
  return [];
}
