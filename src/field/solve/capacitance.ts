// Capacitances from charges. The matrix tells the charge of conductor i for a volt on conductor j with all others at 0:
// positive on its diagonal, negative beside it. Square, row by row, over the permittivity of vacuum.

import type { Coupling } from '#field/adapt/too-coarse.ts';

export interface Square {
  readonly size: number;
  readonly value: Float64Array;
}

export const at = ({ size, value }: Square, row: number, column: number): number =>
  value[row * size + column]!;

/** From two resolutions, the second with triangles half as wide: what both point to, and how far that may be off. */
export function extrapolated(
  coarse: Square,
  fine: Square,
): { readonly matrix: Square; readonly off: Square } {
  const { size } = fine;
  const step = fine.value.map((value, i) => (value - coarse.value[i]!) / 3);
  return {
    matrix: { size, value: fine.value.map((value, i) => value + step[i]!) },
    off: { size, value: step.map(Math.abs) },
  };
}

/** The same of one figure: where both point to, and the part of it by which that may be off, 1 at most. */
export function extrapolatedOne(
  coarse: number,
  fine: number,
): { readonly value: number; readonly error: number } {
  const step = (fine - coarse) / 3;
  const value = fine + step;
  return { value, error: step === 0 ? 0 : Math.min(1, Math.abs(step / value)) };
}

/** The mean of both halves: what the mesh is off by is not quite alike on either side. */
export function symmetric({ size, value }: Square): Square {
  const mean = new Float64Array(value.length);
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < size; k++) mean[i * size + k] = (value[i * size + k]! + value[k * size + i]!) / 2;
  }
  return { size, value: mean };
}

/** What is left when some conductors float: without charge of their own they only pass the field on. */
export function withoutFloating(matrix: Square, floating: readonly number[]): Square {
  const { size } = matrix;
  const value = matrix.value.slice();
  for (const f of floating) {
    const own = value[f * size + f]!;
    if (!(own > 0)) continue;
    const [row, column] = [value.slice(f * size, (f + 1) * size), columnOf(value, size, f)];
    for (let i = 0; i < size; i++) {
      for (let k = 0; k < size; k++) value[i * size + k]! -= (column[i]! * row[k]!) / own;
    }
  }
  return { size, value };
}

/** Potentials at which floating conductors carry no charge; `charges`: theirs while they are held at 0. */
export function floatingPotentials(
  matrix: Square,
  floating: readonly number[],
  charges: Float64Array,
): Float64Array {
  const n = floating.length;
  const rows = floating.map((f) => [...floating.map((g) => at(matrix, f, g)), -charges[f]!]);
  for (let i = 0; i < n; i++) {
    const pivot = rows[i]![i]!;
    if (!(pivot > 0)) continue;
    for (let r = 0; r < n; r++) {
      if (r === i) continue;
      const factor = rows[r]![i]! / pivot;
      for (let c = i; c <= n; c++) rows[r]![c]! -= factor * rows[i]![c]!;
    }
  }
  // a conductor that nothing pulls at stays at 0
  return Float64Array.from(rows, (row, i) => (row[i]! > 0 ? row[n]! / row[i]! : 0));
}

function columnOf(value: Float64Array, size: number, column: number): Float64Array {
  return Float64Array.from({ length: size }, (_, i) => value[i * size + column]!);
}

/** Of the largest capacitance: what is under it matters to nobody. */
const TRIFLE = 0.02;

/** Of every two conductors that pass more than a trifle to each other. */
export function couplingsOf(matrix: Square): readonly Coupling[] {
  const all: Coupling[] = [];
  for (let i = 0; i < matrix.size; i++) {
    for (let k = 0; k < i; k++) all.push({ between: [i, k], value: Math.abs(at(matrix, i, k)) });
  }
  const most = Math.max(...all.map(({ value }) => value));
  return all.filter(({ value }) => value > TRIFLE * most);
}
