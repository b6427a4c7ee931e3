// An assumption in words: which field, and what it was counted as, as a reader would say it.

import { countedAsWords } from '#words/unknowns/counted-words.ts';
import type { Design } from '#model/design.ts';
import type { Assumption } from '#judge/verdict/verdict.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { fieldWords } from '#words/design/field-words.ts';
import { pairNames } from './pair-words.ts';

/** A working voltage belongs to a pair: without it all of them would be called the same. */
export function assumedField(
  design: Design,
  { field, between }: Pick<Assumption, 'field' | 'between'>,
): string {
  const words = fieldWords(design, field);
  return between === null ? words : `${words}, ${pairNames(between, circuitLooks(design.circuits))}`;
}

export function countedWords({
  counted,
  kind,
  between,
}: Omit<Assumption, 'field' | 'decides' | 'atBest'>): string {
  if (kind === 'interval') return 'counted at the worse end of its interval';
  return between === null ? `counted as ${countedAsWords(counted)}` : `counted ${countedAsWords(counted)}`;
}
