// Terms in other languages, from the International Electrotechnical Vocabulary (IEC 60050). Only what was read in the entry named
// stands here, in a public copy of the entries; a name that was plainly misprinted there is left out, as is every other term.

import { buildVocabulary } from './vocabulary/build.ts';
import { electricVocabulary } from './vocabulary/electric.ts';
import type { Entry } from './vocabulary/entry.ts';
import { insulationVocabulary } from './vocabulary/insulation.ts';
import { materialVocabulary } from './vocabulary/materials.ts';

/** By the term's id. Source: IEC 60050, Electropedia, entry of each number, International Electrotechnical Commission. */
export const vocabulary: Readonly<Record<string, Entry>> = {
  ...insulationVocabulary,
  ...buildVocabulary,
  ...materialVocabulary,
  ...electricVocabulary,
};
