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
  /** Whose: those that the mend changes, or with them every sleeve, or every sleeve and margin, of the build. */
  readonly of: 'mend' | 'sleeves' | 'sleeves-and-margins';
  /** By how much each grows, mm. */
  readonly by: number;
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
  if (share >= NEARLY_ALL) return { share, slack: null };
  const own = changes.map(({ field }) => field).filter((field) => GROWS.test(field));
  const sleeves = design.windings.flatMap((_, w) =>
    ['start', 'finish'].map((end) => `windings[${w}].leads.${end}.sleeve.into`),
  );
  const margins = design.layers.flatMap((_, i) =>
    ['left', 'right'].map((side) => `layers[${i}].margins.${side}.width`),
  );
  // where the mend has no length that lifts it, what wanders lies elsewhere in the build
  for (const [fields, of] of [
    [own, 'mend'],
    [[...own, ...sleeves], 'sleeves'],
    [[...own, ...sleeves, ...margins], 'sleeves-and-margins'],
  ] as const) {
    const lengths = lengthsOf(design, fields);
    const slack = yield* slackOf(design, lengths, of, judge, placement);
    if (slack !== null) return { share, slack };
  }
  return { share, slack: null };
}

interface Length {
  readonly field: string;
  readonly now: number;
}

const lengthsOf = (design: DesignFile, fields: readonly string[]): readonly Length[] =>
  [...new Set(fields)].flatMap((field) => {
    const now = lengthAt(design, field);
    return now === null || now === 0 ? [] : [{ field, now }];
  });

/** All lengths grown alike until nearly all pieces hold; null where that is not reached. */
function* slackOf(
  design: DesignFile,
  lengths: readonly Length[],
  of: Slack['of'],
  judge: FileJudge,
  placement: Placement,
): Generator<void, Slack | null, void> {
  const [first] = lengths;
  if (first === undefined) return null;
  const grown = (steps: number): DesignFile =>
    lengths.reduce(
      (doc, { field, now }) => editDesign(doc, field, widthText(doc, field, now + steps * STEP)),
      design,
    );
  const holdsAt = function* (steps: number): Generator<void, boolean, void> {
    return (yield* shareOf(grown(steps), TRIED, judge, placement, NEARLY_ALL)) >= NEARLY_ALL;
  };
  const high = of === 'mend' ? yield* fewest(holdsAt) : yield* doubled(holdsAt);
  if (high === null) return null;
  const doc = grown(high);
  const to = Math.round((first.now + high * STEP) * 100) / 100;
  const lifted = yield* shareOf(doc, DRAWS, judge, placement);
  return { field: first.field, of, to, by: Math.round(high * STEP * 100) / 100, share: lifted, design: doc };
}

type HoldsAt = (steps: number) => Generator<void, boolean, void>;

/** The fewest steps; null where the widest does not hold. */
function* fewest(holdsAt: HoldsAt): Generator<void, number | null, void> {
  let [low, high] = [0, MOST_STEPS];
  if (!(yield* holdsAt(high))) return null;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (yield* holdsAt(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** What fails is known after few draws, what holds after all: so up from little, and not to the last step. */
function* doubled(holdsAt: HoldsAt): Generator<void, number | null, void> {
  for (let steps = 2; steps <= MOST_STEPS; steps *= 2) if (yield* holdsAt(steps)) return steps;
  return null;
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
