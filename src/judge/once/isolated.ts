// Isolated circuits: what stands behind a double barrier asks for nothing more, and what has none counts as mains.

import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Circuit, Design } from '#model/design.ts';
import { because } from '#standards/because.ts';
import { reaches } from '#standards/ladder.ts';
import type { Grade } from '#units/terms.ts';

/**
 * Isolated circuits that are reinforced towards every circuit that is mains or counts as such: they need no second barrier.
 * That holds for one that has basic insulation only on its way to the mains over another of them as well.
 */
export function behindReinforced(
  { circuits }: Design,
  pairs: readonly PairOutcome[],
  demoted: ReadonlySet<string>,
): ReadonlySet<string> {
  const isMains = ({ id, role }: Circuit) => role === 'mains' || demoted.has(id);
  const mains = circuits.filter(isMains);
  const behind = circuits.filter(
    (one) =>
      one.role === 'isolated' &&
      !isMains(one) &&
      mains.length > 0 &&
      mains.every((other) => isBetween(pairs, one.id, other.id, 'reinforced')),
  );
  return new Set(behind.map(({ id }) => id));
}

/**
 * Of these the ones that have supplementary insulation towards every isolated circuit that is none of them: over that one
 * there is basic insulation alone to the mains. `judgeAs` grades all pairs with some circuits as if they could be touched.
 */
export function behindOnEveryWay(
  design: Design,
  found: ReadonlySet<string>,
  judgeAs: (touchable: Design) => readonly PairOutcome[],
): ReadonlySet<string> {
  const others = design.circuits.filter(({ id, role }) => role === 'isolated' && !found.has(id));
  if (found.size === 0 || others.length === 0) return found;
  const circuits = design.circuits.map((one) =>
    found.has(one.id) ? { ...one, role: 'touchable' as const } : one,
  );
  const pairs = judgeAs({ ...design, circuits });
  const kept = [...found].filter((id) =>
    others.every((other) => isBetween(pairs, id, other.id, 'supplementary')),
  );
  return kept.length === found.size ? found : behindOnEveryWay(design, new Set(kept), judgeAs);
}

const isBetween = (pairs: readonly PairOutcome[], a: string, b: string, grade: Grade): boolean =>
  pairs.some(
    ({ between, achieved }) => between.includes(a) && between.includes(b) && reaches(achieved, grade),
  );

/** Nothing is asked between one of these and what may be touched. */
export function withoutBehindReinforced(
  { circuits }: Design,
  pairs: readonly PairOutcome[],
  behind: ReadonlySet<string>,
): readonly PairOutcome[] {
  const isTouchable = (id: string) => circuits.some((one) => one.id === id && one.role === 'touchable');
  return pairs.map((pair) => {
    const own = pair.between.find((id) => behind.has(id));
    if (own === undefined || !pair.between.some(isTouchable)) return pair;
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
