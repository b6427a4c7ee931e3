// The oracle's ways: from one node, every move that a path may make, for one metric.

import type { PathOptions } from '#solver/network/pieces.ts';
import type { Grid, GridSection } from './oracle-grid.ts';
import { STEPS, cellAt, edgeFrom } from './oracle-grid.ts';
import type { SolidRegion } from '#solver/section/section.ts';
import { sightOf } from './oracle-sight.ts';
import { behindTurned } from './oracle-turned.ts';
import { throughCompound } from './oracle-compound.ts';

/** A move: along open surfaces or through air, then through solids and along closed joints, then in the open again. */
export interface Way {
  readonly to: number;
  readonly length: number;
  /** How far it goes through solids and along closed joints; null: not at all. */
  readonly depth: number | null;
  /** Open length after that. */
  readonly then: number;
  readonly plies: number;
  /** Part of it is a closed joint: that counts as one ply while the whole is thin. */
  readonly closed: boolean;
}

/** Along one surface, or along one joint that may be closed. */
export const alongOne = (to: number, length: number, closed: boolean): Way =>
  closed
    ? { to, length: 0, depth: length, then: 0, plies: 0, closed }
    : { to, length, depth: null, then: 0, plies: 0, closed };

/** The same from its end to its beginning. */
export const turned = (way: Way, to: number): Way =>
  way.depth === null ? { ...way, to } : { ...way, to, length: way.then, then: way.length };

/** Up a flange first. */
export function afterClimb(way: Way, climbed: number, closed: boolean): Way {
  if (!closed) return { ...way, length: climbed + way.length };
  return { ...way, depth: climbed + (way.depth ?? way.length), length: 0, closed };
}

export type Ways = (node: number) => readonly Way[];

/** `compound`: the body that fills a potted section. */
export function waysOf(section: GridSection, grid: Grid, options: PathOptions, compound: number): Ways {
  const known = new Map<number, readonly Way[]>();
  const sight = options.metric === 'clearance' ? sightOf(section, grid) : null;
  const sideways: readonly Step[] = [
    [1, 0],
    [-1, 0],
  ];
  // off the flange above turned edges: not through air, which lies before them
  const turned = behindTurned(grid, section.potted, (node) => [
    ...sideways.flatMap((step) =>
      edgeFrom(grid, node, step, section.potted)?.kind === 'air'
        ? []
        : along(grid, node, step, section.potted, options),
    ),
    ...[...sideways, [0, 1] as const].flatMap((step) => through(grid, node, step, options)),
  ]);
  const straight = throughCompound(section, grid, compound, options.leastThickness);
  return (node) => {
    const before = known.get(node);
    if (before !== undefined) return before;
    const found = STEPS.flatMap((step) => [
      ...along(grid, node, step, section.potted, options),
      ...through(grid, node, step, options),
      ...(options.metric === 'creepage' ? jump(grid, node, step, section.potted, options.x) : []),
    ]);
    found.push(...(turned.get(node) ?? []), ...(straight.get(node) ?? []));
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
  if (edge.kind === 'air' && options.metric === 'clearance') return [alongOne(edge.to, edge.length, false)];
  if (edge.kind !== 'surface') return [];
  if (edge.solid === null || step[1] === 0) return [alongOne(edge.to, edge.length, edge.closed)];
  const found: Way[] = [];
  let length = turnUpAt(grid, node, potted);
  for (let next: typeof edge | null = edge; next !== null; next = edgeFrom(grid, next.to, step, potted)) {
    if (next.kind !== 'surface' || next.solid === null) break;
    length += next.length;
    const down = turnUpAt(grid, next.to, potted);
    found.push(alongOne(next.to, length + down, edge.closed));
  }
  return found;
}

/** How far an edge is turned up at a node on the flange; between two layers the lesser counts. */
function turnUpAt(grid: Grid, node: number, potted: boolean): number {
  const beside = [edgeFrom(grid, node, [0, 1], potted), edgeFrom(grid, node, [0, -1], potted)];
  return Math.min(...beside.flatMap((edge) => (edge?.kind === 'surface' ? (edge.solid?.turnUp ?? []) : [])));
}

/** Straight through one solid to its far side, on the line itself or as near beside it as one likes. */
function through(grid: Grid, node: number, step: Step, options: PathOptions): Way[] {
  const nx = grid.xs.length;
  return ([0, 1] as const).flatMap((side) => {
    const first = solidBeside(grid, node, step, side);
    const behind = solidBeside(grid, node - step[0] - nx * step[1], step, side);
    // A run begins and ends on the surface of its solid.
    if (first === null || behind?.body === first.body) return [];
    let to = node;
    let plies = 0;
    let measured = false;
    for (let solid: typeof first | null = first; solid?.body === first.body;) {
      const crossing = step[0] === 0 ? solid.crossY : solid.crossX;
      if (crossing === 'strong') return [];
      // a wire's cover counts its layers only while the run in it is thin
      if (crossing === 'measured' || solid.kind === 'wireCover') measured = true;
      if (crossing !== 'measured') plies = Math.max(plies, crossing);
      to += step[0] + nx * step[1];
      solid = solidBeside(grid, to, step, side);
    }
    const depth = distance(grid, node, to);
    if (measured && depth >= options.leastThickness) return [];
    return [{ to, length: 0, depth, then: 0, plies: Math.max(plies, measured ? 1 : 0), closed: false }];
  });
}

/** The solid that an edge from a node runs in or along, on one of its two sides. */
function solidBeside(grid: Grid, node: number, [di, dj]: Step, side: 0 | 1): SolidRegion | null {
  const i = node % grid.xs.length;
  const j = Math.floor(node / grid.xs.length);
  const ci = di === 0 ? i - side : di < 0 ? i - 1 : i;
  const cj = dj === 0 ? j - side : dj < 0 ? j - 1 : j;
  const region = grid.regions[cellAt(grid, ci, cj)];
  return region === undefined || region.kind === 'conductor' ? null : region;
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
    if (grid.onSomething[edge.to] === 1) return [alongOne(edge.to, length, false)];
  }
  return [];
}
