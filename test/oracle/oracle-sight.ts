// The oracle's straight lines through air: from one node to every other of the same air that it can see.
// Lines along the axes are left to the grid's own edges.

import type { Grid, GridSection } from './oracle-grid.ts';
import { AIR, cellAt, sagAt } from './oracle-grid.ts';
import { HAIR } from './oracle-refine.ts';
import { alongOne, type Way } from './oracle-ways.ts';

type Rectangle = { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number };

const EPSILON = 1e-9;

export function sightOf(section: GridSection, grid: Grid): (node: number) => Way[] {
  const air = components(grid);
  const nx = grid.xs.length;
  const corners = besideCorners(section, grid);
  const members = new Map<number, number[]>();
  const airOf = (node: number): number[] => {
    const i = node % nx;
    const j = Math.floor(node / nx);
    const around = [
      [i - 1, j - 1],
      [i, j - 1],
      [i - 1, j],
      [i, j],
    ] as const;
    const ids = around.filter(([a, b]) => cellAt(grid, a, b) === AIR).map(([a, b]) => air[a + (nx - 1) * b]!);
    return [...new Set(ids)];
  };
  for (let node = 0; node < nx * grid.ys.length; node++) {
    if (!isStation(grid, node, corners)) continue;
    for (const id of airOf(node)) push(members, id, node);
  }
  return (from) => {
    if (!isStation(grid, from, corners)) return [];
    const others = new Set(airOf(from).flatMap((id) => members.get(id) ?? []));
    const found: Way[] = [];
    for (const to of others) {
      const line = lineBetween(section, grid, from, to);
      if (line !== null) found.push(line);
    }
    return found;
  };
}

function push(lists: Map<number, number[]>, key: number, value: number): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [value]);
  else list.push(value);
}

/** Nodes on something, beside a conductor's corner, and on the border of a sagging void, where a line may bend. */
function isStation(grid: Grid, node: number, corners: ReadonlySet<number>): boolean {
  if (grid.onSomething[node] === 1 || corners.has(node)) return true;
  const nx = grid.xs.length;
  const i = node % nx;
  const j = Math.floor(node / nx);
  const sag = [sagAt(grid, i, j), sagAt(grid, i - 1, j), sagAt(grid, i, j - 1), sagAt(grid, i - 1, j - 1)];
  return sag.includes(true) && sag.includes(false);
}

/** Nodes a hair beside the corners of conductors: near enough to go round them without touching. */
function besideCorners(section: GridSection, grid: Grid): Set<number> {
  const found = new Set<number>();
  for (const r of section.regions) {
    if (r.kind !== 'conductor') continue;
    for (const x of [r.x0 - HAIR, r.x1 + HAIR]) {
      for (const y of [r.y0 - HAIR, r.y1 + HAIR]) {
        const i = grid.xs.indexOf(x);
        const j = grid.ys.indexOf(y);
        if (i >= 0 && j >= 0) found.add(i + grid.xs.length * j);
      }
    }
  }
  return found;
}

/** Cells of air that hang together by their sides. */
function components(grid: Grid): Int32Array {
  const columns = grid.xs.length - 1;
  const found = new Int32Array(grid.cells.length).fill(-1);
  for (let seed = 0; seed < found.length; seed++) {
    if (grid.cells[seed] !== AIR || found[seed] !== -1) continue;
    const open = [seed];
    found[seed] = seed;
    for (let cell = open.pop(); cell !== undefined; cell = open.pop()) {
      const i = cell % columns;
      const j = Math.floor(cell / columns);
      for (const [a, b] of [
        [i - 1, j],
        [i + 1, j],
        [i, j - 1],
        [i, j + 1],
      ] as const) {
        const next = a + columns * b;
        if (cellAt(grid, a, b) !== AIR || found[next] !== -1) continue;
        found[next] = seed;
        open.push(next);
      }
    }
  }
  return found;
}

/** Whether the straight line from one node to another stays in air, and how long it is. */
function lineBetween(section: GridSection, grid: Grid, from: number, to: number): Way | null {
  const nx = grid.xs.length;
  const ax = grid.xs[from % nx]!;
  const ay = grid.ys[Math.floor(from / nx)]!;
  const dx = grid.xs[to % nx]! - ax;
  const dy = grid.ys[Math.floor(to / nx)]! - ay;
  if (dx === 0 || dy === 0) return null;
  for (const region of section.regions) {
    // Metal may be touched at the line's ends only; a solid may be grazed but not entered.
    if (region.kind === 'conductor') {
      if (share(region, ax, ay, dx, dy, EPSILON, 1 - EPSILON) > -EPSILON / 10) return null;
    } else if (share(region, ax, ay, dx, dy, 0, 1) > EPSILON) return null;
  }
  let free = 0;
  for (const rect of section.sagging) free += Math.max(0, share(rect, ax, ay, dx, dy, 0, 1));
  const length = (1 - free) * Math.hypot(dx, dy) + free * Math.abs(dx);
  return alongOne(to, length, false);
}

/** Share of the line between two of its points that lies in the closed rectangle; below 0 where it misses it. */
function share(
  r: Rectangle,
  ax: number,
  ay: number,
  dx: number,
  dy: number,
  first: number,
  last: number,
): number {
  const x0 = (r.x0 - ax) / dx;
  const x1 = (r.x1 - ax) / dx;
  const y0 = (r.y0 - ay) / dy;
  const y1 = (r.y1 - ay) / dy;
  const enter = Math.max(first, x0 < x1 ? x0 : x1, y0 < y1 ? y0 : y1);
  const leave = Math.min(last, x0 < x1 ? x1 : x0, y0 < y1 ? y1 : y0);
  return leave - enter;
}
