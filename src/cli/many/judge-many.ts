// Many files: one line each and a summary, or an array in the order given; one bad file does not stop the rest.

import { itemsOf } from './file-threads.ts';
import type { JudgeItem, JudgeOrder } from './judge-item.ts';
import { junitOf } from '#papers/junit.ts';
import type { ExitCode, Outcome } from '#cli/line/outcome.ts';

export async function judgeMany(files: readonly string[], order: JudgeOrder): Promise<Outcome> {
  const items = await itemsOf(files, 'judge', order);
  const code = items.map(codeOf).reduce((a, b) => (a > b ? a : b), 0);
  if (order.form === 'junit') return { code, out: [junitOf(items.map(({ text }) => text))], err: '' };
  if (order.form === 'words')
    return { code, out: [...items.map(({ text }) => text), `\n${summary(items)}\n`], err: '' };
  // piece by piece, because the whole of a thousand verdicts is longer than one text may be
  const pieces = items.map(({ text }, k) => `${text}${k === items.length - 1 ? '' : ','}\n`);
  return { code, out: ['[\n', ...pieces, ']\n'], err: '' };
}

function summary(items: readonly JudgeItem[]): string {
  const count = (answer: JudgeItem['answer']): number =>
    items.filter((item) => item.answer === answer).length;
  const broken = count('fault');
  const parts = [
    `${count('meets')} meet`,
    `${count('falls-short')} fall short`,
    `${count('not-shown')} not shown`,
    `${count('bad')} bad input`,
    ...(broken > 0 ? [`${broken} not judged for a fault of the program`] : []),
  ];
  return `${items.length} files: ${parts.join(', ')}`;
}

export const codeOf = ({ answer }: JudgeItem): ExitCode =>
  answer === 'fault' ? 3 : answer === 'bad' ? 2 : answer === 'meets' ? 0 : 1;
