// What every part of the report is made from.

import type { Design } from '#model/design.ts';
import type { FieldPicture } from '#judge/field/field-picture.ts';
import type { Study } from '#judge/study.ts';
import type { CircuitLook } from '#words/design/circuit-look.ts';
import type { Theme } from '#drawing/scene/palette.ts';

export interface ReportParts {
  readonly design: Design;
  readonly judgement: Study;
  readonly looks: readonly CircuitLook[];
  readonly theme: Theme;
  /** The field of this build; null where it was not solved. */
  readonly field: FieldPicture | null;
}
