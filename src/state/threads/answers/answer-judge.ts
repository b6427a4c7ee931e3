// Judges one design. The memory of paths lives as long as the thread, so that a change costs what it touches. Where much is
// open the answers of the pairs are told first, and then that it goes on: a thread that gives no sign is taken for lost.

import { bookOf } from '#books/book-of.ts';
import { judgePlain } from '#judge/judging/judge.ts';
import { earlyAnswers } from '#judge/judging/pair-answers.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { Answerer } from '#state/threads/asks/asks.ts';

/** Between two signs. */
const SIGN_MS = 1000;

export function answerJudge(): Answerer<'judge'> {
  // one memory each: what the whole judgement of the build before needed is not dropped for the answers
  const [cache, early] = [new PathCache(), new PathCache()];
  return function* judge(design, tell) {
    const answers = earlyAnswers(design, early);
    if (answers !== null) {
      tell(answers);
      yield;
    }
    let last = performance.now();
    const onWay = (): void => {
      if (performance.now() - last < SIGN_MS) return;
      last = performance.now();
      tell(null);
    };
    return judgePlain(design, cache, bookOf(design), null, onWay);
  };
}
