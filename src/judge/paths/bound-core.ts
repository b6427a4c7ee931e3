// What binding the core to a circuit can change: where no path leads over it, what was found with the core floating holds.
// A core bound to a third circuit only takes ways away: chains may run over what floats, not over what belongs to another.

import type { PairQuestion } from '#judge/grade/path-requirement.ts';
import type { ChainPiece } from '#judge/grade/chain.ts';
import { mayBeTakenTogether, type Site } from './graded-paths.ts';
import type { FoundPath } from './case-result.ts';

/** Every way of this pair is one with the core floating as well. */
export function onlyTakesAway({ floating, coreTo, ties }: Site, { between }: PairQuestion): boolean {
  if (floating === null || coreTo === null || between.includes(coreTo)) return false;
  return ties.joined.length === floating.ties.joined.length && !mayBeTakenTogether(floating);
}

/** None of these ends at what goes by another name with the core bound otherwise. */
export const bindsNothing = (site: Site, other: Site, pieces: Iterable<ChainPiece>): boolean => {
  for (const piece of pieces)
    for (const end of piece.kind === 'inside' ? piece.piece.between : piece.between)
      if (site.ties.nameOf(end) !== other.ties.nameOf(end)) return false;
  return true;
};

/** The weakest with the core floating is the weakest here, for this pair. */
export const holdsBound = (site: Site, question: PairQuestion, path: FoundPath | null): boolean =>
  onlyTakesAway(site, question) && bindsNothing(site, site.floating!, path?.chain.pieces ?? []);
