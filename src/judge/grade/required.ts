// Puts the question of one pair to the rule book.

import type { Book } from '#books/questions/book.ts';
import type { Means, Question, Required, Transients } from '#books/questions/required.ts';
import type { Circuit, Design } from '#model/design.ts';
import type { Grade } from '#standards/grade.ts';
import type { PairStressResult } from '#stress/pair/pair-stress.ts';

export function questionOf(
  { circuits, supply, surroundings }: Design,
  stress: Pick<PairStressResult, 'between' | 'rms' | 'peak' | 'frequency'>,
  transients: Transients,
  needed: Grade | null,
  means: Means,
): Question {
  const circuit = (id: string): Circuit => circuits.find((one) => one.id === id)!;
  const { rms, peak, frequency } = stress;
  return {
    between: [circuit(stress.between[0]), circuit(stress.between[1])],
    needed,
    supply,
    pollutionDegree: surroundings.pollutionDegree,
    altitude: surroundings.altitude.value,
    rms,
    peak,
    frequency,
    transients,
    means,
  };
}

export const requiredFor = (book: Book, ...asked: Parameters<typeof questionOf>): Required =>
  book.required(questionOf(...asked));
