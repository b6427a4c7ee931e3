// Why a pair reaches its grade: the path or the part that holds it; and where it reaches what is asked, every other way
// that solids close: the printed paths that are too short by themselves, and the solids through which no way leads.

import type { FoundPath, PairOutcome } from '#judge/paths/case-result.ts';
import type { Because } from '#standards/because.ts';
import { reaches } from '#standards/ladder.ts';

export function pairReasons(pair: PairOutcome): readonly Because[] {
  const { holding, needed, achieved, shortest, strong } = pair;
  if (needed === null) return [];
  const held =
    holding === null ? [] : [holding.kind === 'bridge' ? holding.bridge.because : holding.reasons.because];
  if (!reaches(achieved, needed)) return held;
  const others = new Set([...shortest.creepage, ...shortest.clearance].filter((path) => path !== null));
  const closed = [...others].filter((path) => path !== holding && isHeldBySolids(path));
  return [...held, ...closed.map(({ reasons }) => reasons.because), ...strong()];
}

/** Its length alone would not be enough. */
function isHeldBySolids({ plies, length, asked, rank }: FoundPath): boolean {
  const { reinforced } = asked.distance(rank);
  return plies > 0 && (reinforced === null || length < reinforced);
}
