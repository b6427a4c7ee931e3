// Puts the question of one pair to the rule book.

import { ALTITUDE } from '#judge/assume/sold-in.ts';
import type { Book } from '#books/questions/book.ts';
import type { Means, Question, Required, Transients } from '#books/questions/required.ts';
import type { Circuit, Design } from '#model/design.ts';
import type { Grade } from '#units/terms.ts';
import type { PairStressResult } from '#stress/pair/pair-stress.ts';

export function questionOf<B extends Pick<Book, 'national'>>(
  book: B,
  { circuits, supply, surroundings, defaulted }: Design,
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
    altitudeFrom: defaulted.includes(ALTITUDE)
      ? (book.national(supply.market)?.altitude?.because ?? null)
      : null,
    rms,
    peak,
    frequency,
    transients,
    means,
  };
}

export const requiredFor = (...asked: Parameters<typeof questionOf<Book>>): Required =>
  asked[0].required(questionOf(...asked));
