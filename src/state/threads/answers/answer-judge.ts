// Judges one design. The memory of paths lives as long as the thread, so that a change costs what it touches.

import { judgePlain } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { Answerer } from '#state/threads/asks/asks.ts';

export function answerJudge(): Answerer<'judge'> {
  const cache = new PathCache();
  // eslint-disable-next-line require-yield -- one judgement is one piece of work
  return function* judge(design) {
    return judgePlain(design, cache);
  };
}
