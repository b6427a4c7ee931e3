// A build with its field solved, judged with what the field found in place of the estimate.

import { finished } from '#field/solve/finished.ts';
import { FINE, fieldOf, type FoundField } from '#judge/field/field-of.ts';
import { withTurns } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { judgedByField, study, studyOf, type Study } from '#judge/study.ts';
import type { Design } from '#model/design.ts';

export interface ByField {
  readonly found: FoundField;
  readonly studied: Study;
}

/** `turned`: round the axis of a round tube. */
export function byField(design: Design, turned = false): ByField {
  const cache = new PathCache();
  const found = finished(fieldOf(design, study(design, cache), { ...FINE, turned }));
  return { found, studied: studyOf(design, withTurns(judgedByField(design, found.report, cache))) };
}
