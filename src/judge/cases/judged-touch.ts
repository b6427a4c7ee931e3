// The touch current as it enters the verdict: above the limit through the parts alone it falls short, above it only with
// the estimated capacitance of the windings it is not shown, nor is it where a part has no value. Where the field was
// solved its capacitances count in place of the estimate, with all that they may be off; above the limit with the least
// that they may be, of a section of which all is known, it falls short. Milliamperes.

import type { Book } from '#books/questions/book.ts';
import type { Design } from '#model/design.ts';
import { leakageOf, type TouchCurrent } from '#stress/current/leakage.ts';
import { windingCapacitances, type LayersCapacitance } from '#stress/current/winding-capacitance.ts';
import { runningConverter } from '#stress/converter/computed-stress.ts';
import type { VoltsRms } from '#units/quantity.ts';
import type { JudgedTouchCurrent } from '#judge/verdict/verdict.ts';
import type { Answer } from '#judge/verdict/answer.ts';

export interface JudgedTouch {
  readonly touch: JudgedTouchCurrent;
  readonly mains: VoltsRms;
}

/** Between circuits, as the field has them. */
export interface FieldWindings {
  /** The most that they may be. */
  readonly most: readonly LayersCapacitance[];
  /** The least; null where the length of a turn is not in the file. */
  readonly least: readonly LayersCapacitance[] | null;
}

/** Null where nothing touchable faces the mains. `isKnown`: nothing of the build had to be assumed. */
export function judgedTouch(
  design: Design,
  book: Book,
  field: FieldWindings | null = null,
  isKnown = false,
): JudgedTouch | null {
  const has = (role: string) => design.circuits.some((circuit) => circuit.role === role);
  if (!has('mains')) return null;
  const running = runningConverter(design);
  const parts = leakageOf(design, book, [], running);
  const most = field?.most ?? windingCapacitances(design);
  const all = leakageOf(design, book, most, running);
  if (parts.touch === null || all.touch === null) return null;
  const least = isKnown && field?.least ? leakageOf(design, book, field.least, running) : parts;
  const { total, limit, because } = all.touch;
  const touch = {
    rms: milli(total.rms),
    peak: milli(total.peak),
    limit: milli(limit.rms),
    verdict: answerOf(least.touch ?? parts.touch, all.touch, all.missing),
    windings: most[0]?.from ?? null,
    missing: all.missing,
    because,
  };
  return { touch, mains: all.mains };
}

function answerOf(least: TouchCurrent, all: TouchCurrent, missing: readonly string[]): Answer {
  if (least.answer === 'falls-short') return 'falls-short';
  return all.answer === 'falls-short' || missing.length > 0 ? 'not-shown' : 'meets';
}

const milli = (amperes: number): number => Math.round(amperes * 1e6) / 1e3;
