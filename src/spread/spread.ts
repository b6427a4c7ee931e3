// Of so many pieces wound by this drawing, how many meet: each piece drawn from the tolerances and the placement model and
// judged as every build is, at its worst as to what slides and slumps, so that the share is never told above the truth.
// Pieces are drawn by their numbers, so that any part of them may be worked on anywhere, and the parts joined.
// Generators: who asks may pause, stop, or take what there is so far.

import type { FileJudge } from '#judge/judging/judge-files.ts';
import type { Reached, ShortJudgement } from '#judge/judging/short-judgement.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { randomOfDraw } from '#units/random.ts';
import { coordinatesOf, pieceOf } from './coordinates.ts';
import { decidingOf, type Deciding } from './deciding.ts';
import { distancesOf, type Distances } from './distances.ts';
import { Known } from './known-pieces.ts';
import type { Placement } from './placement.ts';
import { rareOf, type Rare } from './rare.ts';
import { finished } from '#field/solve/finished.ts';
import { EMPTY, joined, type SpreadPart } from './spread-part.ts';
import { reachesOf } from './sleeve-reach.ts';
import { wilson } from './wilson.ts';
import { worstPiece } from './worst-piece.ts';

/** So many of the draws are measured where nothing else is asked. */
export const MEASURED = 100;

/** Pieces between two that are told of. */
const TOLD_EVERY = 10;

export interface SpreadOptions {
  readonly seed: number;
  readonly draws: number;
  /** So many of the first draws are measured too: each is judged for itself. */
  readonly measured: number;
  readonly placement: Placement;
  /** Which pieces count; those that meet where it is left out. */
  readonly holds?: (judged: Reached) => boolean;
}

export interface Spread {
  readonly seed: number;
  readonly draws: number;
  /** Part of the drawn pieces that meet, with the interval that holds the true part 19 times in 20. */
  readonly share: number;
  readonly interval: readonly [number, number];
  /** Every figure at the worse end of its range, all at once. */
  readonly worstCase: WorstOfAll;
  /** As drawn, nothing off its figure. */
  readonly asDrawn: ShortJudgement | null;
  /** Which figures decide, heaviest first. */
  readonly deciding: readonly Deciding[];
  readonly distances: readonly Distances[];
  /** Failures so rare that counting does not find them; null where counting does. */
  readonly rare: Rare | null;
}

export interface WorstOfAll {
  readonly verdict: Answer;
  /** Null where such a piece cannot be wound. */
  readonly judged: ShortJudgement | null;
}

/** Draws from one number to just before another: what is found of them, without the rest. */
export function* spreadPart(
  doc: DesignFile,
  judge: FileJudge,
  options: SpreadOptions,
  [from, to]: readonly [number, number],
): Generator<SpreadPart, SpreadPart, void> {
  const { seed, placement, measured, holds = ({ meets }) => meets } = options;
  const coordinates = coordinatesOf(doc, placement);
  const holdsAt = (values: readonly number[]): boolean => {
    const found = judge.reach(pieceOf(doc, coordinates, values));
    return found !== null && holds(found);
  };
  const known = new Known(coordinates, reachesOf(doc, coordinates), holdsAt);
  let part = EMPTY;
  for (let i = from; i < to; i += 1) {
    const random = randomOfDraw(seed, i);
    const values = coordinates.map(({ draw }) => draw(random));
    const judged = i < measured ? judge.measured(pieceOf(doc, coordinates, values)) : null;
    let meets = judged !== null && holds(judged);
    if (i < measured) known.note(values, meets);
    else
      for (const search = known.meets(values); ; yield part) {
        const step = search.next();
        if (step.done !== true) continue;
        meets = step.value;
        break;
      }
    part = joined(part, { count: 1, meets: meets ? 1 : 0, measured: judged ? [{ values, judged }] : [] });
    if (i < measured || i % TOLD_EVERY === TOLD_EVERY - 1) yield part;
  }
  return part;
}

/** What all parts together say. */
export function spreadOf(
  doc: DesignFile,
  judge: FileJudge,
  options: SpreadOptions,
  { count, meets, measured }: SpreadPart,
): Spread {
  const { seed, placement, holds = (judged: Reached) => judged.meets } = options;
  const coordinates = coordinatesOf(doc, placement);
  const worst = worstPiece(doc, coordinates);
  const judged = judge.measured(worst);
  const known = new Known(coordinates, reachesOf(doc, coordinates), (values) => {
    const found = judge.reach(pieceOf(doc, coordinates, values));
    return found !== null && holds(found);
  });
  const deciding = decidingOf(coordinates, measured);
  const fields = deciding.map(({ field }) => field);
  return {
    seed,
    draws: count,
    share: count === 0 ? 0 : meets / count,
    interval: wilson(meets, count),
    worstCase: { verdict: judge.whole(worst)?.verdict ?? 'falls-short', judged },
    asDrawn: judge.measured(doc),
    deciding,
    distances: distancesOf(measured),
    rare: rareOf({
      coordinates,
      deciding: fields,
      worstHolds: judged !== null && holds(judged),
      seed,
      count,
      meets,
      holdsAt: (values) => finished(known.meets(values)),
    }),
  };
}

/** All draws in one go; told is the part that is done. */
export function* spread(
  doc: DesignFile,
  judge: FileJudge,
  options: SpreadOptions,
): Generator<SpreadPart, Spread, void> {
  const part = yield* spreadPart(doc, judge, options, [0, options.draws]);
  return spreadOf(doc, judge, options, part);
}
