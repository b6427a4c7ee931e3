// The grade of a distance outside the winding window, a board gap or a row of pins, by the figures that the file gives
// of it; a figure that it leaves out is not counted, which the caller says. Required distances are handed in.
//
// Step: outside-grade {what, clearance, creepage, materialGroup, byClearance, byCreepage, grade}, mm.

import type { Outside } from '#model/design/outside.ts';
import { because, type Because } from '#standards/because.ts';
import { inMm, type Nm } from '#units/quantity.ts';

import type { Reach } from './bridge-grade.ts';

export type DistanceGrade = 'functional' | 'basic' | 'reinforced';

export interface OutsideGrade {
  readonly what: string;
  readonly between: readonly [string, string];
  /** Null where the file gives neither figure. */
  readonly grade: DistanceGrade | null;
  readonly clearance: number | null;
  readonly creepage: number | null;
  readonly because: Because;
}

/** `required` null: the book has no figure, so that nothing reaches it. */
export function gradeOfOutside(
  { what, between, clearance, creepage, materialGroup }: Outside,
  required: { readonly clearance: Reach; readonly creepage: Reach } | null,
): OutsideGrade {
  const byClearance = clearance === null ? null : reachOf(clearance.value, required?.clearance ?? null);
  const byCreepage = creepage === null ? null : reachOf(creepage.value, required?.creepage ?? null);
  const grade = lowerDistance(byClearance, byCreepage);
  const figures = {
    clearance: clearance === null ? null : inMm(clearance.value),
    creepage: creepage === null ? null : inMm(creepage.value),
  };
  const group = typeof materialGroup === 'string' ? materialGroup : 'unknown';
  const values = { what, ...figures, materialGroup: group, byClearance, byCreepage, grade };
  return { what, between, grade, ...figures, because: because('outside-grade', values) };
}

export function reachOf(distance: Nm, required: Reach | null): DistanceGrade {
  if (required === null) return 'functional';
  return distance >= required.reinforced ? 'reinforced' : distance >= required.basic ? 'basic' : 'functional';
}

const ORDER: readonly DistanceGrade[] = ['functional', 'basic', 'reinforced'];

function lowerDistance(a: DistanceGrade | null, b: DistanceGrade | null): DistanceGrade | null {
  if (a === null || b === null) return a ?? b;
  return ORDER.indexOf(a) < ORDER.indexOf(b) ? a : b;
}
