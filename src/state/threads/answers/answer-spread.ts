// The spread of a build, drawn beside the page: told is how many pieces are drawn and how many of them meet.

import { fileJudge } from '#judge/judging/judge-files.ts';
import { MEASURED, spread } from '#spread/spread.ts';
import type { Answerer } from '#state/threads/asks/asks.ts';

export const answerSpread: Answerer<'spread'> = function* drawn({ doc, ...asked }, tell) {
  const search = spread(doc, fileJudge(), { ...asked, measured: MEASURED });
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
    tell({ count: step.value.count, meets: step.value.meets });
    yield;
  }
};
