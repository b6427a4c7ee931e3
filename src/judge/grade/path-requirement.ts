// A question put to the path finder: one pair, the grade it needs, and what each metric asks of a path.

import { isOutOfRange, type OutOfRange } from '#standards/tables/out-of-range.ts';
import type { Judged } from '#standards/because.ts';
import type { Column, Grade, Metric } from '#units/terms.ts';
import { voltsPeak, type Nm, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';
import type { Asked } from './path-grade.ts';
import type { Answered, Required } from '#books/questions/required.ts';
import type { LevelsOf, TestLevels } from '#books/questions/solid.ts';
import { GROUPS } from '#judge/assume/stuff.ts';

export interface PairQuestion {
  readonly between: readonly [string, string];
  readonly needed: Grade | null;
  readonly required: Required;
  readonly asked: Readonly<Record<Metric, Asked>>;
  readonly places: AskedAtPlaces;
}

/** What is asked where the file gives a voltage of its own, by the entry's place in the file; null where it gives none. */
export interface AskedAtPlaces {
  readonly outside: readonly (AskedAtPlace | null)[];
  readonly bridges: readonly (AskedAtPlace | null)[];
}

export interface AskedAtPlace {
  readonly rms: VoltsRms;
  readonly required: Required;
  readonly asked: Readonly<Record<Metric, Asked>>;
}

/** The same question, with what is asked at places outside laid in. */
export const withPlaces = (
  asked: PairQuestion['asked'],
  { outside }: AskedAtPlaces,
): PairQuestion['asked'] => {
  const at = (metric: Metric): Asked => ({
    ...asked[metric],
    places: outside.map((place) => place?.asked[metric] ?? null),
  });
  return { creepage: at('creepage'), clearance: at('clearance') };
};

/**
 * What a pair asks along each metric, ready for grading. At worst the level for high frequency raises the test where it is
 * larger, and solids for which the book has no level or no rule count for nothing; at best they hold.
 */
export function askedOf(required: Required, atWorst: boolean): Readonly<Record<Metric, Asked>> {
  const value = <T extends number>(found: Judged<T> | OutOfRange): T | null =>
    isOutOfRange(found) ? null : found.value;
  const levels = levelsOf(required, atWorst);
  const x = required.x.value;
  const clearance = {
    basic: value(required.clearance.basic),
    reinforced: value(required.clearance.reinforced),
  };
  const byRank: ({ basic: Nm | null; reinforced: Nm | null } | undefined)[] = [];
  const creepage = (rank: number) => {
    const found = required.creepage(GROUPS[rank]!);
    return { basic: value(found.basic), reinforced: value(found.reinforced) };
  };
  return {
    creepage: { distance: (rank) => (byRank[rank] ??= creepage(rank)), levels, x, places: [] },
    clearance: { distance: () => clearance, levels, x, places: [] },
  };
}

/** A level that every solid holds: at best a level that the book does not have is one. */
const ANY_HOLDS = voltsPeak(0);

/** Test levels by material. */
function levelsOf({ test, noSolids, highFrequencyTest }: Required, atWorst: boolean): LevelsOf {
  const level = (found: Answered<VoltsPeak>): VoltsPeak | null =>
    noSolids !== null || isOutOfRange(found) ? (atWorst ? null : ANY_HOLDS) : found.value;
  const ordinary = { basic: level(test.basic), reinforced: level(test.reinforced) };
  const supplementary = test.supplementary === undefined ? {} : { supplementary: level(test.supplementary) };
  const made = new Map<string | null, TestLevels>();
  return (material) => {
    const known = made.get(material);
    if (known) return known;
    const raised = atWorst ? highFrequencyTest(material) : null;
    const larger = (column: Column): VoltsPeak | null => {
      const [low, high] = [ordinary[column], raised?.[column]?.value ?? 0];
      return low === null || low >= high ? low : voltsPeak(high);
    };
    const levels = { basic: larger('basic'), reinforced: larger('reinforced'), ...supplementary, ordinary };
    made.set(material, levels);
    return levels;
  };
}
