// What the steps of working voltages, transients, currents and heat say.

import type { BecauseOf } from '#standards/because.ts';
import type { StressSteps } from '#standards/steps/of-stress.ts';
import { basisWords } from '#words/stress/basis-words.ts';
import { frequency, lengthDown, plain, plies, volts } from '#words/text/number-words.ts';
import { row, type SheetRow, type WordsFor } from './sheet-row.ts';

export const stressWords: WordsFor<StressSteps> = {
  'working-voltage': () => [],
  'working-rms': ({ values }) => [row('rms', basisWords(values.basis), volts(values.value))],
  'working-peak': ({ values }) => [row('peak', basisWords(values.basis), volts(values.value))],
  'working-frequency': ({ values }) => [row('frequency', basisWords(values.basis), frequency(values.value))],
  'given-voltage': ({ values: { basis, entry } }) => [
    row(basis, `working voltage ${entry + 1} of the file`, '', 'stated'),
  ],
  'place-voltage': ({ values: { rms, peak, frequency: at } }) => [
    row('here', `the voltage at this place, ${frequency(at)}`, `${volts(rms)} rms, ${volts(peak)} peak`),
  ],
  'given-at-place': ({ values: { basis, value } }) => [row(basis, 'at this place', volts(value), 'stated')],
  'stated-transient': ({ values }) => [
    row('withstand', 'as the file states it', `${plain(values.value)} V peak`, 'stated'),
  ],
  'voltage-floor': ({ values: { supply, rms, peak } }) => {
    const value = `${volts(rms)} rms, ${volts(peak)} peak`;
    return [row('least', `nothing less than the rated ${supply} supply is counted`, value, 'stated')];
  },
  raised: ({ values: { from, to } }) => [
    row('raised', `${plain(from)} lies under that and is not believed`, plain(to)),
  ],
  'double-barrier': ({ values: { from, to } }) => [
    row('raised', `from ${plain(from)}: half of a double barrier takes the whole voltage`, plain(to)),
  ],
  'estimate-width': ({ values: { within, rms, peak } }) => {
    const text = `computed, so true within ${plain(100 * within)} %: judged that much higher`;
    return [row('at worst', text, `${volts(rms)} rms, ${volts(peak)} peak`, 'derived')];
  },
  'frequency-not-given': ({ values }) => [
    row('at worst', 'no frequency is given: the highest that the tables know', frequency(values.value)),
  ],
  'computed-rms': (why) => [computed('rms', why)],
  'computed-peak': (why) => [computed('peak', why)],
  'converter-case': ({ values }) => {
    const { variant, mode, line, bulk, reflected, overshoot, duty, primary, turns } = values;
    const which = variant === null ? '' : `, variant ${variant}`;
    return [
      row('bulk', `${line} line${which}`, volts(bulk), 'derived'),
      row('reflected', `${turns} turns of ${primary}`, volts(reflected), 'stated'),
      row('overshoot', 'of the clamp, for the peak', volts(overshoot), 'stated'),
      row('duty', `${mode} mode, at ${frequency(values.frequency)}`, plain(duty), 'derived'),
    ];
  },
  'local-stress': ({ values: { peak, line, variant, turnA, turnB } }) => {
    const which = variant === null ? '' : `, variant ${variant}`;
    return [row('neighbours', `turns ${turnA} and ${turnB}, ${line} line${which}`, `${volts(peak)} peak`)];
  },
  withstand: ({ values }) => [row('withstand', 'what the mains brings', `${plain(values.value)} V peak`)],
  'no-temporary-overvoltage': () => [
    row('overvoltage', 'a direct supply has none of the public mains', '0 V'),
  ],
  'no-transient': () => [row('withstand', 'the mains does not reach this pair', '0 V')],
  'supply-as-mains': ({ values: { supply, voltage, mains } }) => [
    row('supply', `${supply}, ${volts(voltage)}`, `${volts(mains)} rms`, 'stated'),
  ],
  'field-capacitance': ({ values: { farads, perMetre, meanTurn, error } }) => {
    const length =
      perMetre === null || meanTurn === null
        ? 'turned round the tube'
        : `${plain(perMetre * 1e12)} pF a metre × ${plain(meanTurn)} mm a turn`;
    const text = `by the field: ${length}, raised by what it may be off, ${plain(100 * error)} %`;
    return [row('capacitance', text, `${plain(farads * 1e12)} pF`, 'derived')];
  },
  'layers-capacitance': ({ values: { farads, width, meanTurn, distance, permittivity } }) => {
    const text = `${plain(permittivity)} ε₀ × ${plain(width)} × ${plain(meanTurn)} ÷ ${plain(distance)} mm`;
    return [row('capacitance', text, `${plain(farads * 1e12)} pF`, 'derived')];
  },
  'touch-current-found': ({ values: { mains, frequency: at, plain: straight, weighed, rms } }) => [
    row('straight', `${volts(mains)}, ${frequency(at)}, tied to earth`, milliamperes(straight), 'derived'),
    row('weighed', 'through the body, as it is felt', milliamperes(weighed), 'derived'),
    row('touch', 'with what switching adds', milliamperes(rms), 'derived'),
  ],
  'protective-current': ({ values: { mains, value } }) => [
    row('protective', `through the earth conductor at ${volts(mains)}`, milliamperes(value), 'derived'),
  ],
  'system-class': ({ values: { setBy, class: thermalClass } }) => [
    row('class', `the lowest: ${setBy}`, `${thermalClass} °C`),
  ],
  'class-of': (why) => [
    row('class', why.values.what, `${why.values.class} °C`, why.cites[0]?.confirmed ?? null),
  ],
  'heat-limit': ({ values: { limit, allowance, value } }) => [
    row(
      'heat',
      allowance === 0 ? 'as read' : `${plain(limit)} − ${plain(allowance)} °C as read`,
      `${plain(value)} °C`,
    ),
  ],
  'expected-breakdown': ({ values: { length, plies: count, likely } }) => {
    const way = count === 0 ? `${lengthDown(length)} mm` : `${lengthDown(length)} mm and ${plies(count)}`;
    return [row('expected', way, `about ${volts(likely)} peak`, 'derived')];
  },
};

const milliamperes = (amperes: number): string => `${plain(Math.ceil(amperes * 1e7) / 1e4)} mA`;

/** Ends as they are keyed in a step, in words. */
const END: Readonly<Record<string, string>> = {
  'bulk-plus': 'bulk plus',
  'bulk-minus': 'bulk minus',
  switched: 'switched end',
  return: 'return',
  'output-plus': 'plus pole',
  tied: 'tied point',
};

function endOf(circuit: string, at: string, diode: string | null): string {
  const lead = diode === null ? '' : `, rectifier in the ${diode.replace('-lead', '')} lead`;
  return `${END[at] ?? at} of ${circuit}${lead}`;
}

function computed(label: string, { values }: BecauseOf<'computed-rms' | 'computed-peak'>): SheetRow {
  const { a, aAt, aDiode, b, bAt, bDiode, value } = values;
  const text = `from the ${endOf(a, aAt, aDiode)} to the ${endOf(b, bAt, bDiode)}`;
  return row(label, text, volts(value), 'derived');
}
