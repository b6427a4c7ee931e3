// What the distances round a part reach: a figure that the file leaves out reaches nothing at worst and everything at best,
// or is the certificate's matter.

import type { Bridge } from '#model/design/outside.ts';
import { because, type Because } from '#standards/because.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';

import type { BridgeQuestion, ShortDistance } from './bridge-grade.ts';
import { reachOf, type DistanceGrade } from './outside-grade.ts';

export type Reached = DistanceGrade;

export interface ReachedRound {
  readonly grade: Reached;
  /** The shorter of the two that do not reach `wanted`. */
  readonly shortOf: (wanted: Reached) => ShortDistance | null;
  readonly because: Because;
}

const ORDER: readonly Reached[] = ['functional', 'basic', 'reinforced'];

export const lowerReached = (a: Reached, b: Reached): Reached =>
  ORDER.indexOf(a) < ORDER.indexOf(b) ? a : b;

/** `isCertified`: a figure left out is the matter of the part's certificate. */
export function reachedRound(
  { clearance, creepage }: Bridge,
  { required, isBest }: BridgeQuestion,
  isCertified: boolean,
): ReachedRound {
  const given = { clearance: clearance?.value, creepage: creepage?.value };
  const of = (key: 'clearance' | 'creepage'): Reached => {
    const distance = given[key];
    if (distance === undefined && isCertified) return 'reinforced';
    const needed = required?.[key];
    if (distance === undefined && needed !== undefined) return isBest(key) ? 'reinforced' : 'functional';
    return reachOf(distance ?? nm(0), needed ?? null);
  };
  const [byClearance, byCreepage] = [of('clearance'), of('creepage')];
  const grade = lowerReached(byClearance, byCreepage);
  const values = {
    clearance: inMmOrNull(given.clearance),
    creepage: inMmOrNull(given.creepage),
    byClearance,
    byCreepage,
    grade,
  };
  const shortOf = (wanted: Reached): ShortDistance | null => {
    if (required === null || wanted === 'functional') return null;
    const short = (['clearance', 'creepage'] as const).filter((key) => isBelow(of(key), wanted));
    const all = short.map((metric): ShortDistance => {
      return { metric, length: given[metric] ?? null, required: required[metric][wanted] };
    });
    const share = ({ length, required: asked }: ShortDistance) => (length ?? 0) / asked;
    return all.sort((a, b) => share(a) - share(b))[0] ?? null;
  };
  return { grade, shortOf, because: because('bridge-distances', values) };
}

const isBelow = (a: Reached, b: Reached): boolean => ORDER.indexOf(a) < ORDER.indexOf(b);

const inMmOrNull = (value: Nm | undefined): number | null => (value === undefined ? null : inMm(value));
