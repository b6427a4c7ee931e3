// One case as it is reported: where the core came to stand, and the strongest field in air.

import { FieldView } from '#field/read/field-view.ts';
import type { SolvedField } from '#field/solve/solve-field.ts';
import type { DrawnField } from '#judge/drawn-field/drawn-field.ts';
import type { FieldCase } from './field-cases.ts';
import { strongestInAir } from './field-gaps.ts';
import type { ReportedCase } from './field-report.ts';

export function reportedCase(
  drawn: DrawnField,
  solved: SolvedField,
  one: FieldCase,
  i: number,
): ReportedCase {
  const state = solved.states[i]!;
  const core = drawn.section.electrodes.findIndex((conductor) => conductor === drawn.core);
  return {
    between: one.between,
    peak: one.peak,
    byTurn: one.byTurn,
    coreTied: one.coreTied,
    core: core === -1 ? null : state.electrodes[core]!,
    strongest: strongestInAir(new FieldView(solved, state)),
  };
}
