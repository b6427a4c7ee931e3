// Which triangles have to be divided: those that the capacitances hang on most, by what both fields of a pair break by
// there, as a part of the capacitance between the two. None where the mesh is good enough as it is.

import type { Nm } from '#units/quantity.ts';

import type { Mesh } from '#field/mesh/mesh.ts';
import { neighboursOf } from './neighbours.ts';
import { sideJumps } from './side-jumps.ts';

export interface Coupling {
  readonly between: readonly [number, number];
  /** Capacitance, positive. */
  readonly value: number;
}

/** All that a coupling breaks by, as a part of it: about six times what two resolutions then differ by. */
const GOOD_ENOUGH = 0.05;
/** What division goes on to, and the part of all triangles at which it ends all the same. */
const GOAL = 0.035;
const MOST = 0.08;

/** `units`: the field of a volt on each conductor in turn. */
export function tooCoarse(
  mesh: Mesh,
  units: readonly Float64Array[],
  couplings: readonly Coupling[],
  axis: Nm | null,
): readonly number[] {
  const neighbours = neighboursOf(mesh.triangles, mesh.x.length);
  const jumps = units.map((unit) => sideJumps(mesh, neighbours, unit, axis));
  const parts = couplings.map(({ between: [i, k], value }) => {
    const [a, b] = [jumps[i]!, jumps[k]!];
    return a.map((jump, t) => Math.sqrt(jump * b[t]!) / value);
  });
  const left = parts.map((part) => part.reduce((sum, one) => sum + one, 0));
  if (left.every((sum) => sum <= GOOD_ENOUGH)) return [];
  const most = new Float64Array(mesh.permittivity.length);
  for (const part of parts) part.forEach((one, t) => (most[t] = Math.max(most[t]!, one)));
  const order = Int32Array.from(most.keys()).sort((a, b) => most[b]! - most[a]!);
  const found: number[] = [];
  for (const t of order) {
    if (found.length >= MOST * order.length || left.every((sum) => sum <= GOAL)) break;
    found.push(t);
    parts.forEach((part, k) => (left[k]! -= part[t]!));
  }
  return found;
}
