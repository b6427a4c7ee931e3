// The tracking rank that an asked creepage distance is told for: that of the path's surfaces. What touches runs along no surface
// and tells none; there the next longer way of the pair does, and where none has any length the worst is counted.

import { GROUPS } from '#judge/assume/stuff.ts';
import type { FoundPath, PairOutcome } from './case-result.ts';

export function askedRank(path: FoundPath | null, { shortest }: Pick<PairOutcome, 'shortest'>): number {
  const along = [path, ...shortest.creepage].find((each) => each !== null && each.length > 0);
  return along?.rank ?? GROUPS.length - 1;
}
