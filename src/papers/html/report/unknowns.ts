// What the file does not know and what each would change; and what is easily forgotten and was not answered.

import { notJudgedWords } from '#words/unknowns/not-judged-words.ts';
import { answerWords, capitalised } from '#words/text/answer-words.ts';
import { assumedField, countedWords } from '#words/verdict/assumption-words.ts';
import { openQuestionsOf } from '#words/unknowns/open-questions.ts';
import { block, table, tag, wholeBlock, type Content, type Markup } from '#papers/html/page/markup.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';
import { unknownSign } from '#papers/html/page/signs.ts';

export function unknowns({ design, judgement }: ReportParts): Markup | null {
  const rows = judgement.verdict.assumptions.map((assumption): readonly Content[] => {
    const { field, decides, atBest, kind } = assumption;
    const best = atBest === null ? '' : `, the whole at its best: ${answerWords(atBest)}`;
    const effect = decides ? [tag('b', {}, 'decides a pair'), best] : 'changes nothing alone';
    return [
      [
        kind === 'unknown' ? [unknownSign(), ' '] : null,
        capitalised(assumedField(design, assumption)),
        tag('span', { class: 'path' }, field),
      ],
      countedWords(assumption),
      KINDS[kind],
      effect,
    ];
  });
  return block('Unknown and assumed, and what each would change', table(COLUMNS, rows));
}

const COLUMNS = ['Field', 'Counted', 'Because', 'Effect'].map((title) => ({ title }));

const KINDS = {
  unknown: 'unknown',
  default: 'left out',
  'house-rule': 'house rule',
  interval: 'interval',
} as const;

export function openQuestions({ design, judgement }: ReportParts): Markup | null {
  const left = judgement.verdict.notJudged.map((left) => tag('li', {}, notJudgedWords(left)));
  const open = openQuestionsOf(design).map((question) => tag('li', {}, question));
  const part = (title: string, items: readonly Markup[]): Content =>
    items.length === 0 ? null : tag('div', {}, tag('p', {}, title), tag('ul', {}, items));
  if (left.length + open.length === 0) return null;
  return wholeBlock(
    'Asked and not answered',
    tag('div', { class: 'two' }, part('Left out of the verdict:', left), part('To be looked at:', open)),
  );
}
