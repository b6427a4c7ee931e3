// An assumption in words: which field, and what it was counted as, as a reader would say it.

import type { Design } from '#model/design.ts';
import type { Assumption } from '#rules/verdict.ts';
import { circuitLooks } from './circuit-look.ts';
import { fieldWords } from './field-words.ts';
import { pairNames } from './pair-words.ts';

/** A working voltage belongs to a pair: without it all of them would be called the same. */
export function assumedField(
  design: Design,
  { field, counted }: Pick<Assumption, 'field' | 'counted'>,
): string {
  const words = fieldWords(design, field);
  const pair = pairIn(design, counted);
  return pair === null ? words : `${words}, ${pairNames(pair, circuitLooks(design.circuits))}`;
}

export function countedWords(
  design: Design,
  { counted, kind }: Pick<Assumption, 'counted' | 'kind'>,
): string {
  if (kind === 'interval') return 'counted at the worse end of its interval';
  const pair = pairIn(design, counted);
  return pair === null ? `counted as ${counted}` : `counted ${counted.slice(opening(pair).length)}`;
}

function pairIn({ circuits }: Design, counted: string): readonly [string, string] | null {
  for (const { id: from } of circuits)
    for (const { id: to } of circuits) if (counted.startsWith(opening([from, to]))) return [from, to];
  return null;
}

const opening = ([from, to]: readonly [string, string]): string => `between ${from} and ${to} `;
