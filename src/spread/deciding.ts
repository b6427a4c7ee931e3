// Which figures decide: how far the order of the pieces by one figure is their order by the distance that limits them
// (the square of the rank correlation; figures are drawn independently, so that the squares add up to no more than one).

import type { ShortJudgement } from '#judge/judging/short-judgement.ts';
import type { Coordinate } from './coordinates.ts';
import type { MeasuredPiece } from './spread-part.ts';

export interface Deciding {
  readonly field: string;
  /** From 0 to 1: part of the spread that goes with this figure. */
  readonly weight: number;
  /** Range that is counted, mm, or number of plies. */
  readonly from: number;
  readonly to: number;
  readonly moreIs: 'better' | 'worse';
}

/** Fewer pieces tell nothing. */
const LEAST_PIECES = 20;
/** What chance alone gives is about one over the number of pieces; three times as much is told. */
const ABOVE_CHANCE = 3;

/** Heaviest first. */
export function decidingOf(
  coordinates: readonly Coordinate[],
  measured: readonly MeasuredPiece[],
): readonly Deciding[] {
  if (measured.length < LEAST_PIECES) return [];
  const reserves = ranks(measured.map(({ judged }) => reserveOf(judged)));
  return coordinates
    .map(({ field, worse, better }, i) => {
      const by = correlation(ranks(measured.map(({ values }) => values[i]!)), reserves);
      return {
        field,
        weight: Math.round(by ** 2 * 1000) / 1000,
        from: Math.min(worse, better),
        to: Math.max(worse, better),
        moreIs: by > 0 ? ('better' as const) : ('worse' as const),
      };
    })
    .filter(({ weight }) => weight > ABOVE_CHANCE / measured.length)
    .sort((a, b) => b.weight - a.weight);
}

/** The least part of what is asked that any pair has; where nothing limits, more than any. */
function reserveOf({ pairs }: ShortJudgement): number {
  const parts = pairs.flatMap(({ length, required }) =>
    length === null || required === null || required === 0 ? [] : [length / required],
  );
  return Math.min(1e6, ...parts);
}

/** Equal values share the mean of their ranks. */
function ranks(values: readonly number[]): readonly number[] {
  const order = values.map((value, i) => ({ value, i })).sort((a, b) => a.value - b.value);
  const found = new Array<number>(values.length).fill(0);
  for (let from = 0; from < order.length;) {
    let to = from + 1;
    while (to < order.length && order[to]!.value === order[from]!.value) to += 1;
    for (let k = from; k < to; k += 1) found[order[k]!.i] = (from + to - 1) / 2;
    from = to;
  }
  return found;
}

function correlation(a: readonly number[], b: readonly number[]): number {
  const middle = (a.length - 1) / 2;
  const sum = (f: (i: number) => number): number => a.reduce((total, _, i) => total + f(i), 0);
  const norm = Math.sqrt(sum((i) => (a[i]! - middle) ** 2) * sum((i) => (b[i]! - middle) ** 2));
  return norm === 0 ? 0 : sum((i) => (a[i]! - middle) * (b[i]! - middle)) / norm;
}
