// What each way to mend takes of the window and of copper, beside the build as found.

import { copperReport } from '#judge/study/copper.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import type { Design } from '#model/design.ts';
import { fitChanges, type FitChange } from '#words/mend/fit-changes.ts';
import type { ShownMending } from './mend-search.svelte.ts';

interface Judged {
  readonly design: Design;
  readonly judgement: Drawable;
}

export function mendFits(
  { design, judgement }: Judged,
  { proposals, read }: ShownMending,
): readonly (readonly FitChange[])[] {
  const { fit } = judgement.verdict;
  const was = { fit, copper: copperReport(design, fit) };
  return proposals.map(({ verdict }, i) => {
    const own = read[i];
    if (own === undefined) return [];
    return fitChanges(was, { fit: verdict.fit, copper: copperReport(own, verdict.fit) });
  });
}
