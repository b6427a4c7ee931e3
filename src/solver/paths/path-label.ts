// What a path has picked up on its way, packed into one number so that two paths compare in one step.
// Fields of four bits each, the top bit kept free as a guard: six counts of punctured plies (by class of stuff), how much
// better than the worst material of all the worst that it ran along is, and whether the last step went through a closed
// joint. Of every field the less, the weaker: along worse material more length is asked.

import { MANY } from '#solver/network/pieces.ts';

/** Classes of stuff that are told apart; further ones share the last. */
export const CLASSES = 6;
const MATERIAL = 4 * CLASSES;
const HOP = MATERIAL + 4;
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

/** By how many ranks the material is better than the worst. */
export const betterBy = (code: number): number => (code >> MATERIAL) & 7;

/** Runs along material better by so much: what is worse counts. */
export function withMaterial(code: number, better: number): number {
  return better < betterBy(code) ? alongWorst(code) | (better << MATERIAL) : code;
}

/** A path that has not run along anything yet, where materials differ by so many ranks. */
export const begun = (ranks: number): number => ranks << MATERIAL;

/** As it may yet become. */
export const alongWorst = (code: number): number => code & ~(7 << MATERIAL);

export const hopped = (code: number): boolean => (code >> HOP) % 2 === 1;

export const withHop = (code: number, hop: boolean): number => (hop ? code | (1 << HOP) : code & ~(1 << HOP));

export const countOf = (code: number, cls: number): number => (code >> (4 * cls)) & 7;

/** All plies, `MANY` for that many and more. */
export function pliesOf(code: number): number {
  let sum = 0;
  for (let cls = 0; cls < CLASSES; cls++) sum += countOf(code, cls);
  return Math.min(sum, MANY);
}
