// The solids that stand between two circuits where no path is left: those through which none leads, as far as they belong
// to the pair. What such a pair rests on.

import type { Solid } from '#books/questions/solid.ts';
import type { Design } from '#model/design.ts';
import { because, type Because } from '#standards/because.ts';
import type { SearchPlan } from './search-plan.ts';

export function strongSolids(
  { windings }: Design,
  { stuffs, runs }: Pick<SearchPlan, 'stuffs' | 'runs'>,
  between: readonly [string, string],
): readonly Because[] {
  const isOfPair = ({ kind, alike }: Solid): boolean =>
    kind !== 'cover' || windings.some(({ id, circuit }) => id === alike && between.includes(circuit));
  const strong = [...stuffs].filter(
    ([id, solid]) => isBarrier(solid) && isOfPair(solid) && runs[id]!.every(({ below }) => below < Infinity),
  );
  const why = strong.map(([, solid]) => solid.because);
  return strong.length === 0 ? [] : [because('strong-solids', { solids: strong.length }, [], why)];
}

/** Tape is counted by its plies, and a joint without proof is none. */
const isBarrier = ({ kind, because: why }: Solid): boolean =>
  kind === 'closed-joint'
    ? why.step === 'closed-joint' && why.values.proven
    : kind !== 'run' && kind !== 'sheet';
