// The oracle's paths: between every two conductors of a section the shortest piece that punctures at most 0, 1, 2, 3
// plies, by a layered shortest-path search over a grid. Slow and plain on purpose; Infinity where there is none.

import type { PathOptions } from '#solver/network/pieces.ts';
import type { Grid, GridSection } from './oracle-grid.ts';
import { gridOf } from './oracle-grid.ts';
import { Heap } from './heap.ts';
import { hairLines, refinedLines } from './oracle-refine.ts';
import { subtract } from './box.ts';
import { solid } from './oracle-region.ts';
import type { Way, Ways } from './oracle-ways.ts';
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
export function oraclePaths(drawn: GridSection, options: PathOptions, spacing: number): OraclePiece[] {
  const section = filled(drawn);
  const hair = hairLines(section, options);
  const coarse = gridOf(section, hair.xs, hair.ys);
  const finer = options.metric === 'clearance' ? refinedLines(coarse, options, spacing) : { xs: [], ys: [] };
  const grid = gridOf(section, [...hair.xs, ...finer.xs], [...hair.ys, ...finer.ys]);
  const ways = waysOf(section, grid, options, COMPOUND);
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
  readonly length: number;
  /** How much solid matter lies behind it since it last was at an open surface or in air. */
  readonly depth: number;
  /** Some of that was a closed joint, which counts as one ply while the whole is thin. */
  readonly inJoint: boolean;
  readonly before: State | null;
}

function searchFrom(grid: Grid, ways: Ways, options: PathOptions, source: number): Found {
  const mine = 1 << source;
  const found: Found = {
    lengths: grid.conductors.map(() => Array<number>(MOST + 1).fill(Infinity)),
    routes: grid.conductors.map(() => Array.from({ length: MOST + 1 }, () => [])),
  };
  const queue = new Heap<State>((s) => s.length);
  const keyOf = ({ node, plies, inJoint }: State): number =>
    (node * (MOST + 1) + plies) * 2 + (inJoint ? 1 : 0);
  const keys = grid.touches.length * (MOST + 1) * 2;
  /** Least depth so far, by place, plies and whether in a joint: states come by length. */
  const least = new Float64Array(keys).fill(Infinity);
  /** Least length that waits there with nothing behind it: no longer one can be of use. */
  const waits = new Float64Array(keys).fill(Infinity);
  const push = (state: State): void => {
    const key = keyOf(state);
    if (least[key]! <= state.depth || waits[key]! <= state.length) return;
    if (state.depth === 0) waits[key] = state.length;
    queue.push(state);
  };
  grid.touches.forEach((bits, node) => {
    if ((bits & mine) !== 0) push({ node, plies: 0, length: 0, depth: 0, inJoint: false, before: null });
  });
  for (let state = queue.pop(); state !== undefined; state = queue.pop()) {
    const key = keyOf(state);
    if (least[key]! <= state.depth) continue;
    least[key] = state.depth;
    const others = grid.touches[state.node]! & ~mine;
    if (others !== 0) record(grid, found, others, state);
    // A piece may start or end where a third conductor touches as well, whichever of the two is looked from.
    if (others !== 0 && (grid.touches[state.node]! & mine) === 0) continue;
    for (const way of ways(state.node)) {
      const next = after(state, way, options.leastThickness);
      if (next !== null) push(next);
    }
  }
  return found;
}

/** One move on; null where it would be through strong insulation or too many plies. Spelt out: it is made most often of all. */
function after(state: State, way: Way, leastThickness: number): State | null {
  const length = state.length + way.length + way.then;
  const here = { node: way.to, plies: state.plies, length, depth: 0, inJoint: false, before: state };
  if (way.depth === null) return here;
  const goesOn = way.length === 0;
  const depth = way.depth + (goesOn ? state.depth : 0);
  const wasInJoint = goesOn && state.inJoint;
  const inJoint = wasInJoint || way.closed;
  here.plies += way.plies + (inJoint && !wasInJoint ? 1 : 0);
  if ((inJoint && depth >= leastThickness) || here.plies > MOST) return null;
  // in the open again behind it
  if (way.then > 0) return here;
  here.depth = depth;
  here.inJoint = inJoint;
  return here;
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

/** In compound all that is empty is one solid, of which nothing is left to sag. */
function filled(section: GridSection): GridSection {
  if (!section.potted) return section;
  const voids = subtract([section.frame], section.regions);
  const compound = voids.map((rect) => solid(rect, 'block', COMPOUND, COMPOUND, true));
  return { ...section, regions: [...section.regions, ...compound], sagging: [] };
}

const COMPOUND = -1;
