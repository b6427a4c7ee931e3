// Field strength at the surface of metal, V/mm, from the charge that each of its points carries over the length of
// surface that is its own: far more exact than the slope of the triangle beside it.

import type { FieldState, SolvedField } from '#field/solve/solve-field.ts';

export interface SurfacePoint {
  readonly x: number;
  readonly y: number;
  readonly electrode: number;
  readonly strength: number;
}

/** Plane sections only. */
export function surfaceStrength({ mesh }: SolvedField, { surface }: FieldState): readonly SurfacePoint[] {
  const { x, y, electrode, triangles, permittivity } = mesh;
  const own = new Float64Array(x.length);
  for (let t = 0; t < triangles.length; t += 3) {
    for (let i = 0; i < 3; i++) {
      const [a, b] = [triangles[t + i]!, triangles[t + ((i + 1) % 3)]!];
      if (electrode[a] === -1 || electrode[a] !== electrode[b]) continue;
      const half = (Math.hypot(x[a]! - x[b]!, y[a]! - y[b]!) * permittivity[t / 3]!) / 2;
      own[a]! += half;
      own[b]! += half;
    }
  }
  const found: SurfacePoint[] = [];
  own.forEach((length, i) => {
    if (length === 0) return;
    found.push({
      x: x[i]!,
      y: y[i]!,
      electrode: electrode[i]!,
      strength: Math.abs(surface[i]!) / length,
    });
  });
  return found;
}
