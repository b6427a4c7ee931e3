// Of so many pieces wound by this drawing, how many meet: each piece drawn from the tolerances and the placement model and
// judged as every build is, at its worst as to what slides and slumps, so that the share is never told above the truth.
// A piece that is no worse than one that met, in all that a law holds for, is not judged again; nor is one that is no
// better than one that fell short. A generator: who asks may pause, stop, or take what there is so far.

import type { Answer, Verdict } from '#judge/verdict/verdict.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { randomOfDraw } from '#units/random.ts';
import { coordinatesOf, type Coordinate } from './coordinates.ts';
import { Known } from './known-pieces.ts';
import type { Placement } from './placement.ts';
import { wilson } from './wilson.ts';

/** Null where the file would be refused: such a piece cannot be wound, and does not meet. */
export type JudgeFile = (doc: DesignFile) => Verdict | null;

export interface SpreadOptions {
  readonly seed: number;
  readonly draws: number;
  readonly placement: Placement;
  /** Which pieces count; those that meet where it is left out. */
  readonly holds?: (verdict: Verdict) => boolean;
}

export interface Spread {
  readonly seed: number;
  readonly draws: number;
  /** Part of the drawn pieces that meet, with the interval that holds the true part 19 times in 20. */
  readonly share: number;
  readonly interval: readonly [number, number];
  /** With every figure at the worse end of its range. */
  readonly worstCase: Answer;
  /** Which figures decide, heaviest first; weights from 0 to 1. */
  readonly deciding: readonly { readonly field: string; readonly weight: number }[];
  readonly judged: number;
}

export function* spread(
  doc: DesignFile,
  judgeFile: JudgeFile,
  { seed, draws, placement, holds = ({ verdict }) => verdict === 'meets' }: SpreadOptions,
): Generator<Spread, Spread, void> {
  const coordinates = coordinatesOf(doc, placement);
  let judged = 0;
  const base = withoutTolerance(doc, coordinates);
  const judgePiece = (values: readonly number[]): Verdict | null => {
    judged += 1;
    return judgeFile(coordinates.reduce((file, { apply }, i) => apply(file, values[i]!), base));
  };
  const judge = (values: readonly number[]): boolean => {
    const verdict = judgePiece(values);
    return verdict !== null && holds(verdict);
  };
  const worstCase = judgePiece(coordinates.map(({ worse }) => worse))?.verdict ?? 'falls-short';
  const known = new Known(coordinates, judge);
  const tally = new Tally(coordinates);
  const now = (): Spread => ({
    seed,
    draws: tally.count,
    share: tally.count === 0 ? 0 : tally.meets / tally.count,
    interval: wilson(tally.meets, tally.count),
    worstCase,
    deciding: tally.deciding(),
    judged,
  });
  for (let i = 0; i < draws; i += 1) {
    const random = randomOfDraw(seed, i);
    const values = coordinates.map(({ draw }) => draw(random));
    tally.add(values, known.meets(values));
    if (i % 50 === 49) yield now();
  }
  return now();
}

/** The file's own tolerances are in the draws; left in the file they would be counted twice. */
function withoutTolerance(doc: DesignFile, coordinates: readonly Coordinate[]): DesignFile {
  return coordinates.reduce((file, { apply, worse }) => apply(file, worse), doc);
}

/** Counts pieces, and of each figure how often they meet above and below the middle of its range. */
class Tally {
  readonly #coordinates: readonly Coordinate[];
  readonly #halves: { meets: number; count: number }[][];
  count = 0;
  meets = 0;

  constructor(coordinates: readonly Coordinate[]) {
    this.#coordinates = coordinates;
    this.#halves = coordinates.map(() => [
      { meets: 0, count: 0 },
      { meets: 0, count: 0 },
    ]);
  }

  add(values: readonly number[], meets: boolean): void {
    this.count += 1;
    if (meets) this.meets += 1;
    this.#coordinates.forEach(({ worse, better }, i) => {
      const half = this.#halves[i]![Math.abs(values[i]! - better) < Math.abs(values[i]! - worse) ? 1 : 0]!;
      half.count += 1;
      if (meets) half.meets += 1;
    });
  }

  deciding(): Spread['deciding'] {
    const weights = this.#halves.map(([low, high]) => correlation(low!, high!));
    return this.#coordinates
      .map(({ field }, i) => ({ field, weight: Math.round(weights[i]! * 1000) / 1000 }))
      .filter(({ weight }) => weight > 0)
      .sort((a, b) => b.weight - a.weight);
  }
}

interface Half {
  readonly meets: number;
  readonly count: number;
}

/** How much meeting goes with the better half of the range, 0 to 1 (the coefficient of a table of two by two). */
function correlation(low: Half, high: Half): number {
  const meets = low.meets + high.meets;
  const fails = low.count + high.count - meets;
  const norm = Math.sqrt(meets * fails * low.count * high.count);
  return norm === 0
    ? 0
    : Math.abs(high.meets * (low.count - low.meets) - low.meets * (high.count - high.meets)) / norm;
}
