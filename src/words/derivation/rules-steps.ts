// What the steps of the judgement itself say: which of several figures governs, and what a part earns.

import type { Because } from '#standards/because.ts';
import { lengthUp, plain } from '#words/text/number-words.ts';
import { quantityWords } from '#words/text/quantity-words.ts';
import { NEXT_ROW, num, row, weakest, word, type SheetRow, type StepRows } from './sheet-row.ts';

export const rulesSteps: Readonly<Record<string, StepRows>> = {
  'required-clearance': (why) => {
    const factor = num(why, 'factor');
    const raised = factor > 1 ? ` × ${plain(factor)} for ${plain(num(why, 'altitude'))} m, up` : '';
    const text = `the largest, ${lengthUp(num(why, 'largest'))}${raised}: ${word(why, 'column')}`;
    return [row('clearance', text, mm(num(why, 'value')), null), ...refused(why)];
  },
  'required-creepage': (why) => {
    const text = `${word(why, 'column')}: ${GOVERNS[word(why, 'governs')] ?? word(why, 'governs')}`;
    return [row('creepage', text, mm(num(why, 'value')), null), ...refused(why)];
  },
  'test-level': (why) => [
    row('test', `the largest: ${word(why, 'column')}`, `${plain(num(why, 'value'))} V peak`, null),
  ],
  'judged-pair': (why) => {
    const asked = word(why, 'needed');
    return [row('reached', asked === '' ? 'nothing is asked' : `of ${asked}`, word(why, 'achieved'), null)];
  },
  bridge: (why) => [row('part', `${word(why, 'id')}, ${word(why, 'kind')}`, word(why, 'grade'), null)],
  'bridge-class': (why) => [row('class', word(why, 'class'), word(why, 'grade'), weakest(why))],
  'bridge-series': (why) => {
    const text = `${word(why, 'inSeries')} in series, each ${word(why, 'each')}`;
    return [row('series', text, word(why, 'grade'), null)];
  },
  'bridge-rating': (why) => {
    const text = `rated ${plain(num(why, 'rated'))} V for ${plain(num(why, 'rms'))} V rms`;
    return [row('rating', text, why.values['low'] === true ? 'too low' : 'enough', 'stated')];
  },
  'bridge-rating-assumed': (why) => [
    row('rating', `not given; taken to stand ${plain(num(why, 'rms'))} V rms`, '', null),
  ],
  ...Object.fromEntries(['distance', 'stress', 'through-insulation', 'test'].map((step) => [step, () => []])),
};

const mm = (value: number): string => quantityWords(value, 'mm');

const GOVERNS: Readonly<Record<string, string>> = {
  rms: 'the rms working voltage governs',
  'high-frequency': 'the peak above 30 kHz governs',
  clearance: 'never below the clearance, which governs',
};

function refused(why: Because): readonly SheetRow[] {
  const next = num(why, 'nextRow');
  if (next <= num(why, 'value')) return [];
  return [row(NEXT_ROW, 'where a laboratory does not interpolate', mm(next), 'derived')];
}
