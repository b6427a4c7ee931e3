// How high on the ladder a grade stands: the ground is none, four rungs above it; supplementary shares basic's rung.

import type { Grade } from '#standards/grade.ts';

const HEIGHT: Readonly<Record<Grade, number>> = {
  none: 0,
  functional: 1,
  basic: 2,
  supplementary: 2,
  double: 3,
  reinforced: 4,
};

export const gradeHeight = (grade: Grade): number => HEIGHT[grade];
