// Which body fills each triangle, and with what permittivity. Nearly all lie within one body; where one does not (in a
// wedge too narrow for the mesh) its permittivity is the mean over sixteen places.

import { AIR, type BodyMap } from './body-map.ts';
import type { Mesh } from './mesh.ts';

type Bare = Omit<Mesh, 'body' | 'permittivity'>;

/** Weights of the corners at the places asked first. */
const FIRST = [
  [1 / 3, 1 / 3],
  [0.9, 0.05],
  [0.05, 0.9],
  [0.05, 0.05],
] as const;

/** The chord of a wire cuts off a sliver of metal: a triangle there counts as what else it holds. */
export function fillTriangles(mesh: Bare, map: BodyMap): Mesh {
  const count = mesh.triangles.length / 3;
  const body = new Int32Array(count);
  const permittivity = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const at = (u: number, v: number): number => lookUp(mesh, 3 * i, map, u, v);
    const codes = FIRST.map(([u, v]) => at(u, v));
    const middle = codes.find((code) => !isMetal(code)) ?? AIR;
    body[i] = middle === AIR ? AIR : middle >> 1;
    const whole = codes.every((code) => code === middle || isMetal(code));
    permittivity[i] = whole ? permittivityOf(map, middle) : meanOver(at, map, middle);
  }
  return { ...mesh, body, permittivity };
}

const isMetal = (code: number): boolean => code !== AIR && code % 2 === 1;

/** `t`: where the triangle's points begin. */
function lookUp({ x, y, triangles }: Bare, t: number, map: BodyMap, u: number, v: number): number {
  const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
  const w = 1 - u - v;
  return map.at(u * x[a]! + v * x[b]! + w * x[c]!, u * y[a]! + v * y[b]! + w * y[c]!);
}

const permittivityOf = ({ section }: BodyMap, code: number): number =>
  code === AIR ? section.background : section.bodies[code >> 1]!.permittivity;

const PARTS = 4;

/** Metal has none; it counts as what fills the middle. */
function meanOver(at: (u: number, v: number) => number, map: BodyMap, middle: number): number {
  let sum = 0;
  for (let row = 0; row < PARTS; row++) {
    for (let i = 0; i < 2 * (PARTS - row) - 1; i++) {
      const flipped = i % 2;
      const u = ((i - flipped) / 2 + (1 + flipped) / 3) / PARTS;
      const code = at(u, (row + (1 + flipped) / 3) / PARTS);
      sum += permittivityOf(map, isMetal(code) ? middle : code);
    }
  }
  return sum / (PARTS * PARTS);
}
