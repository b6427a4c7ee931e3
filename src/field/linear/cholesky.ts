// The small dense system at the bottom of the multigrid, by Cholesky. A pivot that is no longer positive belongs to an
// unknown that nothing holds: its value is 0.

import type { Sparse } from './sparse.ts';

export interface Cholesky {
  readonly solve: (b: Float64Array, x: Float64Array) => void;
}

export function choleskyOf({ rows: n, start, column, value }: Sparse): Cholesky {
  const l = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let k = start[i]!; k < start[i + 1]!; k++) l[i * n + column[k]!]! += value[k]!;
  }
  for (let i = 0; i < n; i++) {
    const least = 1e-12 * l[i * n + i]!;
    for (let j = 0; j <= i; j++) {
      let sum = l[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= l[i * n + k]! * l[j * n + k]!;
      if (i === j) l[i * n + i] = sum > least && sum > 0 ? Math.sqrt(sum) : Infinity;
      else l[i * n + j] = l[j * n + j] === Infinity ? 0 : sum / l[j * n + j]!;
    }
  }
  return { solve: (b, x) => solve(l, n, b, x) };
}

function solve(l: Float64Array, n: number, b: Float64Array, x: Float64Array): void {
  for (let i = 0; i < n; i++) {
    let sum = b[i]!;
    for (let k = 0; k < i; k++) sum -= l[i * n + k]! * x[k]!;
    x[i] = sum / l[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let k = i + 1; k < n; k++) sum -= l[k * n + i]! * x[k]!;
    x[i] = sum / l[i * n + i]!;
  }
}
