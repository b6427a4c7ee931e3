// Field strength at the corners of triangles: the mean over the triangles round each point that belong to the same body,
// so that it runs smoothly within a body and jumps at its edge, as it does.

import type { Mesh } from '#field/mesh/mesh.ts';

/** Of one triangle after the other, as it is asked for: only those of a window are ever worked out. */
export type CornerStrength = (triangle: number) => readonly [number, number, number];

/** `vector`: the field of each triangle, two numbers each. */
export function smoothStrength({ triangles, body, x, y }: Mesh, vector: Float64Array): CornerStrength {
  const start = new Int32Array(x.length + 1);
  for (const point of triangles) start[point + 1]! += 1;
  for (let i = 0; i < x.length; i++) start[i + 1]! += start[i]!;
  const place = start.slice();
  const around = new Int32Array(triangles.length);
  triangles.forEach((point, i) => (around[place[point]!++] = Math.floor(i / 3)));
  const areaOf = (t: number): number => {
    const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
    return Math.abs((x[b]! - x[a]!) * (y[c]! - y[a]!) - (x[c]! - x[a]!) * (y[b]! - y[a]!));
  };
  const at = (point: number, of: number): number => {
    let [fx, fy, whole] = [0, 0, 0];
    for (let k = start[point]!; k < start[point + 1]!; k++) {
      const t = around[k]!;
      if (body[t] !== of) continue;
      const area = areaOf(t);
      fx += area * vector[2 * t]!;
      fy += area * vector[2 * t + 1]!;
      whole += area;
    }
    return whole > 0 ? Math.hypot(fx, fy) / whole : 0;
  };
  return (t) => [0, 1, 2].map((i) => at(triangles[3 * t + i]!, body[t]!)) as [number, number, number];
}
