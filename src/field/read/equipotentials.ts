// Lines of equal potential over a raster: marching along the sides of its cells, joined into runs. Millimetres.

import type { Raster } from './raster.ts';

export interface Equipotential {
  readonly volts: number;
  /** Each run: x0, y0, x1, y1, … */
  readonly runs: readonly (readonly number[])[];
}

export function equipotentials(raster: Raster, levels: readonly number[]): readonly Equipotential[] {
  return levels.map((volts) => ({ volts, runs: runsOf(raster, volts) }));
}

/** Pairs of cell sides that the line joins, by which of the four corners lie above: left, bottom, right, top are 0 to 3. */
const JOINS: readonly (readonly number[])[] = [
  [],
  [0, 1],
  [1, 2],
  [0, 2],
  [2, 3],
  [0, 1, 2, 3],
  [1, 3],
  [0, 3],
  [3, 0],
  [3, 1],
  [1, 2, 3, 0],
  [3, 2],
  [2, 0],
  [2, 1],
  [1, 0],
  [],
];

function runsOf(raster: Raster, level: number): readonly (readonly number[])[] {
  const { columns, rows } = raster;
  const joined = new Map<number, number[]>();
  const link = (a: number, b: number): void => {
    const known = joined.get(a);
    if (known === undefined) joined.set(a, [b]);
    else known.push(b);
  };
  for (let row = 0; row + 1 < rows; row++) {
    for (let column = 0; column + 1 < columns; column++) {
      const i = row * columns + column;
      const join = JOINS[cornersAbove(raster, i, level)]!;
      // a side's number: twice its lower left corner, one more for upright ones
      const side = (k: number) => [2 * i + 1, 2 * i, 2 * (i + 1) + 1, 2 * (i + columns)][k]!;
      for (let k = 0; k < join.length; k += 2) {
        const [a, b] = [side(join[k]!), side(join[k + 1]!)];
        link(a, b);
        link(b, a);
      }
    }
  }
  return chained(joined).map((sides) => sides.flatMap((side) => placeOn(raster, side, level)));
}

/** Which corners of the square whose lower left one is `i` lie above the level, one bit each. */
const cornersAbove = ({ columns, volts }: Raster, i: number, level: number): number =>
  (volts[i]! > level ? 1 : 0) |
  (volts[i + 1]! > level ? 2 : 0) |
  (volts[i + columns + 1]! > level ? 4 : 0) |
  (volts[i + columns]! > level ? 8 : 0);

/** Where the level crosses a side. */
function placeOn(
  { columns, volts, x0, y0, step }: Raster,
  side: number,
  level: number,
): readonly [number, number] {
  const i = side >> 1;
  const upright = side % 2 === 1;
  const [from, to] = [volts[i]!, volts[upright ? i + columns : i + 1]!];
  const share = from === to ? 0.5 : (level - from) / (to - from);
  const [column, row] = [i % columns, Math.floor(i / columns)];
  return [
    x0 + (column + 0.5 + (upright ? 0 : share)) * step,
    y0 + (row + 0.5 + (upright ? share : 0)) * step,
  ];
}

/** Chains of sides: open ones from an end, then what is left, which runs in a ring. */
function chained(joined: Map<number, number[]>): readonly (readonly number[])[] {
  const runs: number[][] = [];
  const take = (from: number): void => {
    const run = [from];
    let at = from;
    for (;;) {
      const next = joined.get(at)?.pop();
      if (next === undefined) break;
      const back = joined.get(next);
      const k = back?.indexOf(at) ?? -1;
      if (k >= 0) back!.splice(k, 1);
      run.push(next);
      at = next;
    }
    if (run.length > 1) runs.push(run);
  };
  for (const [side, others] of joined) if (others.length === 1) take(side);
  for (const [side, others] of joined) while (others.length > 0) take(side);
  return runs;
}
