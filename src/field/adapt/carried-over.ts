// A potential brought to a mesh that has more points: those keep their numbers that were there before.

import type { Mesh } from '#field/mesh/mesh.ts';

/** New points take the mean of the old ones beside them: a guess to start from. */
export function carriedOver({ x, triangles }: Mesh, potential: Float64Array): Float64Array {
  const old = potential.length;
  const found = new Float64Array(x.length);
  const count = new Int32Array(x.length);
  found.set(potential);
  for (let i = 0; i < triangles.length; i++) {
    const to = triangles[i]!;
    if (to < old) continue;
    const first = i - (i % 3);
    for (let k = first; k < first + 3; k++) {
      const from = triangles[k]!;
      if (from >= old) continue;
      found[to]! += potential[from]!;
      count[to]! += 1;
    }
  }
  for (let i = old; i < found.length; i++) if (count[i]! > 0) found[i]! /= count[i]!;
  return found;
}
