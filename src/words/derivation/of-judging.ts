// What the steps of the judgement itself say: which of several figures governs, and what a part earns.

import type { JudgingSteps } from '#standards/steps/of-judging.ts';
import { kilovoltsUp, lengthDown, lengthUp, plain, plies, volts } from '#words/text/number-words.ts';
import { quantityWords } from '#words/text/quantity-words.ts';
import { refused } from './of-tables.ts';
import { product, row, weakest, type WordsFor } from './sheet-row.ts';
import { spaced } from '#words/text/spaced.ts';

export const judgingWords: WordsFor<JudgingSteps> = {
  'solid-worth': ({ values: { kind, shown, basic, reinforced, worth } }) => [
    row(spaced(kind), `${shownWords(shown)}; asked ${levelWords(basic, reinforced)}`, worth),
  ],
  'thin-sheets': ({ values: { plies: count, basic, reinforced, worth } }) => [
    row('plies', `${plies(count)}; asked ${levelWords(basic, reinforced)}`, worth),
  ],
  'bonded-sheets': ({ values: { plies: count, factor, shown, worth } }) => [
    row('bonded', `${plies(count)}, ${shownWords(shown)} against ${plain(factor)} times the test`, worth),
  ],
  'distance-worth': ({ values: { length, basic, reinforced, worth } }) => {
    const asked = `basic ${lengthUp(basic)}, reinforced ${lengthUp(reinforced)}`;
    return [row('distance', `${lengthDown(length)} mm; asked ${asked}`, worth)];
  },
  'path-grade': ({ values: { length, uncounted, plies: count, insulations, grade } }) => {
    const way = count === 0 ? `${lengthDown(length)} mm` : `${lengthDown(length)} mm and ${plies(count)}`;
    const series = insulations === 1 ? 'by one insulation' : `${insulations} insulations in series`;
    return [
      ...uncounted.map((piece) => row('piece', `${lengthDown(piece)} mm, less than X`, 'counts nothing')),
      row('path', `${way}: ${series}`, grade),
    ];
  },
  'strong-solids': () => [row('solid', 'no way leads through these', 'strong')],
  'strong-run': ({ values: { from, shown } }) => [
    row('solid', `from ${plain(from)} mm up`, `${Math.floor(shown)} V peak`),
  ],
  'required-clearance': ({ values: { column, value, largest, factor, altitude, nextRow } }) => {
    const raised = factor > 1 ? ` × ${plain(factor)} for ${plain(altitude)} m, up` : '';
    const text = `the largest, ${lengthUp(largest)}${raised}: ${column}`;
    return [row('clearance', text, mm(value)), ...refused(nextRow, value, 'mm')];
  },
  'required-creepage': ({ values: { column, governs, value, nextRow } }) => [
    row('creepage', `${column}: ${GOVERNS[governs]}`, mm(value)),
    ...refused(nextRow, value, 'mm'),
  ],
  national: (why) => {
    const { market, quantity, value } = why.values;
    const unit = { mains: ' V', entered: ' V', category: '', altitude: ' m' }[quantity];
    return [row('market', `${market}: ${NATIONAL[quantity]}`, `${plain(value)}${unit}`, weakest(why))];
  },
  'impulse-step': ({ values: { from, to } }) => [
    row('next step', `of the rated impulse voltage, from ${plain(from)} V`, `${plain(to)} V peak`),
  ],
  'impulse-raised': ({ values: { impulse, excess, value } }) => [
    row(
      'raised',
      `${plain(impulse)} + ${plain(excess)} V above the rated peak`,
      `${plain(value)} V peak`,
      'derived',
    ),
  ],
  'peak-raised': (why) => {
    const { peak, factor, value } = why.values;
    return [row('raised', `${product(factor, peak)} V peak`, `${plain(value)} V peak`, weakest(why))];
  },
  'additional-clearance': ({ values: { before, more, value } }) => [
    row('added', `${plain(before)} + ${plain(more)} mm above the peak of the mains`, mm(value), 'derived'),
  ],
  'short-overvoltage': (why) => {
    const { row: mains, add, value } = why.values;
    return [
      row(
        'overvoltage',
        `${plain(mains)} + ${plain(add)} V rms, × √2`,
        `${Math.ceil(value)} V peak`,
        weakest(why),
      ),
    ];
  },
  'operator-row': (why) => {
    const { means, quantity, value } = why.values;
    return [row('operator', `${quantity}, ${means} means`, mm(value), weakest(why))];
  },
  'test-formula': ({ values: { factor, rms, term, value } }) => {
    const text = `${product(factor, rms)} + ${plain(term)} = ${plain(factor * rms + term)} V rms, × √2`;
    return [row('test', text, `${Math.ceil(value)} V peak`, 'derived')];
  },
  'test-level': ({ values }) => [
    row('test', `the largest: ${values.column}`, `${plain(values.value)} V peak`),
  ],
  'high-frequency-test': ({ values: { factor, peak, reduction, value } }) => {
    const text = `${product(factor, peak)} V ÷ ${plain(reduction)}`;
    return [row('over 30 kHz', text, `${Math.ceil(value)} V peak`, 'derived')];
  },
  'bridging-share': ({ values: { clearance, divisor, value } }) => {
    const text = `a third of the clearance, ${plain(clearance)} ÷ ${plain(divisor)}`;
    return [row('X', text, `${plain(value)} mm`, 'derived')];
  },
  'judged-pair': ({ values: { needed, achieved } }) => [
    row('reached', needed === null ? 'nothing is asked' : `of ${needed}`, achieved),
  ],
  'behind-reinforced': ({ values }) => [
    row('asked', `${values.circuit} is reinforced towards all of the mains`, 'nothing'),
  ],
  distance: () => [],
  stress: () => [],
  'through-insulation': () => [],
  test: () => [],
  verdict: () => [],
  bridge: ({ values: { id, kind, grade } }) => [row('part', `${id}, ${kind}`, grade)],
  'bridge-class': (why) => [row('class', why.values.class, why.values.grade, weakest(why))],
  'bridge-series': ({ values: { inSeries, each, grade } }) => [
    row('series', `${inSeries} in series, each ${each}`, grade),
  ],
  'bridge-limits': ({ values: { from, mainsMost, categoryMost, grade } }) => {
    const text = `${from} holds up to ${volts(mainsMost)} mains, category ${categoryMost}`;
    return [row('limits', text, grade)];
  },
  'bridge-approval': ({ values: { approval, most } }) => [
    row('approval', approval, `${most} at most`, 'stated'),
  ],
  'bridge-distances': ({ values: { clearance, creepage, grade } }) => {
    const text = `clearance ${lengthOf(clearance)}, creepage ${lengthOf(creepage)} round it`;
    return [row('outside', text, grade, 'stated')];
  },
  'bridge-rating': ({ values: { rated, rms, low } }) => {
    const text = `rated ${plain(rated)} V for ${plain(rms)} V rms`;
    return [row('rating', text, low ? 'too low' : 'enough', 'stated')];
  },
  'bridge-rating-assumed': ({ values }) => [
    row('rating', `not given; taken to withstand ${plain(values.rms)} V rms`),
  ],
  'bridge-alone': () => [row('alone', 'one part without approval: a single fault bridges it', 'none')],
  'outside-grade': ({ values: { what, clearance, creepage, grade } }) => {
    const text = `${what}: clearance ${lengthOf(clearance)}, creepage ${lengthOf(creepage)}`;
    return [row('outside', text, grade ?? 'nothing to judge', 'stated')];
  },
};

/** Levels are asked, so rounded up. */
const levelWords = (basic: number | null, reinforced: number | null): string =>
  [basic, reinforced].map((level) => kilovoltsUp(level)).join(' and ') + ' peak';

const shownWords = (shown: number | null): string =>
  shown === null
    ? 'taken to withstand it'
    : shown === 0
      ? 'nothing shown'
      : `shown ${plain(Math.floor(shown))} V peak`;

const mm = (value: number): string => quantityWords(value, 'mm');

const lengthOf = (value: number | null): string => (value === null ? 'unknown' : `${plain(value)} mm`);

const GOVERNS: Readonly<Record<JudgingSteps['required-creepage']['governs'], string>> = {
  rms: 'the rms working voltage governs',
  'high-frequency': 'the peak above 30 kHz governs',
  clearance: 'never below the clearance, which governs',
};

const NATIONAL = {
  mains: 'its mains',
  entered: 'tables of the mains are read at',
  category: 'overvoltage category',
  altitude: 'altitude where none is named',
} as const;
