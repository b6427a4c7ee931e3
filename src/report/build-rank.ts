// Which of many builds is worse: by the verdict, then by what the worst pair reaches, then by how much it is short.

import type { Answer, Grade, Verdict } from '#rules/verdict.ts';
import { worstFirst } from './pair-words.ts';

export interface BuildRank {
  /** 0 is the worst. */
  readonly answer: number;
  /** Rungs that the worst pair has climbed. */
  readonly rung: number;
  /** How much the limiting figure is short of what is asked, as a part of it. */
  readonly missing: number;
}

const ORDER: readonly Answer[] = ['falls-short', 'not-shown', 'meets'];

/** Rungs of the ladder; supplementary stands with basic. */
export const GRADE_HEIGHT: Readonly<Record<Grade, number>> = {
  none: 0,
  functional: 1,
  basic: 2,
  supplementary: 2,
  double: 3,
  reinforced: 4,
};

export function buildRank(verdict: Verdict): BuildRank {
  const [worst] = worstFirst(verdict);
  const limiting = worst?.limiting;
  const isShort = limiting?.length != null && limiting.required;
  return {
    answer: ORDER.indexOf(verdict.verdict),
    rung: GRADE_HEIGHT[worst?.achieved ?? 'reinforced'],
    missing: isShort ? 1 - (limiting.length ?? 0) / (limiting.required ?? 1) : 0,
  };
}

/** Below 0 where `a` is worse. */
export const compareRanks = (a: BuildRank, b: BuildRank): number =>
  a.answer - b.answer || a.rung - b.rung || b.missing - a.missing;
