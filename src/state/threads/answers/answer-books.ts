// A build by one rule book after another, each told as soon as it is judged.

import { judgePlain } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { askedCurve } from '#judge/study/asked-curve.ts';
import { columnOf } from '#judge/study/side-by-side.ts';
import type { Answerer } from '#state/threads/asks/asks.ts';

export const answerBooks: Answerer<'books'> = function* books({ design, ids }, tell) {
  const cache = new PathCache();
  for (const rules of ids) {
    const by = { ...design, rules };
    const { verdict } = judgePlain(by, cache);
    tell({ column: columnOf(by, verdict), curves: verdict.pairs.map((pair) => askedCurve(by, pair)) });
    yield;
  }
  return null;
};
