// Judging in the thread beside the page that is kept for it.

import { withTurns } from '#judge/judging/judge.ts';
import type { JudgeBeside } from './newest-judgement.svelte.ts';
import type { Thread } from '#state/threads/thread.ts';

export function judgingBeside(thread: Thread): JudgeBeside {
  return (design, early) => {
    const { outcome, stop } = thread.ask('judge', design, (told) => {
      if (told !== null) early(told);
    });
    const answer = outcome.then((found) =>
      found.kind === 'answer'
        ? { kind: 'judged' as const, judgement: withTurns(found.answer), took: found.took }
        : found,
    );
    return { answer, stop };
  };
}
