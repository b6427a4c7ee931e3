// The build once more with its floating core counted as a part of the primary.

import { answerOf, judgedAnswers, lowestAnswer, missingOf, undrawnOf } from '#judge/answers/pair-answer.ts';
import { judgeBest } from '#judge/cases/best-case.ts';
import { judgeWorst } from '#judge/cases/worst-case.ts';
import { requiredLength } from '#judge/spots/spots.ts';
import type { CoreAsPrimary } from '#judge/verdict/verdict.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import type { Found } from './found.ts';

/** Laboratories often count the core with the primary: shown beside a core that floats. */
export function coreAsPrimary({ judging, design, worst: asIs, answers }: Found): CoreAsPrimary | null {
  const { bond } = design.core;
  const primary = design.circuits.find(({ role }) => role === 'mains');
  if (bond !== 'floating' || !primary || asIs.nominal.coreBonds[0] !== null) return null;
  const worst = judgeWorst(judging, design, primary.id);
  const best = judgeBest(judging, design, worst, primary.id);
  const missing = missingOf(design);
  const tied = worst.pairs.map((pair, i) => answerOf(pair, best[i]!, missing));
  const asked = worst.pairs.flatMap((pair, i) => (pair.needed === null ? [] : [{ pair, verdict: tied[i]! }]));
  const pairs = asked.map(({ pair, verdict }) => {
    const isJudged = undrawnOf(pair, missing).length === 0 || verdict !== 'not-shown';
    const path = isJudged && pair.holding?.kind === 'path' ? pair.holding : null;
    return {
      between: pair.between,
      achieved: isJudged ? pair.achieved : ('none' as const),
      verdict,
      length: path && inMm(path.length as Nm),
      required: path && requiredLength(path, pair),
      metric: path && path.metric,
    };
  });
  const all = [tied, answers].flatMap((each) => judgedAnswers(worst.pairs, each, missing));
  return { verdict: lowestAnswer(all), pairs };
}
