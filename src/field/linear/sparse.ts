// Sparse matrices by rows: the entries of row i stand at `start[i]` up to `start[i + 1]` in `column` and `value`.

export interface Sparse {
  readonly rows: number;
  readonly columns: number;
  readonly start: Int32Array;
  readonly column: Int32Array;
  readonly value: Float64Array;
}

export function times({ rows, start, column, value }: Sparse, x: Float64Array, into: Float64Array): void {
  for (let i = 0; i < rows; i++) {
    let sum = 0;
    for (let k = start[i]!; k < start[i + 1]!; k++) sum += value[k]! * x[column[k]!]!;
    into[i] = sum;
  }
}

export function transposed({ rows, columns, start, column, value }: Sparse): Sparse {
  const begin = new Int32Array(columns + 1);
  for (let k = 0; k < column.length; k++) begin[column[k]! + 1]! += 1;
  for (let i = 0; i < columns; i++) begin[i + 1]! += begin[i]!;
  const place = begin.slice();
  const [to, held] = [new Int32Array(column.length), new Float64Array(column.length)];
  for (let i = 0; i < rows; i++) {
    for (let k = start[i]!; k < start[i + 1]!; k++) {
      const at = place[column[k]!]!++;
      to[at] = i;
      held[at] = value[k]!;
    }
  }
  return { rows: columns, columns: rows, start: begin, column: to, value: held };
}

/** The product, row by row; `where` remembers at which place of the row being made a column stands. */
export function product(a: Sparse, b: Sparse): Sparse {
  const start = new Int32Array(a.rows + 1);
  const where = new Int32Array(b.columns).fill(-1);
  let column = new Int32Array(4 * a.column.length);
  let value = new Float64Array(column.length);
  let used = 0;
  for (let i = 0; i < a.rows; i++) {
    const begin = used;
    for (let k = a.start[i]!; k < a.start[i + 1]!; k++) {
      const [row, weight] = [a.column[k]!, a.value[k]!];
      for (let m = b.start[row]!; m < b.start[row + 1]!; m++) {
        const to = b.column[m]!;
        if (where[to]! < begin) {
          if (used === column.length) {
            column = grown(column, new Int32Array(2 * used + 16));
            value = grown(value, new Float64Array(2 * used + 16));
          }
          where[to] = used;
          column[used] = to;
          value[used] = weight * b.value[m]!;
          used += 1;
        } else value[where[to]!]! += weight * b.value[m]!;
      }
    }
    start[i + 1] = used;
  }
  return {
    rows: a.rows,
    columns: b.columns,
    start,
    column: column.slice(0, used),
    value: value.slice(0, used),
  };
}

function grown<T extends Int32Array | Float64Array>(old: T, into: T): T {
  into.set(old);
  return into;
}

export function diagonalOf({ rows, start, column, value }: Sparse): Float64Array {
  const found = new Float64Array(rows);
  for (let i = 0; i < rows; i++) {
    for (let k = start[i]!; k < start[i + 1]!; k++) if (column[k] === i) found[i]! += value[k]!;
  }
  return found;
}
