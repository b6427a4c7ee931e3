// The field of a build, solved beside the page: how far it is, and at the end the picture with everything it says, and the
// build judged by what it found. The memory of paths lives as long as the thread: while a build is dragged it is judged
// again and again on the way to its field.

import { COARSE, FINE, fieldOf } from '#judge/field/field-of.ts';
import { fieldPicture, PICTURE } from '#judge/field/field-picture.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { judgedByField, study } from '#judge/study.ts';
import type { Answerer } from '#state/threads/asks/asks.ts';

/** A quick look is drawn coarser as well. */
const QUICK = { ...PICTURE, columns: 320, gaps: 1 };

export function answerField(): Answerer<'field'> {
  const cache = new PathCache();
  return function* field({ design, quick, turned }, tell) {
    const steps = fieldOf(design, study(design, cache), { ...(quick ? COARSE : FINE), turned });
    for (;;) {
      const { done, value } = steps.next();
      if (done !== true) {
        tell(value);
        yield;
        continue;
      }
      // told to stop, the thread hears it between pieces of work
      yield;
      const picture = fieldPicture(value, quick ? QUICK : PICTURE);
      yield;
      return { picture, judged: quick ? null : judgedByField(design, value.report, cache) };
    }
  };
}
