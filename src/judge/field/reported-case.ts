// One case as it is reported: where the core came to stand, and the strongest field in air.

import type { FieldView } from '#field/read/field-view.ts';
import type { DrawnField } from '#judge/drawn-field/drawn-field.ts';
import type { FieldCase } from './field-cases.ts';
import type { ReportedCase } from './field-report.ts';

export function reportedCase(drawn: DrawnField, view: FieldView, one: FieldCase): ReportedCase {
  const core = drawn.section.electrodes.findIndex((conductor) => conductor === drawn.core);
  return {
    between: one.between,
    peak: one.peak,
    byTurn: one.byTurn,
    coreTied: one.coreTied,
    core: core === -1 ? null : view.state.electrodes[core]!,
    strongest: view.strongestInAir,
  };
}
