// One way of the trade followed down: all that it would do to all the weak spots at once, then to those that are left, until
// nothing falls short or nothing more comes nearer. What meets may hold more acts than it needs.

import type { FileJudge } from '#judge/judging/judge-files.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { applyActs, keyOf, type Act } from '#mend/acts/act.ts';
import { nextActs, withAct } from './next-sets.ts';
import { chosenBy, type Style } from './styles.ts';

/** A build that is not mended after so many rounds is another build. */
const ROUNDS = 5;
/** More acts than this are no mending either, however small each is. */
const MOST_ACTS = 10;

/** Yields after each judgement. The acts that mend; null where this style finds none. */
export function* dive(
  doc: DesignFile,
  style: Style,
  first: readonly WeakSpot[],
  judge: Pick<FileJudge, 'spots'>,
): Generator<void, readonly Act[] | null, void> {
  let acts: readonly Act[] = [];
  let spots = first;
  for (let round = 0; round < ROUNDS; round += 1) {
    const before = keyOf(acts);
    acts = chosenBy(style, nextActs(doc, acts, spots), doc).reduce(withAct, acts);
    if (keyOf(acts) === before || acts.length > MOST_ACTS) return null;
    const left = judge.spots(applyActs(doc, acts));
    yield;
    if (left === null) return null;
    if (left.length === 0) return acts;
    spots = left;
  }
  return null;
}
