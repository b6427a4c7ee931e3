// Where a ruler has its pieces, ticks and numbers at some scale: steps of 1, 2 or 5 times a power of ten, as fine as can be
// told apart. One rule for the page, for paper and for plots.

import { ticks, tickStep } from 'd3-array';

export interface RulerSteps {
  /** Length of the pieces, filled and hollow in turn, mm: one millimetre where that can be seen. */
  readonly piece: number;
  /** Distance of the fine ticks, mm; null where they would run together. */
  readonly fine: number | null;
  /** Distance of the numbers, mm. */
  readonly number: number;
}

const LEAST_PIECE_PX = 5;
const LEAST_FINE_PX = 4;
/** Parts of a millimetre are numbered only where one millimetre is as wide as this. */
const PARTS_FROM_PX = 150;
/** Figures are written to a hundredth of a millimetre at most. */
const FINEST_MM = 0.01;

/** `perMm` in pixels, `room` the pixels that one number takes. */
export function rulerSteps(perMm: number, room: number): RulerSteps {
  const piece = Math.max(1, stepAtLeast(LEAST_PIECE_PX / perMm));
  const fine = Math.max(FINEST_MM, stepAtLeast(LEAST_FINE_PX / perMm));
  const number = stepAtLeast(room / perMm);
  return {
    piece,
    fine: piece === 1 && fine < 1 ? fine : null,
    number: number < 1 && perMm < PARTS_FROM_PX ? 1 : number,
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
