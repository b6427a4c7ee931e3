// A text cut into pieces, so that each term of the glossary in it can lead to its word: longest names first, whole words only,
// each term once, where it stands first.

import { terms } from './terms.ts';

export interface TermPiece {
  readonly text: string;
  /** Id of the term that the piece names; null for what is between. */
  readonly term: string | null;
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

export function termPieces(text: string): readonly TermPiece[] {
  const pieces: TermPiece[] = [];
  const seen = new Set<string>();
  let done = 0;
  for (const found of text.matchAll(NAMES)) {
    const term = BY_NAME.get(found[0].toLowerCase());
    if (term === undefined || seen.has(term)) continue;
    seen.add(term);
    if (found.index > done) pieces.push({ text: text.slice(done, found.index), term: null });
    pieces.push({ text: found[0], term });
    done = found.index + found[0].length;
  }
  if (done < text.length) pieces.push({ text: text.slice(done), term: null });
  return pieces;
}
