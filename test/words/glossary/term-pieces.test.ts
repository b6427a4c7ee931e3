// A text cut at the terms of the glossary: whole words, the longest name, each term once, nothing lost.

import { describe, expect, it } from 'vitest';

import { termPieces } from '#words/glossary/term-pieces.ts';

const named = (text: string) =>
  termPieces(text).flatMap(({ text: piece, term }) => (term === null ? [] : [[piece, term]]));

describe('terms in a text', () => {
  it('should take the longest name that stands there', () => {
    expect(named('A creepage distance is long.')).toEqual([['creepage distance', 'creepage-distance']]);
  });

  it('should take whole words only, in either case, each term once', () => {
    expect(named('Enamel is not enamelled; enamel again.')).toEqual([['Enamel', 'enamel']]);
  });

  it('should lose nothing of the text', () => {
    const text = 'Out over the margin, up at the flange, back over the output’s margin.';
    expect(
      termPieces(text)
        .map((piece) => piece.text)
        .join(''),
    ).toBe(text);
  });
});
