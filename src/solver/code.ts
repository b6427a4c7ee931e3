// What a path has picked up on its way, packed into one number so that two paths compare in one step.
// Fields of four bits each, the top bit kept free as a guard: six counts of punctured plies (by class of stuff), the
// worst tracking rank met, and whether the last step went through a closed joint.

import { MANY } from './pieces.ts';

/** Classes of stuff that are told apart; further ones share the last. */
export const CLASSES = 6;
const RANK = 4 * CLASSES;
const HOP = RANK + 4;
const GUARDS = 0x88888888 | 0;
const COUNTS = 0xffffff;
/** Added to counts, sets the guard of every count above `MANY`. */
const OVER = 0x333333;

/** `a` has no more of anything than `b`. */
export const noMoreThan = (a: number, b: number): boolean => (((b | GUARDS) - a) & GUARDS) === GUARDS;

export const plyOf = (cls: number, count: number): number => Math.min(count, MANY) << (4 * cls);

/** Adds punctured plies; counts stop at `MANY`. */
export function withPlies(code: number, plies: number): number {
  const sum = (code & COUNTS) + plies;
  const rest = code & ~COUNTS;
  return ((sum + OVER) & GUARDS & COUNTS) === 0 ? rest | sum : rest | saturated(sum);
}

function saturated(sum: number): number {
  let counts = 0;
  for (let cls = 0; cls < CLASSES; cls++) counts |= plyOf(cls, (sum >> (4 * cls)) & 15);
  return counts;
}

export const rankOf = (code: number): number => (code >> RANK) & 7;

export function withRank(code: number, rank: number): number {
  return rank > rankOf(code) ? (code & ~(7 << RANK)) | (rank << RANK) : code;
}

export const hopped = (code: number): boolean => (code >> HOP) % 2 === 1;

export const withHop = (code: number, hop: boolean): number => (hop ? code | (1 << HOP) : code & ~(1 << HOP));

export const countOf = (code: number, cls: number): number => (code >> (4 * cls)) & 7;

/** All plies, `MANY` for that many and more. */
export function pliesOf(code: number): number {
  let sum = 0;
  for (let cls = 0; cls < CLASSES; cls++) sum += countOf(code, cls);
  return Math.min(sum, MANY);
}
