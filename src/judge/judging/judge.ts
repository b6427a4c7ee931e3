// The judgement of a design: what is needed and achieved between every two circuits, and the verdict over all.
// Judged twice, with all unknowns at worst and all at best; what differs is not shown.

import { bookOf } from '#books/book-of.ts';
import { DrawnSections } from '#judge/answers/drawn-sections.ts';
import { soldIn } from '#judge/assume/sold-in.ts';
import { judgedParts, type JudgedParts } from '#judge/cases/judged-parts.ts';
import type { FieldWindings } from '#judge/cases/judged-touch.ts';
import { judgingOf } from '#judge/once/judging.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { Design } from '#model/design.ts';
import { type Turn, turnsOf } from '#solver/placing/turns.ts';
import type { Build } from '#solver/section/build.ts';
import type { Section } from '#solver/section/section.ts';
import { findAll } from './found.ts';
import { verdictOf } from './verdict-of.ts';

export interface Judgement {
  readonly verdict: Verdict;
  /** As judged at worst, intervals nominal; the plain one first, after them those of paths that lie elsewhere. */
  readonly sections: readonly Section[];
  /** Turns of every section by its name, worked out only when asked for. */
  readonly turns: { readonly get: (section: string) => readonly Turn[] | undefined };
  /** Every bridging part and distance outside, graded as the pairs rest on it. */
  readonly parts: JudgedParts;
  /** Capacitances of the windings by the field, where the touch current was judged with them. */
  readonly windings: FieldWindings | null;
}

/** A judgement before its turns are asked for: data without a function, which may go from one thread to another. */
export interface PlainJudgement extends Pick<Judgement, 'verdict' | 'sections' | 'parts' | 'windings'> {
  /** What each of the sections is of. */
  readonly builds: readonly Build[];
}

/** Throws where the rule book does not exist: reading the file has refused it. `cache` may live from call to call. */
export const judge = (design: Design, cache: PathCache = new PathCache()): Judgement =>
  withTurns(judgePlain(design, cache));

export const withTurns = ({ verdict, sections, parts, windings, builds }: PlainJudgement): Judgement => ({
  verdict,
  sections,
  parts,
  windings,
  turns: {
    get: (name) => {
      const at = sections.findIndex((each) => each.name === name);
      return at < 0 ? undefined : turnsOf(builds[at]!, sections[at]!);
    },
  },
});

/**
 * `windings`: as the field has them, to take the place of the estimate. `onWay` is called now and then while it lasts: one
 * judgement is one piece of work, and whoever waits for it may want to know that it goes on.
 */
export function judgePlain(
  asFiled: Design,
  cache: PathCache,
  book = bookOf(asFiled),
  windings: FieldWindings | null = null,
  onWay: () => void = () => undefined,
): PlainJudgement {
  const judging = judgingOf(book, cache, { printed: false, reachOnly: false, onWay });
  const found = findAll(judging, soldIn(asFiled, book));
  const { design, worst, best } = found;
  const drawn = new DrawnSections(worst.nominal.sections, worst.nominal.build);
  const verdict = verdictOf(found, drawn, windings);
  const parts = judgedParts(judging, design, worst.pairs, best);
  return { verdict, sections: drawn.sections, parts, windings, builds: drawn.builds };
}
