// A step of the first ten minutes taken apart: plain words, labels that stand on the page, what is typed.

export interface MinutePart {
  readonly kind: 'words' | 'label' | 'typed';
  readonly text: string;
}

export const partsOf = (says: string): readonly MinutePart[] =>
  says
    .split(/(\*\*[^*]+\*\*|`[^`]+`)/)
    .filter((piece) => piece !== '')
    .map(partOf);

function partOf(piece: string): MinutePart {
  if (piece.startsWith('**')) return { kind: 'label', text: piece.slice(2, -2) };
  return piece.startsWith('`') ? { kind: 'typed', text: piece.slice(1, -1) } : { kind: 'words', text: piece };
}
