// Isolated circuits: what stands behind a double barrier asks for nothing more, and what has none counts as mains.

import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Design } from '#model/design.ts';
import { because } from '#standards/because.ts';
import { reaches } from '#standards/ladder.ts';
import type { Role } from '#units/terms.ts';

/**
 * An isolated circuit that is reinforced towards every mains circuit needs no second barrier: nothing is asked between it
 * and what may be touched.
 */
export function withoutBehindReinforced(
  { circuits }: Design,
  pairs: readonly PairOutcome[],
): readonly PairOutcome[] {
  const idsOf = (role: Role) => circuits.filter((one) => one.role === role).map(({ id }) => id);
  const [mains, touchable] = [idsOf('mains'), idsOf('touchable')];
  const isBehind = (id: string) =>
    mains.length > 0 &&
    mains.every((one) =>
      pairs.some(
        ({ between, achieved }) =>
          between.includes(id) && between.includes(one) && reaches(achieved, 'reinforced'),
      ),
    );
  const behind = idsOf('isolated').filter(isBehind);
  return pairs.map((pair) => {
    const own = pair.between.find((id) => behind.includes(id));
    if (own === undefined || !pair.between.some((id) => touchable.includes(id))) return pair;
    const why = because('behind-reinforced', { circuit: own }, [], [pair.neededBecause]);
    return { ...pair, needed: null, neededBecause: why, failing: [] };
  });
}

/**
 * Isolated circuits that fall below basic towards the mains, or towards one that did so before: they count as mains
 * everywhere else.
 */
export function demotedCircuits(
  design: Design,
  pairs: readonly PairOutcome[],
  before: ReadonlySet<string>,
): ReadonlySet<string> {
  const role = (id: string) =>
    before.has(id) ? 'mains' : design.circuits.find((circuit) => circuit.id === id)?.role;
  const demoted = pairs.flatMap(({ between, achieved }) => {
    const roles = between.map(role);
    const isolated = roles.indexOf('isolated');
    return isolated >= 0 && roles.includes('mains') && !reaches(achieved, 'basic')
      ? [between[isolated]!]
      : [];
  });
  return new Set([...before, ...demoted]);
}
