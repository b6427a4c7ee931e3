// Which unknown is best looked for next: one that decides alone before one that needs others, one that leads to more before
// one that leads to less, and among equals the one that is found without taking more apart or testing to breakdown.

import type { Assumption } from '#judge/verdict/verdict.ts';
import type { Answer } from '#judge/verdict/answer.ts';

export interface NextMeasurement {
  readonly field: string;
  /** The pair of a working voltage. */
  readonly between: readonly [string, string] | null;
  /** With this one at its best; null where only several together change anything. */
  readonly atBest: Answer | null;
  /** Others that must be known with it before anything changes. */
  readonly together: readonly Assumption[];
}

/** Null where nothing that is open decides. */
export function nextMeasurement(assumptions: readonly Assumption[], verdict: Answer): NextMeasurement | null {
  const open = assumptions.filter(({ kind, decides }) => kind === 'unknown' && decides);
  const leads = (assumption: Assumption): number =>
    assumption.atBest === null ? -1 : ORDER.indexOf(assumption.atBest) - ORDER.indexOf(verdict);
  const best = [...open].sort((a, b) => leads(b) - leads(a) || effort(a.field) - effort(b.field))[0];
  if (best === undefined) return null;
  const alone = leads(best) > 0;
  const others = open.filter((one) => one !== best);
  return {
    field: best.field,
    between: best.between,
    atBest: alone ? best.atBest : null,
    together: alone || leads(best) < 0 ? [] : others,
  };
}

const ORDER: readonly Answer[] = ['falls-short', 'not-shown', 'meets'];

/** 0 a look or a meter, 1 a caliper from outside, 2 unwinding, 3 a test that may break down. */
function effort(field: string): number {
  if (/withstand$/i.test(field)) return 3;
  if (/^layers\[/.test(field)) return 2;
  if (/^(?:core\.bond|bridges|workingVoltages)|\.(?:approval|safetyClass|at|exit|way)$/.test(field)) return 0;
  return 1;
}
