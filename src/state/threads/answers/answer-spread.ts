// The spread of a build, drawn beside the page: of some of the draws is told how many are made and how many pieces meet; then
// what all of them together say.

import { fileJudge } from '#judge/judging/judge-files.ts';
import { MEASURED, spreadOf, spreadPart } from '#spread/spread.ts';
import type { Answerer } from '#state/threads/asks/asks.ts';

export const answerDraws: Answerer<'draws'> = function* drawn({ doc, numbers, ...asked }, tell) {
  const search = spreadPart(doc, fileJudge(), { ...asked, measured: MEASURED }, numbers);
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
    tell({ count: step.value.count, meets: step.value.meets });
    yield;
  }
};

export const answerSpread: Answerer<'spread'> = function* summed({ doc, part, ...asked }) {
  yield;
  return spreadOf(doc, fileJudge(), { ...asked, measured: MEASURED }, part);
};
