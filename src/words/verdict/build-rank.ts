// Which of many builds is worse: by the verdict, then by what the worst pair reaches, then by how much it is short.

import { leadingPath } from '#words/paths/leading-path.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { gradeHeight } from './grade-height.ts';
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

export function buildRank(verdict: Verdict): BuildRank {
  const [worst] = worstFirst(verdict);
  const limiting = worst && leadingPath(worst);
  const isShort = limiting?.length != null && limiting.required;
  return {
    answer: ORDER.indexOf(verdict.verdict),
    rung: gradeHeight(worst?.achieved ?? 'reinforced'),
    missing: isShort ? 1 - (limiting.length ?? 0) / (limiting.required ?? 1) : 0,
  };
}

/** Below 0 where `a` is worse. */
export const compareRanks = (a: BuildRank, b: BuildRank): number =>
  a.answer - b.answer || a.rung - b.rung || b.missing - a.missing;
