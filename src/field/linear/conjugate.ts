// Conjugate gradients with a preconditioner: starts from what `x` holds, ends when the error in energy has fallen far
// enough below the energy of the answer, or after a number of steps that only a broken matrix needs.

import type { Multigrid } from './multigrid.ts';
import { times, type Sparse } from './sparse.ts';

const MOST_STEPS = 200;

/** `tolerance`: part of the answer's norm in energy. Returns the number of steps. */
export function conjugate(
  matrix: Sparse,
  multigrid: Multigrid,
  b: Float64Array,
  x: Float64Array,
  tolerance: number,
): number {
  const n = matrix.rows;
  const [r, z, p, q] = [0, 1, 2, 3].map(() => new Float64Array(n)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  times(matrix, x, r);
  const guessed = dot(x, r);
  for (let i = 0; i < n; i++) r[i] = b[i]! - r[i]!;
  multigrid.cycle(r, z);
  p.set(z);
  let size = dot(r, z);
  // a good guess has about the energy of the answer; without one all of it is still missing
  const whole = Math.max(guessed, size);
  for (let step = 0; step < MOST_STEPS; step++) {
    if (!(size > tolerance * tolerance * whole)) return step;
    times(matrix, p, q);
    const alpha = size / dot(p, q);
    for (let i = 0; i < n; i++) {
      x[i]! += alpha * p[i]!;
      r[i]! -= alpha * q[i]!;
    }
    multigrid.cycle(r, z);
    const next = dot(r, z);
    const beta = next / size;
    for (let i = 0; i < n; i++) p[i] = z[i]! + beta * p[i]!;
    size = next;
  }
  return MOST_STEPS;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
