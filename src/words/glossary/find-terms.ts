// The terms that a few typed letters mean: by name, other names, other languages, then by what the sentence says.
// Where none does, the three that are spelled most alike.

import type { Term } from './terms/term.ts';
import { terms } from './terms.ts';
import { vocabulary } from './vocabulary.ts';

export interface FoundTerms {
  readonly terms: readonly Term[];
  /** Nothing was found: these are only spelled alike. */
  readonly isNear: boolean;
}

const ALIKE = 3;

export function findTerms(typed: string): FoundTerms {
  const text = typed.trim().toLowerCase();
  if (text === '') return { terms: inOrder(terms), isNear: false };
  const named = terms.filter((term) => namesOf(term).some((name) => name.includes(text)));
  const told = terms.filter((term) => !named.includes(term) && term.says.toLowerCase().includes(text));
  if (named.length + told.length > 0) return { terms: [...inOrder(named), ...inOrder(told)], isNear: false };
  const near = terms
    .map((term) => ({ term, apart: Math.min(...namesOf(term).map((name) => apart(text, name))) }))
    .sort((a, b) => a.apart - b.apart)
    .slice(0, ALIKE);
  return { terms: near.map(({ term }) => term), isNear: true };
}

const namesOf = ({ id, term, also }: Term): readonly string[] => {
  const { de, fr, es, it, zh, ja } = vocabulary[id] ?? {};
  return [term, ...also, de, fr, es, it, zh, ja].flatMap((name) =>
    name === undefined ? [] : [name.toLowerCase()],
  );
};

const inOrder = (found: readonly Term[]): readonly Term[] =>
  found.toSorted((a, b) => a.term.localeCompare(b.term, 'en'));

/** How many letters must be put in, taken out or changed to make one word the other. */
function apart(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
