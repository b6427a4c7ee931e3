// A question put to the path finder: one pair, the grade it needs, and what each metric asks of a path.

import { isOutOfRange, type OutOfRange } from '#standards/out-of-range.ts';
import type { Judged } from '#standards/because.ts';
import type { Grade } from '#standards/grade.ts';
import type { Metric } from '#solver/paths/pieces.ts';
import type { Nm, VoltsPeak } from '#units/quantity.ts';
import type { Asked } from './path-grade.ts';
import type { Required } from '#books/required.ts';
import { GROUPS } from './stuff.ts';

export interface PairQuestion {
  readonly between: readonly [string, string];
  readonly needed: Grade | null;
  readonly required: Required;
  readonly asked: Readonly<Record<Metric, Asked>>;
}

/** What a pair asks along each metric, ready for grading; `highFrequency` raises the test to that level where larger. */
export function askedOf(required: Required, highFrequency: boolean): Readonly<Record<Metric, Asked>> {
  const value = <T extends number>(found: Judged<T> | OutOfRange): T | null =>
    isOutOfRange(found) ? null : found.value;
  const level = (column: 'basic' | 'reinforced'): VoltsPeak | null => {
    const ordinary = value(required.test[column]);
    const raised = highFrequency ? required.highFrequencyTest(null)[column] : null;
    if (ordinary === null) return null;
    return raised && raised.value > ordinary ? raised.value : ordinary;
  };
  const levels = { basic: level('basic'), reinforced: level('reinforced') };
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
    creepage: { distance: (rank) => (byRank[rank] ??= creepage(rank)), levels, x },
    clearance: { distance: () => clearance, levels, x },
  };
}
