// Gauss and Seidel over a matrix whose rows hold first what lies before the diagonal, then it, then what lies behind.
// Forward from nothing and backward from there: together they are symmetric, and half of the first pass falls away.

import type { Sparse } from './sparse.ts';

export interface Halved extends Sparse {
  /** Where in each row the diagonal stands. */
  readonly middle: Int32Array;
}

/** Every row has its diagonal. */
export function halved({ rows, columns, start, column, value }: Sparse): Halved {
  const middle = new Int32Array(rows);
  const [to, held] = [new Int32Array(column.length), new Float64Array(column.length)];
  for (let i = 0; i < rows; i++) {
    let [front, back] = [start[i]!, start[i + 1]! - 1];
    let diagonal = 0;
    for (let k = start[i]!; k < start[i + 1]!; k++) {
      if (column[k] === i) diagonal += value[k]!;
      else {
        const at = column[k]! < i ? front++ : back--;
        to[at] = column[k]!;
        held[at] = value[k]!;
      }
    }
    to[front] = i;
    held[front] = diagonal;
    middle[i] = front;
  }
  return { rows, columns, start, column: to, value: held, middle };
}

/** Forward, from x = 0, whatever `x` holds. */
export function sweepFromZero(
  { rows, start, middle, column, value }: Halved,
  b: Float64Array,
  x: Float64Array,
): void {
  for (let i = 0; i < rows; i++) {
    const end = middle[i]!;
    let sum = b[i]!;
    for (let k = start[i]!; k < end; k++) sum -= value[k]! * x[column[k]!]!;
    x[i] = sum / value[end]!;
  }
}

/** b - A x after `sweepFromZero`: each row was met when it was passed, and only what came later moves it again. */
export function restAfterSweep(
  { rows, start, middle, column, value }: Halved,
  x: Float64Array,
  into: Float64Array,
): void {
  for (let i = 0; i < rows; i++) {
    const end = start[i + 1]!;
    let sum = 0;
    for (let k = middle[i]! + 1; k < end; k++) sum -= value[k]! * x[column[k]!]!;
    into[i] = sum;
  }
}

export function sweepBack(
  { rows, start, middle, column, value }: Halved,
  b: Float64Array,
  x: Float64Array,
): void {
  for (let i = rows - 1; i >= 0; i--) {
    const [at, end] = [middle[i]!, start[i + 1]!];
    let sum = b[i]!;
    for (let k = start[i]!; k < at; k++) sum -= value[k]! * x[column[k]!]!;
    for (let k = at + 1; k < end; k++) sum -= value[k]! * x[column[k]!]!;
    x[i] = sum / value[at]!;
  }
}
