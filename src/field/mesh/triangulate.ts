// From the outline to triangles: those of Delaunay, with a point more in every line that is no edge among them, until
// all are. In the wedge where a wire touches a ply that would never end: lines shorter than a few points apart stay.

import Delaunator from 'delaunator';

import { AIR, type BodyMap } from './body-map.ts';
import type { Mesh } from './mesh.ts';
import type { Fineness, Lines } from './drawing.ts';
import { outlineOf, type Outline } from './outline.ts';
import type { PointSet } from './point-set.ts';
import type { FieldSection } from '#field/field-section.ts';
import { fillTriangles } from './fill.ts';
import { sharedCircle } from './refine.ts';

const MOST_ROUNDS = 4;

export interface Meshed {
  readonly mesh: Mesh;
  readonly map: BodyMap;
  /** The same with these triangles divided: old points keep their numbers. */
  readonly divided: (triangles: readonly number[]) => Meshed;
}

export function meshOf(section: FieldSection, fineness: Fineness): Meshed {
  return meshedFrom(outlineOf(section, fineness));
}

function meshedFrom(outline: Outline): Meshed {
  const triangles = conforming(outline);
  const { points, map } = outline;
  const bare = {
    x: Float64Array.from(points.x),
    y: Float64Array.from(points.y),
    circle: Int32Array.from(points.circle),
    circles: Float64Array.from(points.circles),
    electrode: Int32Array.from(points.electrode),
    triangles,
  };
  const divided = (which: readonly number[]): Meshed => {
    for (const t of which) addMiddles(outline.points, bare, 3 * t);
    return meshedFrom(outline);
  };
  return { mesh: fillTriangles(bare, map), map, divided };
}

/** A point in the middle of each side of the triangle that begins at `t`. */
function addMiddles(points: PointSet, { triangles }: Pick<Mesh, 'triangles'>, t: number): void {
  for (let i = 0; i < 3; i++) {
    const [a, b] = [triangles[t + i]!, triangles[t + ((i + 1) % 3)]!];
    middleOf(points, a, b, sharedCircle(points, a, b));
  }
}

function conforming({ points, lines }: Outline): Int32Array {
  const least = shortest(points, lines);
  for (let round = 0; ; round++) {
    const coordinates = new Float64Array(2 * points.x.length);
    points.x.forEach((x, i) => {
      coordinates[2 * i] = x;
      coordinates[2 * i + 1] = points.y[i]!;
    });
    const found = new Delaunator(coordinates);
    if (round === MOST_ROUNDS || !splitMissing(found, points, lines, least)) {
      return upright(found.triangles, points);
    }
  }
}

/** Lines are split down to an eighth of the shortest that was asked for. */
function shortest({ x, y }: PointSet, { from, to }: Lines): number {
  let least = Infinity;
  from.forEach((a, i) => (least = Math.min(least, Math.hypot(x[a]! - x[to[i]!]!, y[a]! - y[to[i]!]!))));
  return least / 8;
}

function splitMissing(
  { triangles, halfedges }: Delaunator<Float64Array>,
  points: PointSet,
  lines: Lines,
  least: number,
): boolean {
  const out = new Int32Array(points.x.length).fill(-1);
  triangles.forEach((point, edge) => {
    if (out[point] === -1 || halfedges[edge] === -1) out[point] = edge;
  });
  const joined = (a: number, b: number): boolean => {
    let edge = out[a]!;
    const start = edge;
    while (edge !== -1) {
      const before = edge % 3 === 0 ? edge + 2 : edge - 1;
      if (triangles[before] === b || triangles[edge % 3 === 2 ? edge - 2 : edge + 1] === b) return true;
      edge = halfedges[before]!;
      if (edge === start) break;
    }
    return false;
  };
  let split = false;
  for (let i = lines.from.length - 1; i >= 0; i--) {
    const [a, b] = [lines.from[i]!, lines.to[i]!];
    const length = Math.hypot(points.x[a]! - points.x[b]!, points.y[a]! - points.y[b]!);
    if (length < 2 * least || joined(a, b)) continue;
    const middle = middleOf(points, a, b, lines.circle[i]!);
    if (middle === a || middle === b) continue;
    lines.to[i] = middle;
    lines.from.push(middle);
    lines.to.push(b);
    lines.circle.push(lines.circle[i]!);
    split = true;
  }
  return split;
}

function middleOf(points: PointSet, a: number, b: number, circle: number): number {
  let [x, y] = [(points.x[a]! + points.x[b]!) / 2, (points.y[a]! + points.y[b]!) / 2];
  if (circle === -1) return points.add(x, y, -1);
  const [cx, cy, radius] = points.circles.slice(3 * circle, 3 * circle + 3) as [number, number, number];
  const grow = radius / Math.hypot(x - cx, y - cy);
  [x, y] = [cx + (x - cx) * grow, cy + (y - cy) * grow];
  const same = points.electrode[a] === points.electrode[b] ? points.electrode[a]! : -1;
  return points.add(x, y, circle, same);
}

/** Triangles with some area, counter-clockwise, without those that lie within one electrode. */
function upright(found: Uint32Array, { x, y, electrode }: PointSet): Int32Array {
  const kept: number[] = [];
  for (let i = 0; i < found.length; i += 3) {
    const [a, b, c] = [found[i]!, found[i + 1]!, found[i + 2]!];
    const one = electrode[a]!;
    if (one !== AIR && one === electrode[b] && one === electrode[c]) continue;
    const [ux, uy, vx, vy] = [x[b]! - x[a]!, y[b]! - y[a]!, x[c]! - x[a]!, y[c]! - y[a]!];
    const area = ux * vy - uy * vx;
    if (Math.abs(area) < 1e-7 * (ux * ux + uy * uy + vx * vx + vy * vy)) continue;
    if (area > 0) kept.push(a, b, c);
    else kept.push(a, c, b);
  }
  return Int32Array.from(kept);
}
