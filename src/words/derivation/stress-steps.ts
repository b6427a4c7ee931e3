// What the steps of working voltages and transients say.

import { frequency, plain, volts } from '#words/text/number-words.ts';
import { num, row, word, type StepRows } from './sheet-row.ts';

export const stressSteps: Readonly<Record<string, StepRows>> = {
  withstand: (why) => [row('withstand', 'what the mains brings', `${plain(num(why, 'value'))} V peak`, null)],
  'no-transient': () => [row('withstand', 'the mains does not reach this pair', '0 V', null)],
  'supply-as-mains': (why) => {
    const text = `${word(why, 'supply')}, ${volts(num(why, 'voltage'))}`;
    return [row('supply', text, `${volts(num(why, 'mains'))} rms`, 'stated')];
  },
  'voltage-floor': (why) => {
    const value = `${volts(num(why, 'rms'))} rms, ${volts(num(why, 'peak'))} peak`;
    return [row('floor', `nothing is taken under the rated ${word(why, 'supply')} supply`, value, 'stated')];
  },
  'given-voltage': (why) => [
    row(word(why, 'basis'), `working voltage ${num(why, 'entry') + 1} of the file`, '', 'stated'),
  ],
  raised: (why) => {
    const text = `${plain(num(why, 'from'))} lies under the floor and is not believed`;
    return [row('raised', text, plain(num(why, 'to')), null)];
  },
  'double-barrier': (why) => {
    const text = `from ${plain(num(why, 'from'))}: half of a double barrier takes the whole voltage`;
    return [row('raised', text, plain(num(why, 'to')), null)];
  },
  'working-rms': (why) => [row('rms', word(why, 'basis'), volts(num(why, 'value')), null)],
  'working-peak': (why) => [row('peak', word(why, 'basis'), volts(num(why, 'value')), null)],
  'working-frequency': (why) => [row('frequency', word(why, 'basis'), frequency(num(why, 'value')), null)],
  'working-voltage': () => [],
  'estimate-width': (why) => {
    const text = `computed, so true within ${plain(100 * num(why, 'within'))} %: judged that much higher`;
    const value = `${volts(num(why, 'rms'))} rms, ${volts(num(why, 'peak'))} peak`;
    return [row('at worst', text, value, 'derived')];
  },
  'frequency-not-given': (why) => [
    row(
      'at worst',
      'no frequency is given: the highest that the tables know',
      frequency(num(why, 'value')),
      null,
    ),
  ],
};
