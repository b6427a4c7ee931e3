// What follows from the judgement shown, for the pages that look at it more closely: worked out there, not before.

import type { Drawable } from '#drawing/scene/scene.ts';
import { studyOf, type Study } from '#judge/study.ts';
import type { Design } from '#model/design.ts';

export { copperReport } from '#judge/study/copper.ts';
export { placeVoltage } from '#stress/turns/place-voltage.ts';

interface Shown {
  readonly design: Design | null;
  readonly judgement: Drawable | null;
}

/** Null while nothing could be judged. */
export const studied = ({ design, judgement }: Shown): Study | null =>
  design === null || judgement === null ? null : studyOf(design, judgement);
