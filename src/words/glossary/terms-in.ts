// Where the terms of the glossary stand in a text: longest names first, whole words only, in either case.

import { terms } from './terms.ts';

export interface TermIn {
  /** Id of the term. */
  readonly term: string;
  readonly from: number;
  /** Behind its last letter. */
  readonly to: number;
}

const escaped = (name: string): string => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const BY_NAME: ReadonlyMap<string, string> = new Map(
  terms.flatMap(({ id, term, also }) => [term, ...also].map((name) => [name.toLowerCase(), id] as const)),
);

const NAMES = new RegExp(
  `(?<![\\p{L}\\d-])(?:${[...BY_NAME.keys()]
    .sort((a, b) => b.length - a.length)
    .map(escaped)
    .join('|')})(?![\\p{L}\\d-])`,
  'giu',
);

export const termsIn = (text: string): readonly TermIn[] =>
  [...text.matchAll(NAMES)].flatMap(({ 0: name, index }) => {
    const term = BY_NAME.get(name.toLowerCase());
    return term === undefined ? [] : [{ term, from: index, to: index + name.length }];
  });
