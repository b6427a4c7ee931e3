// The matrix of a mesh: linear triangles, permittivity relative to vacuum; plane, or turned round an axis.
// Row i tells the charge of point i over the permittivity of vacuum when the points hold given potentials.

import { inMm, type Nm } from '#units/quantity.ts';

import type { Mesh } from '#field/mesh/mesh.ts';
import type { Sparse } from '#field/linear/sparse.ts';

export function stiffnessOf(mesh: Mesh, axis: Nm | null): Sparse {
  const points = mesh.x.length;
  const { triangles } = mesh;
  const room = new Int32Array(points + 1);
  // every triangle that a point belongs to brings it two neighbours at most, and there is the diagonal
  for (let i = 0; i < triangles.length; i++) room[triangles[i]! + 1]! += 2;
  for (let i = 0; i < points; i++) room[i + 1]! += room[i]! + 1;
  const column = new Int32Array(room[points]!);
  const value = new Float64Array(room[points]!);
  const used = new Int32Array(points);
  const add = (i: number, j: number, amount: number): void => {
    const begin = room[i]!;
    const end = begin + used[i]!;
    for (let k = begin; k < end; k++) {
      if (column[k] === j) {
        value[k]! += amount;
        return;
      }
    }
    column[end] = j;
    value[end] = amount;
    used[i]! += 1;
  };
  for (let i = 0; i < points; i++) add(i, i, 0);
  const part = new Float64Array(9);
  for (let t = 0; t < triangles.length; t += 3) {
    element(mesh, t, axis, part);
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) add(triangles[t + i]!, triangles[t + j]!, part[3 * i + j]!);
    }
  }
  return packed(room, used, column, value, points);
}

/** Products of the gradients of the three corners, times area and permittivity. */
function element(mesh: Mesh, t: number, axis: Nm | null, into: Float64Array): void {
  const [a, b, c] = [mesh.triangles[t]!, mesh.triangles[t + 1]!, mesh.triangles[t + 2]!];
  const { x, y } = mesh;
  const gx = [y[b]! - y[c]!, y[c]! - y[a]!, y[a]! - y[b]!];
  const gy = [x[c]! - x[b]!, x[a]! - x[c]!, x[b]! - x[a]!];
  const twice = Math.abs(gx[0]! * gy[1]! - gx[1]! * gy[0]!);
  const round = axis === null ? 1 : 2 * Math.PI * ((y[a]! + y[b]! + y[c]!) / 3 - inMm(axis));
  const weight = (mesh.permittivity[t / 3]! * round) / (2 * twice);
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) into[3 * i + j] = weight * (gx[i]! * gx[j]! + gy[i]! * gy[j]!);
  }
}

function packed(
  room: Int32Array,
  used: Int32Array,
  column: Int32Array,
  value: Float64Array,
  points: number,
): Sparse {
  const start = new Int32Array(points + 1);
  for (let i = 0; i < points; i++) start[i + 1] = start[i]! + used[i]!;
  const [to, held] = [new Int32Array(start[points]!), new Float64Array(start[points]!)];
  for (let i = 0; i < points; i++) {
    const begin = room[i]!;
    to.set(column.subarray(begin, begin + used[i]!), start[i]!);
    held.set(value.subarray(begin, begin + used[i]!), start[i]!);
  }
  return { rows: points, columns: points, start, column: to, value: held };
}
