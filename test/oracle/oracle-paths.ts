// The oracle's paths: between every two conductors of a section the shortest piece that punctures at most 0, 1, 2, 3
// plies, by a layered shortest-path search over a grid. Slow and plain on purpose; Infinity where there is none.

import type { PathOptions } from '#solver/network/pieces.ts';
import type { Grid, GridSection } from './oracle-grid.ts';
import { gridOf } from './oracle-grid.ts';
import { Heap } from './heap.ts';
import { hairLines, refinedLines } from './oracle-refine.ts';
import type { Ways } from './oracle-ways.ts';
import { waysOf } from './oracle-ways.ts';

export interface OraclePiece {
  readonly between: readonly [string, string];
  /** Shortest piece that punctures at most k plies, k = 0 to 3. */
  readonly lengths: readonly number[];
  /** The way that each of them takes, for the reader of a disagreement. */
  readonly routes: readonly (readonly (readonly [number, number])[])[];
}

const MOST = 3;

/** `spacing` of the extra lines that straight lines through air may bend at; smaller is slower and nearer. */
export function oraclePaths(section: GridSection, options: PathOptions, spacing: number): OraclePiece[] {
  const hair = hairLines(section, options);
  const coarse = gridOf(section, hair.xs, hair.ys);
  const finer = options.metric === 'clearance' ? refinedLines(coarse, options, spacing) : { xs: [], ys: [] };
  const grid = gridOf(section, [...hair.xs, ...finer.xs], [...hair.ys, ...finer.ys]);
  const ways = waysOf(section, grid, options);
  return grid.conductors.flatMap((from, index) => {
    const found = searchFrom(grid, ways, options, index);
    return grid.conductors.slice(index + 1).map((to, after) => ({
      between: [from, to] as const,
      lengths: atMost(found.lengths[index + 1 + after]!),
      routes: found.routes[index + 1 + after]!,
    }));
  });
}

const atMost = (exact: readonly number[]): number[] =>
  exact.map((_, k) => Math.min(...exact.slice(0, k + 1)));

interface Found {
  /** By conductor, then by number of plies. */
  readonly lengths: number[][];
  readonly routes: (readonly (readonly [number, number])[])[][];
}

interface State {
  readonly node: number;
  readonly plies: number;
  /** Came here along a closed joint, which must not go on: longer is thicker. */
  readonly fromClosed: boolean;
  readonly length: number;
  readonly before: State | null;
}

function searchFrom(grid: Grid, ways: Ways, options: PathOptions, source: number): Found {
  const mine = 1 << source;
  const found: Found = {
    lengths: grid.conductors.map(() => Array<number>(MOST + 1).fill(Infinity)),
    routes: grid.conductors.map(() => Array.from({ length: MOST + 1 }, () => [])),
  };
  const queue = new Heap<State>((s) => s.length);
  grid.touches.forEach((bits, node) => {
    if ((bits & mine) !== 0) queue.push({ node, plies: 0, fromClosed: false, length: 0, before: null });
  });
  const done = new Set<number>();
  for (let state = queue.pop(); state !== undefined; state = queue.pop()) {
    const key = (state.node * (MOST + 1) + state.plies) * 2 + (state.fromClosed ? 1 : 0);
    if (done.has(key)) continue;
    done.add(key);
    const others = grid.touches[state.node]! & ~mine;
    if (others !== 0) record(grid, found, others, state);
    // A piece may start or end where a third conductor touches as well, whichever of the two is looked from.
    if (others !== 0 && (grid.touches[state.node]! & mine) === 0) continue;
    expand(grid, ways, options, state, (next) => queue.push(next));
  }
  return found;
}

function record(grid: Grid, found: Found, bits: number, state: State): void {
  grid.conductors.forEach((_, index) => {
    if ((bits & (1 << index)) === 0 || state.length >= found.lengths[index]![state.plies]!) return;
    found.lengths[index]![state.plies] = state.length;
    const route: (readonly [number, number])[] = [];
    for (let s: State | null = state; s !== null; s = s.before) {
      route.unshift([grid.xs[s.node % grid.xs.length]!, grid.ys[Math.floor(s.node / grid.xs.length)]!]);
    }
    found.routes[index]![state.plies] = route;
  });
}

function expand(
  grid: Grid,
  ways: Ways,
  options: PathOptions,
  state: State,
  push: (next: State) => void,
): void {
  let joins = false;
  for (const way of ways(state.node)) {
    if (way.closed) {
      joins = true;
      continue;
    }
    const plies = state.plies + way.plies;
    if (plies > MOST) continue;
    push({ node: way.to, plies, fromClosed: false, length: state.length + way.length, before: state });
  }
  if (!joins || state.fromClosed || state.plies === MOST) return;
  for (const node of closedReach(grid, ways, state.node, options.leastThickness)) {
    push({ node, plies: state.plies + 1, fromClosed: true, length: state.length, before: state });
  }
}

/** Nodes that a run along closed joints reaches while it is still thinner than a strong solid. */
function closedReach(grid: Grid, ways: Ways, from: number, least: number): number[] {
  const queue = new Heap<{ node: number; length: number }>((s) => s.length);
  queue.push({ node: from, length: 0 });
  const done = new Set<number>();
  for (let state = queue.pop(); state !== undefined; state = queue.pop()) {
    if (done.has(state.node)) continue;
    done.add(state.node);
    // Metal ends a run: only a start may lie on it.
    if (state.node !== from && grid.touches[state.node] !== 0) continue;
    for (const way of ways(state.node)) {
      const length = state.length + way.length;
      if (way.closed && length < least) queue.push({ node: way.to, length });
    }
  }
  done.delete(from);
  return [...done];
}
