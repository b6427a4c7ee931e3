// The judgement of the invented build that the page opens with, as plain data that the page carries.

import { knownIds } from '#judge/conductors/known-ids.ts';
import { judgePlain, withTurns, type PlainJudgement } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { readDesign } from '#model/read/read-design.ts';
import { firstBuild } from './demos.ts';
import type { JudgedBuild } from '#state/judging/newest-judgement.svelte.ts';

export const firstJudgement = (): PlainJudgement => judgePlain(firstDesign(), new PathCache());

export const firstJudged = (carried: PlainJudgement): JudgedBuild => ({
  doc: firstBuild,
  design: firstDesign(),
  judgement: withTurns(carried),
});

function firstDesign() {
  const read = readDesign(firstBuild, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
  return read.design;
}
