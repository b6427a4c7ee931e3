// For each open figure of a build which value of it would turn the verdict, told one by one as they are found.

import { decidingFigure } from '#judge/decide/deciding-figure.ts';
import { readDesign } from '#model/read/read-design.ts';
import { pairAnswers } from '#judge/judging/pair-answers.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { Answerer } from '#state/threads/asks/asks.ts';

export const answerDecide: Answerer<'decide'> = function* decide({ doc, open }, tell) {
  const cache = new PathCache();
  const judge: Parameters<typeof decidingFigure>[2] = (tried) => {
    const read = readDesign(tried, knownIds);
    return read.kind === 'bad' ? null : { pairs: pairAnswers(read.design, cache) };
  };
  for (const [place, one] of open.entries())
    tell({ place, deciding: yield* decidingFigure(doc, one, judge) });
  return null;
};
