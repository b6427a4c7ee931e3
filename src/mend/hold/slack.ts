// How a mend holds when hands wind it: the share of pieces that meet under the placement model, and by how much its lengths
// must grow beyond the least that meets on paper until nearly all do. A mend to the edge is no mend.
// A generator, a breath after each piece that is judged; where the time is over it says what it has and that it was cut.

import type { FileJudge } from '#judge/judging/judge-files.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { PLACEMENT, type Placement } from '#spread/placement.ts';
import type { Change } from '#mend/acts/act.ts';
import { lengthAt, STEP, widthText } from '#mend/acts/file-lengths.ts';
import { holdsForCertain, shareOf, type HeldShare, type Holding } from './share-held.ts';

export interface Slack {
  /** First of the lengths that grow together. */
  readonly field: string;
  /** Whose: those that the mend changes, or with them every sleeve, or every sleeve and margin, of the build. */
  readonly of: 'mend' | 'sleeves' | 'sleeves-and-margins';
  /** By how much each grows, mm. */
  readonly by: number;
  /** Sleeves that margins grow with have to grow by more than those do, mm. */
  readonly sleevesBy: number;
  /** mm. */
  readonly to: number;
  readonly share: number;
  readonly design: DesignFile;
}

export interface Held extends HeldShare {
  /** Null where no length of the mend can grow, or none makes nearly all meet. */
  readonly slack: Slack | null;
  /** The search for slack ended for want of time. */
  readonly isSlackCut: boolean;
}

/** From this share on a mend is said to hold. */
export const NEARLY_ALL = 0.99;
/** Draws of what is told, and of each step of the search for it. */
const DRAWS = 200;
const TRIED = 100;
/** So many steps of the hand are tried, 1.6 mm. */
const MOST_STEPS = 32;
/** Steps by which sleeves outgrow margins: by as much as both wander, so that they reach in every piece, mm 0.7. */
const FLUSH = 14;
const GROWS = /\.width$|\.into$|outerGap$|\.height$/;

export interface HoldOptions {
  readonly judge: FileJudge;
  readonly placement?: Placement;
  /** Whether the time is over for the share, and for the slack. */
  readonly isShareOver?: () => boolean;
  readonly isSlackOver?: () => boolean;
}

const never = (): boolean => false;

export function* heldOf(
  design: DesignFile,
  changes: readonly Change[],
  { judge, placement = PLACEMENT, isShareOver = never, isSlackOver = never }: HoldOptions,
): Generator<void, Held, void> {
  const share = yield* shareOf(design, DRAWS, { judge, placement, isOver: isShareOver });
  if (!share.isCut && share.share >= NEARLY_ALL) return { ...share, slack: null, isSlackCut: false };
  const holding: Holding = { judge, placement, isOver: isSlackOver };
  // where the mend has no length that lifts it, what wanders lies elsewhere in the build; what holds for certain is known by
  // one judgement, so that is asked of all before pieces are drawn
  for (const isCertain of [true, false])
    for (const [fields, of] of growing(design, changes)) {
      const slack = yield* slackOf(
        { design, lengths: lengthsOf(design, fields, of), of, isCertain },
        holding,
      );
      if (slack !== null) return { ...share, slack, isSlackCut: false };
      if (isSlackOver()) return { ...share, slack: null, isSlackCut: true };
    }
  return { ...share, slack: null, isSlackCut: false };
}

/** The lengths of the mend, then with them every sleeve, then every margin too. */
function growing(
  design: DesignFile,
  changes: readonly Change[],
): readonly (readonly [readonly string[], Slack['of']])[] {
  const own = changes.map(({ field }) => field).filter((field) => GROWS.test(field));
  const sleeves = design.windings.flatMap(({ links }, w) => [
    ...['start', 'finish'].map((end) => `windings[${w}].leads.${end}.sleeve.into`),
    ...(Array.isArray(links) ? links : []).map((_, i) => `windings[${w}].links[${i}].sleeve.into`),
  ]);
  const margins = design.layers.flatMap((_, i) =>
    ['left', 'right'].map((side) => `layers[${i}].margins.${side}.width`),
  );
  return [
    [own, 'mend'],
    [[...own, ...sleeves], 'sleeves'],
    [[...own, ...sleeves, ...margins], 'sleeves-and-margins'],
  ];
}

interface Length {
  readonly field: string;
  readonly now: number;
  /** Steps that it grows by beyond the others. */
  readonly more: number;
}

const lengthsOf = (design: DesignFile, fields: readonly string[], of: Slack['of']): readonly Length[] =>
  [...new Set(fields)].flatMap((field) => {
    const now = lengthAt(design, field);
    const more = of === 'sleeves-and-margins' && field.endsWith('.into') ? FLUSH : 0;
    return now === null || now === 0 ? [] : [{ field, now, more }];
  });

interface Grown {
  readonly design: DesignFile;
  readonly lengths: readonly Length[];
  readonly of: Slack['of'];
  /** Whether all pieces must hold for certain, or nearly all that are drawn. */
  readonly isCertain: boolean;
}

/** All lengths grown alike until nearly all pieces hold; null where that is not reached, or not in time. */
function* slackOf(
  { design, lengths, of, isCertain }: Grown,
  holding: Holding,
): Generator<void, Slack | null, void> {
  const [first] = lengths;
  if (first === undefined) return null;
  const grown = (steps: number): DesignFile =>
    lengths.reduce(
      (doc, { field, now, more }) =>
        editDesign(doc, field, widthText(doc, field, now + (steps + more) * STEP)),
      design,
    );
  const drawnAt: HoldsAt = function* (steps) {
    const { share, isCut } = yield* shareOf(grown(steps), TRIED, holding, NEARLY_ALL);
    return !isCut && share >= NEARLY_ALL;
  };
  const certainAt: HoldsAt = function* (steps) {
    yield;
    return holdsForCertain(grown(steps), holding);
  };
  const high = yield* doubled(isCertain ? certainAt : drawnAt, holding);
  if (high === null) return null;
  const steps = of === 'mend' ? yield* fewest(drawnAt, high, holding) : high;
  const { share } = yield* shareOf(grown(steps), DRAWS, holding);
  const to = Math.round((first.now + (steps + first.more) * STEP) * 100) / 100;
  const inMm = (count: number): number => Math.round(count * STEP * 100) / 100;
  const most = Math.max(...lengths.map(({ more }) => more));
  return {
    field: first.field,
    of,
    to,
    by: inMm(steps),
    sleevesBy: inMm(steps + most),
    share,
    design: grown(steps),
  };
}

type HoldsAt = (steps: number) => Generator<void, boolean, void>;

/** No step more than holds, by halving, as far as the time goes; `high` holds. */
function* fewest(holdsAt: HoldsAt, known: number, { isOver }: Holding): Generator<void, number, void> {
  let [low, high] = [0, known];
  while (high - low > 1 && !isOver()) {
    const middle = Math.floor((low + high) / 2);
    if (yield* holdsAt(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Up from little; null where the widest does not hold. */
function* doubled(holdsAt: HoldsAt, { isOver }: Holding): Generator<void, number | null, void> {
  for (let steps = 2; steps <= MOST_STEPS && !isOver(); steps *= 2) if (yield* holdsAt(steps)) return steps;
  return null;
}
