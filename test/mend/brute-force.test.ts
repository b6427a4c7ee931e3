// Nothing smaller than what the search finds: against every set of one or two changes out of a list of its own, on small
// invented builds. MEND_BUILDS=200 takes that many, MEND_FROM=100 those after the first hundred; a few here.

import { describe, expect, it } from 'vitest';

import { fileJudge } from '#judge/judging/judge-files.ts';
import { MEND_DEFAULTS, mend, type Mending } from '#mend/search/mend.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { alterationsOf, smallBuild, together } from './small-builds.ts';

const BUILDS = Number(process.env['MEND_BUILDS'] ?? 12);
const FROM = Number(process.env['MEND_FROM'] ?? 0);
const judge = fileJudge();

/** How many changes mend it at the least; null where no two do. */
function leastOf(doc: DesignFile): number | null {
  const isMended = (file: DesignFile): boolean => judge.reach(file)?.mended === true;
  if (isMended(doc)) return 0;
  const single = alterationsOf(doc);
  if (single.some((alter) => isMended(alter(doc)))) return 1;
  return single.some((a, i) => single.slice(i + 1).some((b) => isMended(together(doc, a, b)))) ? 2 : null;
}

function searched(doc: DesignFile): Mending {
  const search = mend(doc, judge, MEND_DEFAULTS);
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}

describe('mend beside brute force', () => {
  it('should leave nothing smaller to be found', () => {
    const smaller: unknown[] = [];
    // how many builds are mended by no change at the least, by one, by two, by more
    const counts = { 0: 0, 1: 0, 2: 0, more: 0 };
    for (let number = FROM; number < FROM + BUILDS; number += 1) {
      const doc = smallBuild(number);
      const least = leastOf(doc);
      const { proposals, none } = searched(doc);
      counts[(least ?? 'more') as 'more'] += 1;
      if (least === 0) expect([number, none?.why]).toEqual([number, 'meets']);
      if (least === 0 || least === null) continue;
      const fewest = Math.min(...proposals.map(({ acts }) => acts.length));
      if (fewest > least) smaller.push({ number, least, fewest });
    }
    expect(smaller).toEqual([]);
    expect(counts[1] + counts[2]).toBeGreaterThan(BUILDS / 4);
  });
});
