// What judging a design finds, before any of it is printed: every pair at worst and at best, its answer, and which unknowns
// decide it.

import { answerOf, type Missing, missingOf } from '#judge/answers/pair-answer.ts';
import { openFrequencies, openVoltages } from '#judge/assumptions/assumptions.ts';
import { judgeBest } from '#judge/cases/best-case.ts';
import { type Deciders, decidersOf } from '#judge/cases/deciders.ts';
import { judgeWorst, type WorstCase } from '#judge/cases/worst-case.ts';
import { openBridgeFields } from '#judge/conductors/open-bridges.ts';
import type { Judging } from '#judge/once/judging.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import type { Design } from '#model/design.ts';
import { reaches } from '#standards/ladder.ts';

export interface Found {
  readonly judging: Judging;
  readonly design: Design;
  readonly worst: WorstCase;
  /** By pair, as `worst.pairs`; so are the answers. */
  readonly best: readonly PairOutcome[];
  readonly answers: readonly Answer[];
  readonly missing: Missing;
  /** Every unknown that may decide, by its field. */
  readonly fields: readonly string[];
  readonly deciders: Deciders;
}

export function findAll(judging: Judging, design: Design): Found {
  const worst = judgeWorst({ ...judging, printed: true }, design);
  const best = judgeBest(judging, design, worst);
  const missing = missingOf(design);
  const answers = worst.pairs.map((pair, i) => answerOf(pair, best[i]!, missing));
  const open = new Set(
    answers.flatMap((answer, i) => (answer === 'not-shown' && isShort(worst.pairs[i]!) ? [i] : [])),
  );
  const fields = [
    ...worst.nominal.filled.counted.flatMap(({ field, kind }) => (kind === 'default' ? [] : [field])),
    ...design.bridges.flatMap(openBridgeFields).map(({ field }) => field),
    ...openFrequencies(worst.pairs).map(({ field }) => field),
    ...openVoltages(worst.pairs).map(({ field }) => field),
  ];
  const deciders = decidersOf(judging, design, fields, open, worst);
  return { judging, design, worst, best, answers, missing, fields, deciders };
}

export const isShort = ({ achieved, needed }: PairOutcome): boolean => !reaches(achieved, needed);
