// A text cut into pieces, so that each term of the glossary in it can lead to its word: each term once, where it stands first.

import { termsIn } from './terms-in.ts';

export interface TermPiece {
  readonly text: string;
  /** Id of the term that the piece names; null for what is between. */
  readonly term: string | null;
}

export function termPieces(text: string): readonly TermPiece[] {
  const pieces: TermPiece[] = [];
  const seen = new Set<string>();
  let done = 0;
  for (const { term, from, to } of termsIn(text)) {
    if (seen.has(term)) continue;
    seen.add(term);
    if (from > done) pieces.push({ text: text.slice(done, from), term: null });
    pieces.push({ text: text.slice(from, to), term });
    done = to;
  }
  if (done < text.length) pieces.push({ text: text.slice(done), term: null });
  return pieces;
}
