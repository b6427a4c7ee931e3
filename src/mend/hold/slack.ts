// How a mend holds when hands wind it: the share of pieces that meet under the placement model, and by how much its lengths
// must grow beyond the least that meets on paper until nearly all do. A mend to the edge is no mend.
// A generator, a breath after each share that is found.

import type { FileJudge } from '#judge/judging/judge-files.ts';
import type { Reached } from '#judge/judging/short-judgement.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { PLACEMENT, type Placement } from '#spread/placement.ts';
import { spreadPart } from '#spread/spread.ts';
import type { Change } from '#mend/acts/act.ts';
import { lengthAt, STEP, widthText } from '#mend/acts/file-lengths.ts';

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
const DRAWS = 200;
const TRIED = 100;
/** So many steps of the hand are tried, 1.6 mm. */
const MOST_STEPS = 32;
const GROWS = /\.width$|\.into$|outerGap$|\.height$/;

export function* heldOf(
  design: DesignFile,
  changes: readonly Change[],
  judge: FileJudge,
  placement: Placement = PLACEMENT,
): Generator<void, Held, void> {
  const share = yield* shareOf(design, DRAWS, judge, placement);
  const lengths = changes.flatMap(({ field }) => {
    const now = lengthAt(design, field);
    return now === null || !GROWS.test(field) ? [] : [{ field, now }];
  });
  const [first] = lengths;
  if (first === undefined || share >= NEARLY_ALL) return { share, slack: null };
  const grown = (steps: number): DesignFile =>
    lengths.reduce(
      (doc, { field, now }) => editDesign(doc, field, widthText(doc, field, now + steps * STEP)),
      design,
    );
  const holdsAt = function* (steps: number): Generator<void, boolean, void> {
    return (yield* shareOf(grown(steps), TRIED, judge, placement, NEARLY_ALL)) >= NEARLY_ALL;
  };
  let [low, high] = [0, MOST_STEPS];
  if (!(yield* holdsAt(high))) return { share, slack: null };
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (yield* holdsAt(middle)) high = middle;
    else low = middle;
  }
  const doc = grown(high);
  const to = Math.round((first.now + high * STEP) * 100) / 100;
  const lifted = yield* shareOf(doc, DRAWS, judge, placement);
  return { share, slack: { field: first.field, to, share: lifted, design: doc } };
}

/** `least`: a share below it need not be known; it ends as soon as it is below for certain. */
function* shareOf(
  doc: DesignFile,
  draws: number,
  judge: FileJudge,
  placement: Placement,
  least = 0,
): Generator<void, number, void> {
  const holds = ({ mended }: Reached): boolean => mended;
  const options = { seed: 1, draws, measured: 0, placement, holds };
  const search = spreadPart(doc, judge, options, [0, draws]);
  for (;;) {
    const step = search.next();
    const { count, meets } = step.value;
    if (step.done === true || count - meets > (1 - least) * draws + 1e-9) return meets / draws;
    yield;
  }
}
