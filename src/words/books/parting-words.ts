// One figure on which rule books part, in a sentence: `P to S, creepage: 5.44 mm (IEC 60664-1), 8.0 mm (IEC 60335-1)`.

import type { BookColumn, Parting } from '#judge/study/side-by-side.ts';
import type { CircuitLook } from '#words/design/circuit-look.ts';
import { askedLength, kilovoltsUp } from '#words/text/number-words.ts';
import { answerWords } from '#words/text/answer-words.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { pairNames } from '#words/verdict/pair-words.ts';

export function partingWords(
  { between, figure, values }: Parting,
  books: readonly Pick<BookColumn, 'rules' | 'name'>[],
  looks: readonly CircuitLook[],
): string {
  const name = (id: string): string => books.find(({ rules }) => rules.id === id)?.name ?? id;
  const parts = values.map(
    ({ value, books: ids }) => `${valueWords(figure, value)} (${ids.map(name).join(', ')})`,
  );
  return `${pairNames(between, looks)}, ${FIGURES[figure]}: ${parts.join('; ')}`;
}

const FIGURES: Readonly<Record<Parting['figure'], string>> = {
  needed: 'needed',
  creepage: 'creepage asked',
  clearance: 'clearance asked',
  test: 'test',
  achieved: 'achieved',
  verdict: 'verdict',
};

function valueWords(figure: Parting['figure'], value: string | number | null): string {
  if (value === null) return 'no figure';
  if (figure === 'verdict') return answerWords(value as Answer);
  if (typeof value === 'string') return value;
  return figure === 'test' ? `${kilovoltsUp(value)} peak` : askedLength(value);
}
