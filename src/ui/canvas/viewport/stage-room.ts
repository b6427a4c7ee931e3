// The part of the stage that the drawing has for itself, inside the rulers and under the strip of the whole.

import { RULER } from '#drawing/marks/ruler-marks.ts';
import type { Plate } from '#drawing/scene/view.ts';

/** `overview`: height of the strip at the top that shows the whole section small. */
export const roomOf = (width: number, height: number, overview: number): Plate => ({
  left: RULER.left,
  top: overview + RULER.top,
  right: width,
  bottom: height,
});
