// Voltages of the nodes of a linear network at one frequency: some held, the rest found by the sum of currents.

import { complex, magnitude, minus, over, plus, times, type Complex } from './complex.ts';

export interface Branch {
  readonly from: string;
  readonly to: string;
  readonly admittance: Complex;
}

/** A node that no branch ties to anything held stays at 0: no current reaches it. */
export function nodeVoltages(
  branches: readonly Branch[],
  held: ReadonlyMap<string, Complex>,
): ReadonlyMap<string, Complex> {
  const free = [...new Set(branches.flatMap(({ from, to }) => [from, to]))].filter((node) => !held.has(node));
  const rows = free.map(() => [...free.map(() => complex(0)), complex(0)]);
  for (const { from, to, admittance } of branches) {
    for (const [node, other] of [[from, to] as const, [to, from] as const]) {
      const row = rows[free.indexOf(node)];
      if (row === undefined) continue;
      add(row, free.indexOf(node), admittance);
      const fixed = held.get(other);
      if (fixed === undefined) add(row, free.indexOf(other), minus(complex(0), admittance));
      else add(row, free.length, times(admittance, fixed));
    }
  }
  const found = eliminated(rows);
  return new Map([...held, ...free.map((node, i): [string, Complex] => [node, found[i] ?? complex(0)])]);
}

/** Current out of a node through its branches. */
export function currentFrom(
  node: string,
  branches: readonly Branch[],
  voltages: ReadonlyMap<string, Complex>,
): Complex {
  const at = (name: string) => voltages.get(name) ?? complex(0);
  return branches.reduce((sum, { from, to, admittance }) => {
    if (from !== node && to !== node) return sum;
    return plus(sum, times(admittance, minus(at(node), at(from === node ? to : from))));
  }, complex(0));
}

type Row = Complex[];

const add = (row: Row, i: number, value: Complex): void => {
  row[i] = plus(row[i] ?? complex(0), value);
};

/** Elimination with the largest pivot; a column without one is a node that nothing holds. */
function eliminated(rows: readonly Row[]): readonly Complex[] {
  const left = [...rows];
  const n = rows.length;
  const pivots: (Row | null)[] = [];
  for (let column = 0; column < n; column += 1) {
    left.sort((a, b) => size(b, column) - size(a, column));
    const pivot = size(left[0] ?? [], column) > 1e-30 ? left.shift() : undefined;
    pivots.push(pivot ?? null);
    if (pivot === undefined) continue;
    for (const row of left) reduce(row, pivot, column);
  }
  const found: Complex[] = Array.from({ length: n }, () => complex(0));
  for (let column = n - 1; column >= 0; column -= 1) {
    const pivot = pivots[column];
    if (pivot == null) continue;
    let right = pivot[n] ?? complex(0);
    for (let k = column + 1; k < n; k += 1) {
      right = minus(right, times(pivot[k] ?? complex(0), found[k] ?? complex(0)));
    }
    found[column] = over(right, pivot[column] ?? complex(1));
  }
  return found;
}

const size = (row: Row, column: number): number => magnitude(row[column] ?? complex(0));

function reduce(row: Row, pivot: Row, column: number): void {
  const factor = over(row[column] ?? complex(0), pivot[column] ?? complex(1));
  for (let k = column; k < row.length; k += 1) {
    row[k] = minus(row[k] ?? complex(0), times(factor, pivot[k] ?? complex(0)));
  }
}
