// Judging in a thread beside the page. The thread is started with the first question, so that opening the page does not
// wait for it; where it cannot be had or breaks, the answer is that it is away, and it is left alone from then on.

import { withTurns, type PlainJudgement } from '#judge/judge.ts';
import type { JudgingAnswer } from './judging-answer.ts';
import type { JudgeBeside } from './newest-judgement.svelte.ts';

export function judgingBeside(): JudgeBeside {
  let thread: Worker | null = null;
  return (design) =>
    new Promise((answer) => {
      const isAway = (): void => {
        thread?.terminate();
        answer({ kind: 'away' });
      };
      try {
        thread ??= startThread();
        thread.onmessage = ({ data }: MessageEvent<JudgingAnswer<PlainJudgement>>) =>
          answer(data.kind === 'broke' ? data : { ...data, judgement: withTurns(data.judgement) });
        thread.onerror = isAway;
        thread.onmessageerror = isAway;
        thread.postMessage(design);
      } catch {
        isAway();
      }
    });
}

function startThread(): Worker {
  // the policy of a page from the disk has no `self`: asking would only be reported as a breach
  if (location.protocol === 'file:') throw new Error('no thread for a page from the disk');
  return new Worker(new URL('./judging-worker.ts', import.meta.url), { type: 'module' });
}
