// Where a solved field breaks: on each side of a triangle the flux that leaves one should enter the next. What is left
// over, squared and in units of energy, tells where the mesh is too coarse for that field.

import { inMm, type Nm } from '#units/quantity.ts';

import type { Mesh } from '#field/mesh/mesh.ts';

/** For each triangle; `neighbours` as of `neighboursOf`. Sides at the frame and at metal have nothing to break against. */
export function sideJumps(
  mesh: Mesh,
  neighbours: Int32Array,
  potential: Float64Array,
  axis: Nm | null,
): Float64Array {
  const { x, y, triangles, permittivity } = mesh;
  const { flowX, flowY } = flowOf(mesh, potential);
  const found = new Float64Array(permittivity.length);
  for (let i = 0; i < triangles.length; i++) {
    const [own, other] = [Math.floor(i / 3), neighbours[i]!];
    if (other <= own) continue;
    const [a, b] = [triangles[i]!, triangles[i % 3 === 2 ? i - 2 : i + 1]!];
    const through =
      (flowX[own]! - flowX[other]!) * (y[b]! - y[a]!) - (flowY[own]! - flowY[other]!) * (x[b]! - x[a]!);
    const round = axis === null ? 1 : Math.PI * (y[a]! + y[b]! - 2 * inMm(axis));
    const jump = (PART * round * through * through) / (permittivity[own]! + permittivity[other]!);
    found[own]! += jump;
    found[other]! += jump;
  }
  return found;
}

/** Of the square of a jump, what the field is off by in energy; found by comparing with a finer mesh. */
const PART = 1 / 12;

/** Permittivity times gradient in every triangle. */
function flowOf({ x, y, triangles, permittivity }: Mesh, potential: Float64Array) {
  const [flowX, flowY] = [new Float64Array(permittivity.length), new Float64Array(permittivity.length)];
  for (let t = 0; t < permittivity.length; t++) {
    const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
    const [ux, uy, vx, vy] = [x[b]! - x[a]!, y[b]! - y[a]!, x[c]! - x[a]!, y[c]! - y[a]!];
    const [p, q] = [potential[b]! - potential[a]!, potential[c]! - potential[a]!];
    const scale = permittivity[t]! / (ux * vy - uy * vx);
    flowX[t] = scale * (p * vy - q * uy);
    flowY[t] = scale * (q * ux - p * vx);
  }
  return { flowX, flowY };
}
