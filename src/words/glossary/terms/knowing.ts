// How well a thing is known.

import { term, type Term } from './term.ts';

export const knowingTerms: readonly Term[] = [
  term(
    'unknown',
    'unknown',
    'Not measured and not stated; counted at its worst and named.',
    ['at-worst', 'decides', 'not-shown'],
    { also: ['don’t know'] },
  ),
  term(
    'at-worst',
    'at worst, at best',
    'Judged with every unknown counted against the build, or for it.',
    ['unknown', 'proven'],
    { also: ['at worst', 'at best'] },
  ),
  term(
    'proven',
    'proven',
    'A pair that falls short whatever the unknowns are: what was measured is enough to say so.',
    ['at-worst', 'falls-short'],
  ),
  term('decides', 'decides', 'Said of an unknown that would change the verdict if it were known.', [
    'unknown',
    'not-shown',
  ]),
  term(
    'memory',
    'memory',
    'A figure of our tables that was recalled, not read in its source: it is not checked; look it up before you rely on it.',
    ['rule-book', 'clause'],
    { also: ['marked memory', 'second-hand copy'] },
  ),
  term('evidence', 'evidence', 'What stands behind a measure: a photograph, a certificate, a marking.', [
    'unknown',
    'memory',
  ]),
  term(
    'assumption',
    'assumption',
    'What was taken where nobody knows, and what it would change.',
    ['unknown', 'at-worst', 'decides'],
    { also: ['assumptions'] },
  ),
  term(
    'tolerance',
    'tolerance',
    'How far a measure may come out from what was meant; it is counted at its worse end.',
    ['at-worst', 'margin'],
    { also: ['tolerances'] },
  ),
];
