// How high a grade is drawn: the ladder of grades, with supplementary on the rung of basic.

import { heightOf } from '#standards/ladder.ts';
import type { Grade } from '#units/terms.ts';

/** 0 for none, 4 for reinforced. */
export const gradeHeight = (grade: Grade): number =>
  heightOf(grade) > heightOf('basic') ? heightOf(grade) - 1 : heightOf(grade);
