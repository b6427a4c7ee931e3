// The mends of a build, found beside the page: told whenever there is one more, or how one holds in the hand.

import { fileJudge } from '#judge/judging/judge-files.ts';
import type { PlainJudgement } from '#judge/judging/judge.ts';
import { heldMends, type HeldMending } from '#mend/hold/held-mends.ts';
import { patienceOf } from '#mend/hold/patience.ts';
import { MEND_DEFAULTS } from '#mend/search/mend.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Answerer, DrawnMending } from '#state/threads/asks/asks.ts';

export const answerMend: Answerer<'mend'> = function* mend(doc, tell) {
  const judge = fileJudge();
  const known = new Map<DesignFile, PlainJudgement>();
  const drawn = (mending: HeldMending): DrawnMending => ({
    ...mending,
    drawn: mending.proposals.map(({ design }) => {
      const judgement = known.get(design) ?? judge.drawn(design);
      if (judgement === null) throw new Error('a proposal is refused as a file');
      known.set(design, judgement);
      return judgement;
    }),
  });
  const search = heldMends(
    doc,
    judge,
    MEND_DEFAULTS,
    patienceOf(() => performance.now() / 1000),
  );
  let found = '0 0';
  for (;;) {
    const step = search.next();
    if (step.done === true) return drawn(step.value);
    const mending = step.value();
    const now = `${mending.proposals.length} ${mending.held.length}`;
    tell({ judged: mending.judged, mending: now === found ? null : drawn(mending) });
    found = now;
    yield;
  }
};
