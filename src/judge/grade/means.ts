// Whom a barrier protects, for a rule book that tells patients from operators: as its touchable circuit says, of a pair
// without one as all of the build say. What nobody said is a patient at worst and an operator at best.

import type { Means } from '#books/questions/required.ts';
import { type Choice, isBest } from '#judge/assume/assumption.ts';
import type { Design } from '#model/design.ts';

export const meansField = (circuit: number): string => `circuits[${circuit}].means`;

export function meansOf({ circuits }: Design, choice: Choice, between: readonly [string, string]): Means {
  const touchable = circuits.flatMap(({ id, role, means }, i) =>
    role === 'touchable'
      ? [{ id, means: means ?? (isBest(choice, meansField(i)) ? 'operator' : 'patient') }]
      : [],
  );
  const own = touchable.filter(({ id }) => between.includes(id));
  const asked = own.length > 0 ? own : touchable;
  return asked.every(({ means }) => means === 'operator') && asked.length > 0 ? 'operator' : 'patient';
}
