// The touch current as it enters the verdict: above the limit through the parts alone it falls short, above it only with
// the estimated capacitance of the windings it is not shown, nor is it where a part has no value. Milliamperes.

import type { Book } from '#books/questions/book.ts';
import type { Design } from '#model/design.ts';
import { leakageOf, type TouchCurrent } from '#stress/current/leakage.ts';
import { windingCapacitances } from '#stress/current/winding-capacitance.ts';
import { runningConverter } from '#stress/converter/computed-stress.ts';
import type { VoltsRms } from '#units/quantity.ts';
import type { JudgedTouchCurrent } from '#judge/verdict/verdict.ts';
import type { Answer } from '#judge/verdict/answer.ts';

export interface JudgedTouch {
  readonly touch: JudgedTouchCurrent;
  readonly mains: VoltsRms;
}

/** Null where nothing touchable faces the mains. */
export function judgedTouch(design: Design, book: Book): JudgedTouch | null {
  const has = (role: string) => design.circuits.some((circuit) => circuit.role === role);
  if (!has('mains')) return null;
  const running = runningConverter(design);
  const parts = leakageOf(design, book, [], running);
  const all = leakageOf(design, book, windingCapacitances(design), running);
  if (parts.touch === null || all.touch === null) return null;
  const { total, limit, because } = all.touch;
  const touch = {
    rms: milli(total.rms),
    peak: milli(total.peak),
    limit: milli(limit.rms),
    verdict: answerOf(parts.touch, all.touch, all.missing),
    missing: all.missing,
    because,
  };
  return { touch, mains: all.mains };
}

function answerOf(parts: TouchCurrent, all: TouchCurrent, missing: readonly string[]): Answer {
  if (parts.answer === 'falls-short') return 'falls-short';
  return all.answer === 'falls-short' || missing.length > 0 ? 'not-shown' : 'meets';
}

const milli = (amperes: number): number => Math.round(amperes * 1e6) / 1e3;
