// What is wrong with a field, as the page says it: the field in words, what stands there, what was expected.

import type { BadInput } from '#model/faults/bad-input.ts';
import { capitalised } from '#words/text/answer-words.ts';
import { fieldWords, type Named } from './field-words.ts';

/** Beside its field, which needs no name there. */
export const faultBeside = ({ found, expected }: BadInput): string =>
  found === 'nothing' ? `expected ${expected}` : `${found}: expected ${expected}`;

/** Away from its field. */
export function faultWords(named: Named, fault: BadInput): string {
  if (fault.field === '') return capitalised(fault.says);
  return `${capitalised(fieldWords(named, fault.field))} is ${
    fault.found === 'nothing' ? 'missing' : fault.found
  }; expected ${fault.expected}.`;
}
