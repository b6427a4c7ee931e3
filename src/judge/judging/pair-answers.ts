// The answer of every pair and nothing else of the judgement: no paths, no weak places, no deciding unknowns. For asking one
// build many times what a figure would change; told exactly as the whole judgement tells it.

import { ruleBook } from '#books/shelf.ts';
import type { Design } from '#model/design.ts';
import { answerOf, missingOf } from '#judge/answers/pair-answer.ts';
import { intervalsOf } from '#judge/assume/assumption.ts';
import { judgeBest } from '#judge/cases/best-case.ts';
import { judgingOf, type Judging } from '#judge/once/judging.ts';
import { judgeWorst, shortNominally, type WorstCase } from '#judge/cases/worst-case.ts';
import type { PathCache } from '#judge/paths/path-cache.ts';
import type { Answer } from '#judge/verdict/answer.ts';

export interface PairAnswer {
  readonly between: readonly [string, string];
  readonly verdict: Answer;
}

/** Throws where the rule book does not exist: reading the file has refused it. */
export function pairAnswers(design: Design, cache: PathCache): readonly PairAnswer[] {
  const judging = begin(design, cache);
  return answersBy(judging, design, worstOf(judging, design));
}

/**
 * Of the pairs of which something is asked, where all fall short at worst whatever the ends of the intervals are: told long
 * before the whole judgement. Null where the ends have to be looked at, or where there are none to wait for.
 */
export function earlyAnswers(design: Design, cache: PathCache): readonly PairAnswer[] | null {
  if (intervalsOf(design).length === 0) return null;
  const judging = begin(design, cache);
  const worst = shortNominally(judging, design, 'every');
  if (worst === null) return null;
  return answersBy(judging, design, worst).filter((_, i) => worst.pairs[i]!.needed !== null);
}

function begin(design: Design, cache: PathCache): Judging {
  const book = ruleBook(design.rules);
  if (!book) throw new Error(`no rule book ${design.rules}`);
  return judgingOf(book, cache, { printed: false, places: false, reachOnly: false });
}

function answersBy(judging: Judging, design: Design, worst: WorstCase): readonly PairAnswer[] {
  const best = judgeBest(judging, design, worst);
  const missing = missingOf(design);
  return worst.pairs.map((pair, i) => ({
    between: pair.between,
    verdict: answerOf(pair, best[i]!, missing),
  }));
}

/**
 * As little as tells the answers. Which end of an interval is the worse hangs on how far what is printed is from what would
 * do, and an isolated circuit counts as mains by how far it falls short.
 */
function worstOf(judging: Judging, design: Design): WorstCase {
  if (intervalsOf(design).length > 0)
    return shortNominally(judging, design, 'every') ?? judgeWorst({ ...judging, printed: true }, design);
  const reachOnly = design.circuits.every(({ role }) => role !== 'isolated');
  return judgeWorst({ ...judging, reachOnly }, design);
}
