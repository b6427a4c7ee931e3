// The field of a build, solved beside the page: how far it is, and at the end the picture with everything it says.

import { COARSE, FINE, fieldOf } from '#judge/field/field-of.ts';
import { fieldPicture, PICTURE } from '#judge/field/field-picture.ts';
import { study } from '#judge/study.ts';
import type { Answerer } from '#state/threads/asks/asks.ts';

/** A quick look is drawn coarser as well. */
const QUICK = { ...PICTURE, columns: 320, gaps: 1 };

export const answerField: Answerer<'field'> = function* field({ design, quick }, tell) {
  const steps = fieldOf(design, study(design), quick ? COARSE : FINE);
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return fieldPicture(value, quick ? QUICK : PICTURE);
    tell(value);
    yield;
  }
};
