// Every triangle into four, the new points of circles put onto their circles: the second resolution, which tells how
// far the first one is off. `from` names the two points that each new point lies between.

import type { BodyMap } from './body-map.ts';
import { fillTriangles } from './fill.ts';
import type { Mesh } from './mesh.ts';

export interface Refined {
  readonly mesh: Mesh;
  /** Two old points for each new one; old points keep their numbers and come first. */
  readonly from: Int32Array;
}

export function refined(mesh: Mesh, map: BodyMap): Refined {
  const old = mesh.x.length;
  const { edges, ofTriangle } = edgesOf(mesh.triangles, old);
  const count = edges.length / 2;
  const grow = (from: Float64Array) => {
    const all = new Float64Array(old + count);
    all.set(from);
    return all;
  };
  const [x, y] = [grow(mesh.x), grow(mesh.y)];
  const circle = new Int32Array(old + count).fill(-1);
  const electrode = new Int32Array(old + count).fill(-1);
  circle.set(mesh.circle);
  electrode.set(mesh.electrode);
  for (let i = 0; i < count; i++) {
    const [a, b, at] = [edges[2 * i]!, edges[2 * i + 1]!, old + i];
    x[at] = (x[a]! + x[b]!) / 2;
    y[at] = (y[a]! + y[b]!) / 2;
    circle[at] = sharedCircle(mesh, a, b);
    if (mesh.electrode[a] !== -1 && mesh.electrode[a] === mesh.electrode[b]) {
      // the chord of a round shell lies inside it, though both its ends are metal
      const inMetal = circle[at] !== -1 || map.electrodeAt(x[at]!, y[at]!) !== -1;
      if (inMetal) electrode[at] = mesh.electrode[a]!;
    }
    if (circle[at] !== -1) project(mesh.circles, circle[at]!, x, y, at);
  }
  const triangles = split(mesh.triangles, ofTriangle, old);
  layBack(triangles, edges, old, x, y);
  const { circles } = mesh;
  return { mesh: fillTriangles({ x, y, circle, circles, electrode, triangles }, map), from: edges };
}

type Circled = Readonly<Record<'x' | 'y' | 'circle' | 'circles', ArrayLike<number>>>;

/** The circle on which both points are neighbours; a long chord through its inside is none. */
export function sharedCircle(mesh: Circled, a: number, b: number): number {
  const circle = mesh.circle[a]!;
  if (circle === -1 || circle !== mesh.circle[b]) return -1;
  const length = Math.hypot(mesh.x[a]! - mesh.x[b]!, mesh.y[a]! - mesh.y[b]!);
  return length < 0.8 * mesh.circles[3 * circle + 2]! ? circle : -1;
}

function project(circles: Float64Array, circle: number, x: Float64Array, y: Float64Array, at: number): void {
  const [cx, cy, radius] = [circles[3 * circle]!, circles[3 * circle + 1]!, circles[3 * circle + 2]!];
  const grow = radius / Math.hypot(x[at]! - cx, y[at]! - cy);
  x[at] = cx + (x[at]! - cx) * grow;
  y[at] = cy + (y[at]! - cy) * grow;
}

/** Where a point put onto its circle turns a thin triangle over, it stays on the chord. */
function layBack(
  triangles: Int32Array,
  edges: Int32Array,
  old: number,
  x: Float64Array,
  y: Float64Array,
): void {
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    const area = (x[b]! - x[a]!) * (y[c]! - y[a]!) - (x[c]! - x[a]!) * (y[b]! - y[a]!);
    if (area > 0) continue;
    for (const at of [a, b, c]) {
      if (at < old) continue;
      const [p, q] = [edges[2 * (at - old)]!, edges[2 * (at - old) + 1]!];
      x[at] = (x[p]! + x[q]!) / 2;
      y[at] = (y[p]! + y[q]!) / 2;
    }
  }
}

function split(triangles: Int32Array, ofTriangle: Int32Array, old: number): Int32Array {
  const four = new Int32Array(4 * triangles.length);
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [triangles[i]!, triangles[i + 1]!, triangles[i + 2]!];
    const [ab, bc, ca] = [old + ofTriangle[i]!, old + ofTriangle[i + 1]!, old + ofTriangle[i + 2]!];
    four.set([a, ab, ca, ab, b, bc, ca, bc, c, ab, bc, ca], 4 * i);
  }
  return four;
}

/** Each edge once, two points each, and the three edges of every triangle (from its first point to its second, …). */
function edgesOf(triangles: Int32Array, points: number) {
  const start = new Int32Array(points + 1);
  const lower = (i: number) => Math.min(triangles[i]!, triangles[next(i)]!);
  for (let i = 0; i < triangles.length; i++) start[lower(i) + 1]! += 1;
  for (let i = 0; i < points; i++) start[i + 1]! += start[i]!;
  const higher = new Int32Array(triangles.length);
  const number = new Int32Array(triangles.length);
  const used = new Int32Array(points);
  const ofTriangle = new Int32Array(triangles.length);
  const edges: number[] = [];
  for (let i = 0; i < triangles.length; i++) {
    const low = lower(i);
    const high = Math.max(triangles[i]!, triangles[next(i)]!);
    const begin = start[low]!;
    let k = begin;
    while (k < begin + used[low]! && higher[k] !== high) k += 1;
    if (k === begin + used[low]!) {
      higher[k] = high;
      number[k] = edges.length / 2;
      edges.push(low, high);
      used[low]! += 1;
    }
    ofTriangle[i] = number[k]!;
  }
  return { edges: Int32Array.from(edges), ofTriangle };
}

const next = (i: number): number => (i % 3 === 2 ? i - 2 : i + 1);
