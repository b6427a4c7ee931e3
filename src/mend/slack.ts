// How a mend holds when hands wind it: the share of pieces that meet under the placement model, and by how much its lengths
// must grow beyond the least that meets on paper until nearly all do. A mend to the edge is no mend.

import type { DesignFile } from '#model/schema/schema.ts';
import { PLACEMENT, type Placement } from '#spread/placement.ts';
import { spread, type JudgeFile } from '#spread/spread.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import type { Change } from './act.ts';
import { isMended } from './is-mended.ts';
import { lengthAt, STEP, widthText } from './file-lengths.ts';

export interface Slack {
  /** First of the lengths that grow together. */
  readonly field: string;
  /** mm. */
  readonly to: number;
  readonly share: number;
  readonly design: DesignFile;
}

export interface Held {
  /** As mended, on paper just enough. */
  readonly share: number;
  /** Null where no length of the mend can grow, or none makes nearly all meet. */
  readonly slack: Slack | null;
}

const NEARLY_ALL = 0.99;
/** Draws of what is told, and of each step of the search for it. */
const DRAWS = 300;
const TRIED = 100;
/** So many steps of the hand are tried, 1.6 mm. */
const MOST_STEPS = 32;

export function heldOf(
  design: DesignFile,
  changes: readonly Change[],
  judgeFile: JudgeFile,
  placement: Placement = PLACEMENT,
): Held {
  const shareOf = (doc: DesignFile, draws = TRIED): number => {
    const search = spread(doc, judgeFile, { seed: 1, draws, placement, holds: isMended });
    for (;;) {
      const step = search.next();
      if (step.done) return step.value.share;
    }
  };
  const share = shareOf(design, DRAWS);
  const lengths = changes.flatMap(({ field, from, to }) => {
    const now = typeof from === 'object' && from === null ? null : lengthAt(design, field);
    return now === null || to === null || !/\.width$|outerGap$|\.height$/.test(field) ? [] : [{ field, now }];
  });
  const [first] = lengths;
  if (first === undefined || share >= NEARLY_ALL) return { share, slack: null };
  const grown = (steps: number): DesignFile =>
    lengths.reduce(
      (doc, { field, now }) => editDesign(doc, field, widthText(doc, field, now + steps * STEP)),
      design,
    );
  let [low, high] = [0, MOST_STEPS];
  if (shareOf(grown(high)) < NEARLY_ALL) return { share, slack: null };
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (shareOf(grown(middle)) >= NEARLY_ALL) high = middle;
    else low = middle;
  }
  const doc = grown(high);
  const to = Math.round((first.now + high * STEP) * 100) / 100;
  return { share, slack: { field: first.field, to, share: shareOf(doc, DRAWS), design: doc } };
}
