// Where a voltage comes from, in the words of a table's cell.

import type { Basis } from '#stress/pair/pair-stress.ts';

const WORDS: Readonly<Record<Basis, string>> = {
  measured: 'measured',
  stated: 'stated',
  computed: 'computed',
  floor: 'rated mains',
};

/** `rated mains`: nothing more was given, and less is never counted. */
export const basisWords = (basis: Basis): string => WORDS[basis];
