// The oracle's straight ways through compound: all is one mass there, so that from every place where a way may turn to
// every other nearer than the least thickness it goes straight, whatever solids lie between; each counts as if crossed.

import type { Crossing, Region } from '#solver/section/section.ts';
import type { Grid, GridSection } from './oracle-grid.ts';
import { HAIR } from './oracle-refine.ts';
import type { Way } from './oracle-ways.ts';

type Point = readonly [x: number, y: number];

export function throughCompound(
  { regions, potted }: GridSection,
  grid: Grid,
  compound: number,
  leastThickness: number,
): ReadonlyMap<number, readonly Way[]> {
  const found = new Map<number, Way[]>();
  if (!potted) return found;
  const add = (from: number, way: Way): unknown => found.set(from, [...(found.get(from) ?? []), way]);
  const point = (node: number): Point => [
    grid.xs[node % grid.xs.length]!,
    grid.ys[Math.floor(node / grid.xs.length)]!,
  ];
  const turns = turningPlaces(regions, grid);
  const metal = [...grid.touches.keys()].filter((node) => grid.touches[node] !== 0);
  for (const from of turns) {
    const a = point(from);
    for (const to of new Set([...turns, ...metal])) {
      const b = point(to);
      const depth = Math.hypot(b[0] - a[0], b[1] - a[1]);
      const isStraight = a[0] === b[0] || a[1] === b[1];
      if (to === from || depth >= leastThickness || (!isStraight && !turns.has(to))) continue;
      for (const beside of isStraight ? [-HAIR / 2, HAIR / 2] : [0]) {
        const plies = pliesPassed(regions, compound, a, b, beside);
        if (plies === null) continue;
        const way = { length: 0, depth, then: 0, plies, closed: true };
        add(from, { ...way, to });
        add(to, { ...way, to: from });
      }
    }
  }
  return found;
}

/** Corners of everything, and a hair off the corners of metal. */
function turningPlaces(regions: readonly Region[], grid: Grid): ReadonlySet<number> {
  const found = new Set<number>();
  const add = (x: number, y: number): void => {
    const [i, j] = [grid.xs.indexOf(x), grid.ys.indexOf(y)];
    if (i >= 0 && j >= 0) found.add(i + grid.xs.length * j);
  };
  for (const { kind, x0, x1, y0, y1 } of regions) {
    const off = kind === 'conductor' ? [0, HAIR] : [0];
    for (const by of off) for (const x of [x0 - by, x1 + by]) for (const y of [y0 - by, y1 + by]) add(x, y);
  }
  return found;
}

/** Null where metal or what is always strong lies in the way; along an axis the way runs so far beside the line. */
function pliesPassed(
  regions: readonly Region[],
  compound: number,
  a: Point,
  b: Point,
  beside: number,
): number | null {
  const level = a[1] === b[1];
  const upright = a[0] === b[0];
  const [from, to]: [Point, Point] = level
    ? [
        [a[0], a[1] + beside],
        [b[0], b[1] + beside],
      ]
    : upright
      ? [
          [a[0] + beside, a[1]],
          [b[0] + beside, b[1]],
        ]
      : [a, b];
  const bodies = new Map<number, number>();
  for (const region of regions) {
    if (region.kind === 'conductor') {
      // who runs along metal touches it
      if (
        isPassed(region, from, to) ||
        ((level || upright) && isPassed(region, mirrored(from, a), mirrored(to, b)))
      )
        return null;
    } else if (region.body !== compound && isPassed(region, from, to)) {
      const crossing = level ? region.crossX : upright ? region.crossY : weaker(region.crossX, region.crossY);
      if (crossing === 'strong') return null;
      bodies.set(region.body, crossing === 'measured' ? 1 : crossing);
    }
  }
  return [...bodies.values()].reduce((sum, count) => sum + count, 0);
}

const mirrored = (p: Point, on: Point): Point => [2 * on[0] - p[0], 2 * on[1] - p[1]];

const weaker = (one: Crossing, other: Crossing): Crossing =>
  one === 'strong'
    ? other
    : other === 'strong' || one === 'measured'
      ? one
      : other === 'measured'
        ? other
        : Math.min(one, other);

/** Some of the line lies inside the rectangle, by halving what is left of it on each side in turn. */
function isPassed(r: Region, [ax, ay]: Point, [bx, by]: Point): boolean {
  let first = 0;
  let last = 1;
  for (const [at, step, low, high] of [
    [ax, bx - ax, r.x0, r.x1],
    [ay, by - ay, r.y0, r.y1],
  ] as const) {
    if (step === 0) {
      if (at <= low || at >= high) return false;
      continue;
    }
    const [one, other] = [(low - at) / step, (high - at) / step];
    first = Math.max(first, Math.min(one, other));
    last = Math.min(last, Math.max(one, other));
  }
  return last - first > 1e-9;
}
