// One judging of a design with its unknowns counted one way: builds filled, sections laid out, every pair graded.

import { type Choice, settled } from '#judge/assume/assumption.ts';
import { type Filled, fillBuild } from '#judge/fill/fill-build.ts';
import { behindOnEveryWay, behindReinforced, demotedCircuits, withoutBehindReinforced } from './isolated.ts';
import { judgeRoles } from './judge-roles.ts';
import { type Judging, isEveryPairJudged } from './judging.ts';
import type { Outcome, PairOutcome } from '#judge/paths/case-result.ts';
import type { Design } from '#model/design.ts';

/** `coreTo` overrides the core's bond: undefined leaves it to the file. */
export function judgeOnce(
  judging: Judging,
  design: Design,
  choice: Choice,
  coreTo?: string | null,
): Outcome & { readonly filled: Filled } {
  judging.onWay();
  const stated = settled(design, choice.ends);
  const filled = fillBuild(stated, judging.book, choice, judging.cache.stuffs);
  const { pollutionDegree } = filled;
  const now = inPollution(stated, pollutionDegree);
  const coreBonds = coreTo === undefined ? filled.coreBonds : [coreTo];
  let demoted: ReadonlySet<string> = new Set();
  for (;;) {
    const outcome = judgeRoles(judging, now, choice, filled, coreBonds, demoted);
    const further = demotedCircuits(now, outcome.pairs, demoted);
    if (further.size === demoted.size) {
      const unprinted = { ...judging, printed: false, places: false };
      const behind = behindOnEveryWay(
        now,
        behindReinforced(now, outcome.pairs, demoted),
        (touchable) => judgeRoles(unprinted, touchable, choice, filled, coreBonds, demoted).pairs,
      );
      const pairs = withoutBehindReinforced(now, outcome.pairs, behind);
      return { ...outcome, pairs: askedFor(judging, now, pairs) };
    }
    demoted = further;
  }
}

/** The same design where it says so itself: what is known of it is remembered by it. */
const inPollution = (design: Design, pollutionDegree: Filled['pollutionDegree']): Design =>
  design.surroundings.pollutionDegree === pollutionDegree
    ? design
    : { ...design, surroundings: { ...design.surroundings, pollutionDegree } };

const askedFor = (judging: Judging, design: Design, pairs: readonly PairOutcome[]): readonly PairOutcome[] =>
  judging.only !== undefined && isEveryPairJudged(judging, design)
    ? judging.only.map((i) => pairs[i]!)
    : pairs;
