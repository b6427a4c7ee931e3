// The figure that would turn the verdict, in a sentence: `below 2.31 mm falls short, from 2.31 mm meets`.

import { lengthUnit } from '#words/text/length-unit.ts';
import { answerWords } from '#words/text/answer-words.ts';
import { lengthPlain, plain, plies } from '#words/text/number-words.ts';
import type { Deciding } from '#state/searches/deciding.svelte.ts';
import { unreachable } from '#units/unreachable.ts';

export function decidingWords(deciding: Deciding): string {
  switch (deciding.kind) {
    case 'figures':
      return bandWords(deciding);
    case 'answers':
      return answersWords(deciding);
    case 'nothing-alone':
      return 'no figure of this alone turns a pair';
    case 'no-figure':
      return 'no single figure: look, and put in what is found';
    default:
      return unreachable(deciding);
  }
}

type Figures = Extract<Deciding, { readonly kind: 'figures' }>;
type Answers = Extract<Deciding, { readonly kind: 'answers' }>;

function bandWords({ bands, unit, upTo }: Figures): string {
  const figure = (value: number): string =>
    unit === 'plies'
      ? plies(value)
      : unit === 'mm'
        ? `${lengthPlain(value)} ${lengthUnit()}`
        : `${plain(value)} ${unit}`;
  const [first, ...later] = bands;
  if (first === undefined) return '';
  const [next] = later;
  const begins =
    next === undefined
      ? `up to ${figure(upTo)} ${answerWords(first.answer)}`
      : `below ${figure(next.from)} ${answerWords(first.answer)}`;
  const turns = later.map(({ from, answer }) => `from ${figure(from)} ${answerWords(answer)}`);
  return [begins, ...turns, ...(unit === 'V rms' ? ['with the peak of a sine'] : [])].join(', ');
}

/** `meets with wire-annex; falls short with none`: the better first. */
function answersWords({ answers }: Answers): string {
  const kinds = ['meets', 'not-shown', 'falls-short'] as const;
  return kinds
    .flatMap((answer) => {
      const values = answers.filter((each) => each.answer === answer).map(({ value }) => valueWords(value));
      return values.length === 0 ? [] : [`${answerWords(answer)} with ${values.join(', ')}`];
    })
    .join('; ');
}

const valueWords = (value: string | number): string => VALUES[String(value)] ?? String(value);

const VALUES: Readonly<Record<string, string>> = {
  'wire-annex': 'a certificate to the wire annex',
  none: 'none',
  slot: 'a slot in the flange',
  riser: 'a riser along the flange',
  top: 'a way over the rim',
  floating: 'no bond',
};
