// Every place where a build falls short with all unknowns at worst, and nothing else of the whole judgement: no best case, no
// deciding figures. For searches that mend one place after the other.

import { bookOf } from '#books/book-of.ts';
import type { Design } from '#model/design.ts';
import { heatOf } from '#stress/heat/heat.ts';
import { reaches } from '#standards/ladder.ts';
import { soldIn } from '#judge/assume/sold-in.ts';
import { judgedTouch } from '#judge/cases/judged-touch.ts';
import { hotSpot, overfullSpot, touchSpot } from '#judge/spots/build-spots.ts';
import { weakSpots } from '#judge/spots/spots.ts';
import { judgeWorst } from '#judge/cases/worst-case.ts';
import { judgingOf } from '#judge/once/judging.ts';
import type { PathCache } from '#judge/paths/path-cache.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';

/** Worst first. Throws where the rule book does not exist. */
export function judgeSpots(asFiled: Design, cache: PathCache): readonly WeakSpot[] {
  const book = bookOf(asFiled);
  const design = soldIn(asFiled, book);
  const judging = judgingOf(book, cache, { printed: true, reachOnly: false });
  const { pairs, nominal, overfull } = judgeWorst(judging, design);
  const unknowns = { counted: nominal.filled.counted, deciding: new Set<string>() };
  const short = pairs.filter(({ achieved, needed }) => !reaches(achieved, needed));
  const touch = judgedTouch(design, book);
  const touching = touch && touchSpot(touch);
  const hot = hotSpot(heatOf(design, book));
  return [
    ...weakSpots(
      design,
      short.map((pair) => ({ worst: pair, best: pair, verdict: 'falls-short', unknowns })),
    ),
    ...(touching ? [touching] : []),
    ...(overfull ? [overfullSpot(overfull.build)] : []),
    ...(hot ? [hot] : []),
  ];
}
