// Multigrid by smoothed aggregation, after Vanek, Mandel and Brezina (1996): a preconditioner for the symmetric,
// positive matrices of the field. It needs the matrix only, no coarser mesh. Holds its buffers: one solver at a time.

import { groupsOf } from './aggregates.ts';
import { choleskyOf, type Cholesky } from './cholesky.ts';
import { halved, restAfterSweep, sweepBack, sweepFromZero, type Halved } from './sweeps.ts';
import { diagonalOf, product, times, transposed, type Sparse } from './sparse.ts';

interface Level {
  readonly matrix: Halved;
  readonly up: Sparse;
  readonly down: Sparse;
  readonly rest: Float64Array;
  readonly coarse: Float64Array;
  readonly found: Float64Array;
}

const FEWEST = 150;
const MOST_LEVELS = 12;

export class Multigrid {
  readonly #levels: Level[] = [];
  readonly #last: Cholesky;

  constructor(matrix: Sparse) {
    let at = matrix;
    while (at.rows > FEWEST && this.#levels.length < MOST_LEVELS) {
      const { of, count } = groupsOf(at, this.#levels.length);
      if (count > 0.9 * at.rows) break;
      const diagonal = diagonalOf(at);
      const up = smoothed(at, diagonal, of, count);
      const down = transposed(up);
      const vector = (length: number) => new Float64Array(length);
      this.#levels.push({
        matrix: halved(at),
        up,
        down,
        rest: vector(at.rows),
        coarse: vector(count),
        found: vector(count),
      });
      at = product(down, product(at, up));
    }
    this.#last = choleskyOf(at);
  }

  /** One V-cycle: an approximate solution of A x = b from zero, into `x`. */
  cycle(b: Float64Array, x: Float64Array, depth = 0): void {
    const level = this.#levels[depth];
    if (level === undefined) return this.#last.solve(b, x);
    const { matrix, up, down, rest, coarse, found } = level;
    sweepFromZero(matrix, b, x);
    restAfterSweep(matrix, x, rest);
    times(down, rest, coarse);
    this.cycle(coarse, found, depth + 1);
    times(up, found, rest);
    for (let i = 0; i < rest.length; i++) x[i]! += rest[i]!;
    sweepBack(matrix, b, x);
  }
}

/** Each group's constant, smoothed once by Jacobi so that it costs little energy. */
function smoothed(matrix: Sparse, diagonal: Float64Array, of: Int32Array, count: number): Sparse {
  const { rows, start, column, value } = matrix;
  const weight = 4 / 3 / largest(matrix, diagonal);
  const smoother: Sparse = { rows, columns: rows, start, column, value: new Float64Array(value.length) };
  for (let i = 0; i < rows; i++) {
    for (let k = start[i]!; k < start[i + 1]!; k++) {
      smoother.value[k] = (column[k] === i ? 1 : 0) - (weight * value[k]!) / diagonal[i]!;
    }
  }
  const one = new Int32Array(rows + 1);
  for (let i = 0; i <= rows; i++) one[i] = i;
  const groups: Sparse = {
    rows,
    columns: count,
    start: one,
    column: of,
    value: new Float64Array(rows).fill(1),
  };
  return product(smoother, groups);
}

/** Largest eigenvalue of the matrix over its diagonal: a few steps of the power method, a little above. */
function largest(matrix: Sparse, diagonal: Float64Array): number {
  const { rows } = matrix;
  let x = Float64Array.from({ length: rows }, (_, i) => 1 + ((i * 7919) % 101) / 101);
  let y = new Float64Array(rows);
  let size = 1;
  for (let step = 0; step < 8; step++) {
    times(matrix, x, y);
    let square = 0;
    for (let i = 0; i < rows; i++) {
      y[i]! /= diagonal[i]!;
      square += y[i]! * y[i]!;
    }
    size = Math.sqrt(square);
    for (let i = 0; i < rows; i++) y[i]! /= size;
    [x, y] = [y, x];
  }
  return Math.max(1, 1.1 * size);
}
