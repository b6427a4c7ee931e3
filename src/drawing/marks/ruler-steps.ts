// Where a ruler has its pieces, ticks and numbers at some scale: steps of 1, 2 or 5 times a power of ten, as fine as can be
// told apart. One rule for the page, for paper and for plots.

import { ticks, tickStep } from 'd3-array';
import type { LengthUnit } from '#words/text/length-unit.ts';

export interface RulerSteps {
  /** Length of the pieces, filled and hollow in turn, in the unit: one millimetre where that can be seen. */
  readonly piece: number;
  /** Distance of the fine ticks; null where they would run together. */
  readonly fine: number | null;
  /** Distance of the numbers. */
  readonly number: number;
}

const LEAST_PIECE_PX = 5;
const LEAST_FINE_PX = 4;
/** Parts of a piece are numbered only where one piece is as wide as this. */
const PARTS_FROM_PX = 150;
/** The shortest piece of each unit. */
const LEAST_PIECES: Readonly<Record<LengthUnit, number>> = { mm: 1, in: 0.05, mil: 50 };
/** Figures are written to a hundredth of a piece at most. */
const FINEST_PART = 0.01;

/** `perUnit` in pixels, `room` the pixels that one number takes. */
export function rulerSteps(perUnit: number, room: number, unit: LengthUnit = 'mm'): RulerSteps {
  const least = LEAST_PIECES[unit];
  const piece = Math.max(least, stepAtLeast(LEAST_PIECE_PX / perUnit));
  const fine = Math.max(least * FINEST_PART, stepAtLeast(LEAST_FINE_PX / perUnit));
  const number = stepAtLeast(room / perUnit);
  return {
    piece,
    fine: piece === least && fine < least ? fine : null,
    number: number < least && perUnit * least < PARTS_FROM_PX ? least : number,
  };
}

/** The smallest step of 1, 2 or 5 times a power of ten that is not below this length. */
export function stepAtLeast(length: number): number {
  const near = tickStep(0, length, 1);
  return near >= length ? near : tickStep(0, 2 * length, 1);
}

/** The multiples of a step between two places, each written as it is meant: 0.1, not 0.30000000000000004. */
export function multiples(step: number, from: number, to: number): readonly number[] {
  const found = ticks(from, to, (to - from) / step);
  // where no multiple lies between, finer ones come back
  return found.filter((each) => Math.abs(each / step - Math.round(each / step)) < 1e-6);
}
