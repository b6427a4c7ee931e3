// Groups of neighbouring unknowns that hang strongly together, for the next coarser level of `multigrid.ts`.

import { diagonalOf, type Sparse } from './sparse.ts';

/** The group of each unknown, and how many groups there are. */
export interface Groups {
  readonly of: Int32Array;
  readonly count: number;
}

/** Two unknowns hang strongly together where their entry is over this part of the mean of their diagonals. */
const STRONG = 0.08;

export function groupsOf(matrix: Sparse, level: number): Groups {
  const { rows, start, column, value } = matrix;
  const diagonal = diagonalOf(matrix);
  const strong = (i: number, k: number): boolean => {
    const limit = STRONG * Math.pow(0.5, level);
    const off = value[k]!;
    return column[k] !== i && off * off > limit * limit * diagonal[i]! * diagonal[column[k]!]!;
  };
  const of = new Int32Array(rows).fill(-1);
  let count = 0;
  // first whole neighbourhoods in which nothing is taken yet
  for (let i = 0; i < rows; i++) {
    if (of[i] !== -1) continue;
    let free = true;
    for (let k = start[i]!; k < start[i + 1]! && free; k++) free = !strong(i, k) || of[column[k]!] === -1;
    if (!free) continue;
    of[i] = count;
    for (let k = start[i]!; k < start[i + 1]!; k++) if (strong(i, k)) of[column[k]!] = count;
    count += 1;
  }
  // then what is left goes to the group it hangs most strongly on, or stands alone
  const first = of.slice();
  for (let i = 0; i < rows; i++) {
    if (of[i] !== -1) continue;
    let most = 0;
    for (let k = start[i]!; k < start[i + 1]!; k++) {
      const size = Math.abs(value[k]!);
      if (strong(i, k) && first[column[k]!] !== -1 && size > most) [most, of[i]] = [size, first[column[k]!]!];
    }
    if (of[i] === -1) of[i] = count++;
  }
  return { of, count };
}
