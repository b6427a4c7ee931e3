// What the steps of a computed working voltage and of bridging parts say on a worked sheet.

import { frequency, plain, volts } from '#words/text/number-words.ts';
import { num, row, word, type StepRows } from './sheet-row.ts';

/** Ends as they are keyed in a step, in words. */
const END: Readonly<Record<string, string>> = {
  'bulk-plus': 'bulk plus',
  'bulk-minus': 'bulk minus',
  switched: 'switched end',
  return: 'return',
  'output-plus': 'plus pole',
  tied: 'tied point',
};

const end = (why: Parameters<StepRows>[0], which: 'a' | 'b'): string => {
  const lead = word(why, `${which}Diode`).replace('-lead', '');
  const at = `${END[word(why, `${which}At`)] ?? ''} of ${word(why, which)}`;
  return lead === '' ? at : `${at}, rectifier in the ${lead} lead`;
};

const computed: StepRows = (why) => {
  const which = why.step === 'computed-rms' ? 'rms' : 'peak';
  return [
    row(which, `from the ${end(why, 'a')} to the ${end(why, 'b')}`, volts(num(why, 'value')), 'derived'),
  ];
};

export const converterSteps: Readonly<Record<string, StepRows>> = {
  'computed-rms': computed,
  'computed-peak': computed,
  'converter-case': (why) => [
    row('bulk', `${word(why, 'line')} line${variantOf(why)}`, volts(num(why, 'bulk')), 'derived'),
    row(
      'reflected',
      `${word(why, 'turns')} turns of ${word(why, 'primary')}`,
      volts(num(why, 'reflected')),
      'stated',
    ),
    row('overshoot', 'of the clamp, for the peak', volts(num(why, 'overshoot')), 'stated'),
    row('duty', `at ${frequency(num(why, 'frequency'))}`, plain(num(why, 'duty')), 'derived'),
  ],
  bridge: (why) => [row('part', `${word(why, 'kind')} ${word(why, 'id')}`, word(why, 'grade'), null)],
  'bridge-class': (why) => [row('class', word(why, 'class'), word(why, 'grade'), null)],
  'bridge-series': (why) => [
    row('series', `${word(why, 'inSeries')} equal ones, each ${word(why, 'each')}`, word(why, 'grade'), null),
  ],
  'bridge-approval': (why) => [
    row('approval', word(why, 'approval'), `${word(why, 'most')} at most`, 'stated'),
  ],
  'bridge-distances': (why) => {
    const text = `clearance ${lengthOf(why, 'clearance')}, creepage ${lengthOf(why, 'creepage')} round it`;
    return [row('outside', text, word(why, 'grade'), 'stated')];
  },
  'bridge-limits': (why) => {
    const text = `${word(why, 'from')} holds up to ${volts(num(why, 'mainsMost'))} mains, category ${word(why, 'categoryMost')}`;
    return [row('limits', text, word(why, 'grade'), null)];
  },
  'bridge-rating': (why) => {
    const answer = why.values['low'] === true ? 'too low' : 'enough';
    return [row('rating', `${volts(num(why, 'rated'))} for ${volts(num(why, 'rms'))} rms`, answer, 'stated')];
  },
  'bridge-rating-assumed': (why) => [
    row('rating', `not given, taken to reach ${volts(num(why, 'rms'))} rms`, '', null),
  ],
  'bridge-alone': () => [row('alone', 'one part without approval: a single fault bridges it', 'none', null)],
};

const variantOf = (why: Parameters<StepRows>[0]): string =>
  word(why, 'variant') === '' ? '' : `, variant ${word(why, 'variant')}`;

const lengthOf = (why: Parameters<StepRows>[0], key: string): string =>
  typeof why.values[key] === 'number' ? `${plain(num(why, key))} mm` : 'unknown';
