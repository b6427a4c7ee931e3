// What is known already of the shortest paths, as data: a search looks only for what is shorter, and a cache can tell two
// of them apart whole.

import type { SectionLimits } from '#solver/paths/find-pieces.ts';

export interface KnownLengths {
  /** Pieces under it count nothing in a chain. */
  readonly x: number;
  readonly pairs: readonly (readonly [string, string])[];
  /** By pair: for every number of plies the length beyond which nothing is wanted. */
  readonly lengths: readonly (readonly number[])[];
  /** Conductors that metal joins to others, each with the name that it goes by. */
  readonly names: readonly (readonly [conductor: string, name: string])[];
}

/** By number of plies the longest of several. */
export const longestOf = (all: readonly (readonly number[])[]): readonly number[] =>
  (all[0] ?? []).map((_, k) => Math.max(...all.map((lengths) => lengths[k]!)));

export const atLeast = (x: number, lengths: readonly number[]): readonly number[] =>
  lengths.map((length) => Math.max(length, x));

/**
 * What is known for two conductors: that of their pair; over a floating one that of all pairs with the other end, and any
 * length under X, which counts nothing in a chain.
 */
export function knownBetween({
  x,
  pairs,
  lengths,
  names,
}: KnownLengths): NonNullable<SectionLimits['between']> {
  const circuits = new Set(pairs.flat());
  const nameOf = new Map(names);
  return (a, b) => {
    const ends = [a, b].map((end) => nameOf.get(end) ?? end).filter((end) => circuits.has(end));
    const known = longestOf(lengths.filter((_, i) => ends.every((end) => pairs[i]!.includes(end))));
    return ends.length === 2 ? known : atLeast(x, known);
  };
}
