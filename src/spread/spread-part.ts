// What is found of some of the draws, in the order of their numbers: plain data, which parts worked on elsewhere are joined by.

import type { ShortJudgement } from '#judge/judging/short-judgement.ts';

export interface SpreadPart {
  readonly count: number;
  readonly meets: number;
  readonly measured: readonly MeasuredPiece[];
}

export interface MeasuredPiece {
  /** Of the coordinates, in their order. */
  readonly values: readonly number[];
  readonly judged: ShortJudgement;
}

export const EMPTY: SpreadPart = { count: 0, meets: 0, measured: [] };

export const joined = (a: SpreadPart, b: SpreadPart): SpreadPart => ({
  count: a.count + b.count,
  meets: a.meets + b.meets,
  measured: b.measured.length === 0 ? a.measured : [...a.measured, ...b.measured],
});
