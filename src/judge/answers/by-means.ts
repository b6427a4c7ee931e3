// What a book that tells patients from operators asks for either of them, of one pair at its voltages.

import type { Book } from '#books/questions/book.ts';
import { meansOf } from '#judge/grade/means.ts';
import { requiredFor } from '#judge/grade/required.ts';
import { WORST } from '#judge/assume/assumption.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Design } from '#model/design.ts';
import type { MaterialGroup } from '#units/terms.ts';
import { printDistance } from './print-distance.ts';
import type { MeansDistances, Required } from '#judge/verdict/pair.ts';

export function byMeans(
  book: Book,
  design: Design,
  { stress, transients, needed, between }: PairOutcome,
  group: MaterialGroup,
): NonNullable<Required['byMeans']> {
  const of = (means: 'patient' | 'operator'): MeansDistances => {
    const { clearance, creepage } = requiredFor(book, design, stress, transients, needed, means);
    return { clearance: printDistance(clearance), creepage: printDistance(creepage(group)) };
  };
  return { judged: meansOf(design, WORST, between), patient: of('patient'), operator: of('operator') };
}
