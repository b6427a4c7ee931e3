// The creepage that a book asks of one judged pair as its voltage rises, the peak with the rms: points of a curve in mm,
// null where the book has no figure. The pair's own point lies on it where no line is broken.

import { bookOf } from '#books/book-of.ts';
import { meansOf } from '#judge/grade/means.ts';
import { questionOf } from '#judge/grade/required.ts';
import { soldIn } from '#judge/assume/sold-in.ts';
import { WORST } from '#judge/assume/assumption.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { Design } from '#model/design.ts';
import type { MaterialGroup } from '#units/terms.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import { hertz, inMm, voltsPeak, voltsRms } from '#units/quantity.ts';

/** V rms and mm. */
export type CurvePoint = readonly [rms: number, mm: number | null];

const FROM = 50;
const TO = 1000;
const POINTS = 96;

export function askedCurve(asFiled: Design, pair: PairVerdict): readonly CurvePoint[] {
  const { between, needed, required, stress } = pair;
  if (required === null) return [];
  const book = bookOf(asFiled);
  const design = soldIn(asFiled, book);
  const [a, b] = between.map((id) => design.circuits.find((circuit) => circuit.id === id));
  if (a === undefined || b === undefined || stress.rms <= 0) return [];
  const column = needed === 'reinforced' || needed === 'double' ? 'reinforced' : 'basic';
  const group = required.creepage.materialGroup as MaterialGroup;
  const transients = book.transients(design.supply, a, b);
  const means = meansOf(design, WORST, between);
  return Array.from({ length: POINTS }, (_, i): CurvePoint => {
    const rms = FROM * (TO / FROM) ** (i / (POINTS - 1));
    const at = {
      between,
      rms: voltsRms(rms),
      peak: voltsPeak((stress.peak * rms) / stress.rms),
      frequency: hertz(stress.frequency),
    };
    const found = book.required(questionOf(book, design, at, transients, needed, means)).creepage(group)[
      column
    ];
    return [rms, isOutOfRange(found) ? null : inMm(found.value)];
  });
}
