// A question put to the path finder: one pair, the grade it needs, and what each metric asks of a path.

import { isOutOfRange, type OutOfRange } from '#standards/out-of-range.ts';
import type { Judged } from '#standards/because.ts';
import type { Column, Grade } from '#standards/grade.ts';
import type { Metric } from '#solver/paths/pieces.ts';
import { voltsPeak, type Nm, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';
import type { Asked } from './path-grade.ts';
import type { Required } from '#books/required.ts';
import type { LevelsOf, TestLevels } from '#books/solid.ts';
import { GROUPS } from './stuff.ts';

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

/** What a pair asks along each metric, ready for grading; `highFrequency` raises the test to that level where larger. */
export function askedOf(required: Required, highFrequency: boolean): Readonly<Record<Metric, Asked>> {
  const value = <T extends number>(found: Judged<T> | OutOfRange): T | null =>
    isOutOfRange(found) ? null : found.value;
  const levels = levelsOf(required, highFrequency);
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

/** Test levels by material. */
function levelsOf({ test, highFrequencyTest }: Required, highFrequency: boolean): LevelsOf {
  const levelAt = (column: Column): VoltsPeak | null => {
    const found = test[column];
    return isOutOfRange(found) ? null : found.value;
  };
  const ordinary = { basic: levelAt('basic'), reinforced: levelAt('reinforced') };
  const made = new Map<string | null, TestLevels>();
  return (material) => {
    const known = made.get(material);
    if (known) return known;
    const raised = highFrequency ? highFrequencyTest(material) : null;
    const larger = (column: Column): VoltsPeak | null => {
      const [low, high] = [ordinary[column], raised?.[column]?.value ?? 0];
      return low === null || low >= high ? low : voltsPeak(high);
    };
    const levels = { basic: larger('basic'), reinforced: larger('reinforced'), ordinary };
    made.set(material, levels);
    return levels;
  };
}
