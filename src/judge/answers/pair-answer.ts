// Whether a pair meets, falls short or is not shown, from its judgings at worst and at best, and the answer over all.

import type { Design } from '#model/design.ts';
import type { Part } from '#model/design/former.ts';
import { undrawnCircuits } from '#judge/conductors/undrawn.ts';
import { concerns, unplacedParts } from '#judge/conductors/unplaced.ts';
import { reaches } from '#standards/ladder.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Answer } from '#judge/verdict/answer.ts';

/** What is missing of a build, so that no figure of it can be judged. */
export interface Missing {
  readonly undrawn: ReadonlySet<string>;
  readonly unplaced: readonly Part[];
  /** Nobody has looked below the innermost layer that is listed. */
  readonly unopened: boolean;
}

export const missingOf = (design: Design): Missing => ({
  undrawn: undrawnCircuits(design),
  unplaced: unplacedParts(design),
  unopened: design.unopened,
});

/**
 * Both short: falls short. Both good: meets. A pair of a stack that is not opened to the tube, without any known voltage, of which one circuit is not drawn, or that a
 * part may bridge of which nobody knows where it lies, is never shown to meet.
 */
export function answerOf(worst: PairOutcome, best: PairOutcome, missing: Missing): Answer {
  if (worst.needed === null && best.needed === null) return 'meets';
  if (beyondTables(best).some(isDistance) && !isContact(best)) return 'not-shown';
  // without a level or a rule for solids all of them held at best: what falls short then does so by its distances
  if (!reaches(best.achieved, best.needed)) return 'falls-short';
  // without a rule for solids the distances may still be enough; without a level of the test nothing is shown
  if (beyondTables(worst).some((figure) => figure !== 'solid')) return 'not-shown';
  const isKnown =
    worst.stress.basis !== 'floor' &&
    !missing.unopened &&
    undrawnOf(worst, missing).length === 0 &&
    unplacedAt(worst, missing).length === 0;
  return isKnown && reaches(worst.achieved, worst.needed) ? 'meets' : 'not-shown';
}

/** A figure of the rule book that a pair asks for and its tables do not have. */
export type Beyond = 'clearance' | 'creepage' | 'test' | 'solid';

const isDistance = (figure: Beyond): boolean => figure === 'clearance' || figure === 'creepage';

export function beyondTables({ needed, required }: PairOutcome): readonly Beyond[] {
  if (needed === null) return [];
  const column = needed === 'reinforced' || needed === 'double' ? 'reinforced' : 'basic';
  const { clearance, creepage, test, noSolids } = required;
  const figures = { clearance, creepage: creepage('IIIb'), test };
  const beyond = (['clearance', 'creepage', 'test'] as const).filter((key) =>
    isOutOfRange(figures[key][column]),
  );
  return noSolids === null ? beyond : [...beyond, 'solid'];
}

/** Nothing but metal or enamel lies between them, or a part that is none for this: no figure is needed to see it. */
function isContact({ holding }: PairOutcome): boolean {
  if (holding?.kind === 'bridge') return holding.bridge.unsafe !== null;
  if (holding?.kind !== 'path') return false;
  return holding.length === 0 && holding.plies === 0 && holding.chain.over.length === 0;
}

/** Circuits of a pair of which nothing is drawn. */
export const undrawnOf = ({ between, needed }: PairOutcome, { undrawn }: Missing): readonly string[] =>
  needed === null ? [] : between.filter((id) => undrawn.has(id));

/** Parts of which nobody knows whether they bridge a pair. */
export const unplacedAt = ({ between, needed }: PairOutcome, { unplaced }: Missing): readonly string[] =>
  needed === null ? [] : unplaced.filter((part) => concerns(part, between)).map(({ id }) => id);

/** A pair of which nothing is drawn is not judged, as long as there is another that is. */
export function judgedAnswers(
  pairs: readonly PairOutcome[],
  answers: readonly Answer[],
  missing: Missing,
): readonly Answer[] {
  const asked = answers.filter((_, i) => pairs[i]!.needed !== null);
  const judged = answers.filter(
    (answer, i) =>
      pairs[i]!.needed !== null && (answer !== 'not-shown' || undrawnOf(pairs[i]!, missing).length === 0),
  );
  return judged.length === 0 ? asked : judged;
}

export const lowestAnswer = (answers: readonly Answer[]): Answer =>
  answers.includes('falls-short') ? 'falls-short' : answers.includes('not-shown') ? 'not-shown' : 'meets';

/** Pairs that reach what they need and are not shown for one thing alone: no voltage, or one part without a place. */
export function heldBack(pairs: readonly PairOutcome[], answers: readonly Answer[], missing: Missing) {
  const byVoltage = new Set<number>();
  const byPart = new Map<string, Set<number>>();
  pairs.forEach((pair, i) => {
    const isOpen = answers[i] === 'not-shown' && reaches(pair.achieved, pair.needed);
    if (!isOpen || undrawnOf(pair, missing).length > 0) return;
    const parts = unplacedAt(pair, missing);
    const [part, more] = parts;
    if (missing.unopened) return;
    const isFloor = pair.stress.basis === 'floor';
    if (isFloor && part === undefined) byVoltage.add(i);
    if (!isFloor && part !== undefined && more === undefined)
      byPart.set(part, new Set([...(byPart.get(part) ?? []), i]));
  });
  return { byVoltage, byPart };
}
