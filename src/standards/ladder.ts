// The ladder of grades: which of two is the higher, and whether one reaches another.

import type { Grade } from '#units/terms.ts';

/** Supplementary stands with basic, but above an insulation that is basic only. */
const HEIGHT: Readonly<Record<Grade, number>> = {
  none: 0,
  functional: 1,
  basic: 2,
  supplementary: 3,
  double: 4,
  reinforced: 5,
};

export const heightOf = (grade: Grade): number => HEIGHT[grade];

/** Reinforced serves as double; supplementary is never reached by what is basic only. */
export function reaches(achieved: Grade, needed: Grade | null): boolean {
  if (needed === null) return true;
  return heightOf(achieved) >= heightOf(needed === 'reinforced' ? 'double' : needed);
}
