// Judging beside the page what does not lie on the sheet: drafts, one of many files. Where there is no thread to be had it is
// judged on the page.

import { judge, withTurns } from '#judge/judging/judge.ts';
import type { Design } from '#model/design.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { judgingAnswer, type JudgingAnswer } from './judging-answer.ts';
import type { Thread } from '#state/threads/thread.ts';

export type JudgeErrand = (design: Design) => Promise<JudgingAnswer<Drawable>>;

export function judgeErrand(thread: Thread): JudgeErrand {
  return async (design) => {
    const outcome = await thread.ask('judge', design).outcome;
    switch (outcome.kind) {
      case 'answer':
        return { kind: 'judged', judgement: withTurns(outcome.answer), took: outcome.took };
      case 'broke':
        return outcome;
      case 'away':
        return judgingAnswer(() => judge(design));
      default:
        return { kind: 'broke', says: LOST[outcome.kind === 'lost' ? outcome.why : 'stopped'], took: 0 };
    }
  };
}

const LOST = {
  silent: 'judging gave no sign for too long and was ended',
  crashed: 'the thread that judges ended, perhaps for want of memory',
  stopped: 'judging was stopped',
};
