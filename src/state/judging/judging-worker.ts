// The thread beside the page: takes one design after another and answers each with its judgement as plain data.
// Its memory of paths is its own.

import type { Design } from '#model/design.ts';
import { judgePlain } from '#judge/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { judgingAnswer } from './judging-answer.ts';

const cache = new PathCache();

addEventListener('message', ({ data }: MessageEvent<Design>) =>
  postMessage(judgingAnswer(() => judgePlain(data, cache))),
);
