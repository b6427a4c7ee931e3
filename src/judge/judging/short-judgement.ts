// Whether a build meets, and how far each pair is from what it needs, with every unknown at worst: the first part of the
// whole judgement and nothing else of it. For searches that judge thousands of builds; what they propose is judged whole.

import type { Book } from '#books/questions/book.ts';
import { bookOf } from '#books/book-of.ts';
import { intervalsOf } from '#judge/assume/assumption.ts';
import type { Design } from '#model/design.ts';
import { heatOf } from '#stress/heat/heat.ts';
import { reaches } from '#standards/ladder.ts';
import type { Grade, Metric } from '#units/terms.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import { soldIn } from '#judge/assume/sold-in.ts';
import { judgeWorst, shortNominally } from '#judge/cases/worst-case.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import { judgingOf } from '#judge/once/judging.ts';
import type { PathCache } from '#judge/paths/path-cache.ts';
import { hotSpot, touchSpot } from '#judge/spots/build-spots.ts';
import { judgedTouch } from '#judge/cases/judged-touch.ts';
import { answerOf, judgedAnswers, missingOf } from '#judge/answers/pair-answer.ts';
import { requiredLength } from '#judge/spots/spots.ts';

export interface Reached {
  /** The verdict of the whole judgement is `meets`. */
  readonly meets: boolean;
  /** Nothing is left to mend: every pair reaches its grade and no spot of the whole build is left. */
  readonly mended: boolean;
}

export interface ShortJudgement extends Reached {
  readonly overfull: boolean;
  /** Those of which something is asked. */
  readonly pairs: readonly ShortPair[];
}

export interface ShortPair {
  readonly between: readonly [string, string];
  readonly needed: Grade;
  readonly achieved: Grade;
  /** Of the path that limits; null where none is left, or a part limits. Where it reaches, only as far as measured. */
  readonly metric: Metric | null;
  /** mm. */
  readonly length: number | null;
  readonly required: number | null;
}

/** What of a short judgement is wanted: whether all reaches, how far what falls short is too, or every length. */
export type Wanted = 'reach' | 'shortfall' | 'lengths';

/** Throws where the rule book does not exist. */
export function judgeShort(asFiled: Design, cache: PathCache, wanted: Wanted): ShortJudgement {
  const book = bookOf(asFiled);
  const design = soldIn(asFiled, book);
  // which end of an interval is the worse hangs on how far what is printed is from what would do
  const isMoved = intervalsOf(design).length > 0;
  const printed = wanted === 'lengths' || isMoved;
  const reachOnly =
    wanted === 'reach' && !isMoved && design.circuits.every(({ role }) => role !== 'isolated');
  const judging = judgingOf(book, cache, { printed, places: false, reachOnly });
  const { pairs, overfull } =
    (wanted === 'reach' && isMoved ? shortNominally(judging, design, 'any') : null) ??
    judgeWorst(judging, design);
  const isWhole = overfull === null && !hasOwnSpot(design, book);
  const missing = missingOf(design);
  // what reaches at worst is at best no other; what does not is never answered by `meets`
  const answers = pairs.map((pair) =>
    pair.needed !== null && !reaches(pair.achieved, pair.needed)
      ? 'falls-short'
      : answerOf(pair, pair, missing),
  );
  const asked = pairs.flatMap((pair) => (pair.needed === null ? [] : [shortOf(pair, pair.needed)]));
  return {
    meets: isWhole && judgedAnswers(pairs, answers, missing).every((answer) => answer === 'meets'),
    mended: isWhole && asked.every(({ achieved, needed }) => reaches(achieved, needed)),
    overfull: overfull !== null,
    pairs: asked,
  };
}

/** Too hot, or too much current for a person. */
function hasOwnSpot(design: Design, book: Book): boolean {
  const touch = judgedTouch(design, book);
  return hotSpot(heatOf(design, book)) !== null || (touch !== null && touchSpot(touch) !== null);
}

function shortOf(pair: PairOutcome, needed: Grade): ShortPair {
  const { between, achieved, holding } = pair;
  const path = holding?.kind === 'path' ? holding : null;
  return {
    between,
    needed,
    achieved,
    metric: path && path.metric,
    length: path && inMm(path.length as Nm),
    required: path && requiredLength(path, pair),
  };
}
