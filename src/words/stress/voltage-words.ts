// Working voltages and what stands between neighbouring layers, in words.

import { basisWords } from './basis-words.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import type { LocalStress } from '#stress/turns/local-stress.ts';
import type { ComputedFigure, EndName, StressNote, SwitchingState } from '#stress/pair/pair-stress.ts';
import { unreachable } from '#units/unreachable.ts';

import type { CircuitLook } from '#words/design/circuit-look.ts';
import { frequency, plain, plies, volts } from '#words/text/number-words.ts';
import { nameOf, pairNames } from '#words/verdict/pair-words.ts';
import type { StressPair } from '#judge/study/stress-report.ts';

export function pairStressLines(pair: StressPair, looks: readonly CircuitLook[]): readonly string[] {
  const { rms, peak, from, computed, notes } = pair;
  const figures = `${volts(rms)} rms (${basisWords(from.rms)}), ${volts(peak)} peak (${basisWords(from.peak)}), ${frequency(pair.frequency)}`;
  return [
    `${pairNames(pair.between, looks)}: ${figures}; ${transientWords(pair)}`,
    ...(computed === null
      ? []
      : [`  rms ${figureWords(computed.rms, looks)}`, `  peak ${figureWords(computed.peak, looks)}`]),
    ...givenWords(pair).map((line) => `  ${line}`),
    ...(pair.judgedAt === null ? [] : [`  ${judgedAtWords(pair)}`]),
    ...notes.map((note) => `  ${noteWords(note, looks)}`),
  ];
}

/** What the mains brings between them. */
export function transientWords({ transients: { withstand, temporaryOvervoltage } }: StressPair): string {
  if (isOutOfRange(withstand)) return 'the mains transient is beyond the tables';
  if (withstand.value === 0) return 'no transient of the mains is counted here';
  const overvoltage = isOutOfRange(temporaryOvervoltage)
    ? 'temporary overvoltage beyond the tables'
    : `temporary overvoltage ${volts(temporaryOvervoltage.value)} peak`;
  return `transient ${volts(withstand.value)} peak, ${overvoltage}`;
}

/** What a computed pair is judged at; empty where nothing is computed. */
export function judgedAtWords({ judgedAt }: StressPair): string {
  if (judgedAt === null) return '';
  const { within, rms, peak } = judgedAt;
  return `computed within ${plain(100 * within)} %, so judged at ${volts(rms)} rms, ${volts(peak)} peak`;
}

/** Measured or stated figures beside the computed ones. */
export function givenWords({ rms, peak, from, computed }: StressPair): readonly string[] {
  if (computed === null) return [];
  const beside = (quantity: 'rms' | 'peak', value: number): readonly string[] => {
    const found = computed[quantity].value;
    if (from[quantity] !== 'measured' && from[quantity] !== 'stated') return [];
    const off = Math.round((100 * (found - value)) / value);
    const apart = off === 0 ? 'the same' : `${Math.abs(off)} % ${off > 0 ? 'more' : 'less'}`;
    return [`${quantity} ${from[quantity]} ${volts(value)}, computed ${volts(found)}: ${apart}`];
  };
  return [...beside('rms', rms), ...beside('peak', peak)];
}

/** `computed 272 V between P switched and S return, high line` */
export function figureWords(
  { value, ends, variant, line }: ComputedFigure<number>,
  looks: readonly CircuitLook[],
): string {
  const [a, b] = ends.map((end) => endWords(end, looks));
  const which = variant === null ? '' : `, variant ${variant}`;
  return `computed ${volts(value)}, about 5 % either way, from ${a} to ${b}; ${line} line${which}`;
}

export function endWords({ circuit, winding, at, diode }: EndName, looks: readonly CircuitLook[]): string {
  const where = winding === null ? nameOf(circuit, looks) : `${nameOf(circuit, looks)} ${winding}`;
  const lead = diode === null ? '' : `, rectifier in the ${diode === 'plus-lead' ? 'plus' : 'return'} lead`;
  return `the ${ENDS[at]} of ${where}${lead}`;
}

const ENDS: Readonly<Record<EndName['at'], string>> = {
  'bulk-plus': 'bulk plus',
  'bulk-minus': 'bulk minus',
  switched: 'switched end',
  return: 'return',
  'output-plus': 'plus pole',
  tied: 'tied point',
};

export const stateWords = (state: SwitchingState): string => STATES[state];

const STATES: Readonly<Record<SwitchingState, string>> = {
  on: 'switch on',
  off: 'switch off',
  spike: 'spike at turning off',
  idle: 'idle',
};

export function noteWords(note: StressNote, looks: readonly CircuitLook[]): string {
  switch (note.kind) {
    case 'raised-to-mains':
      return `${note.quantity} ${volts(note.from)} lies under the rated mains and is raised to ${volts(note.to)}`;
    case 'peak-raised-to-rms':
      return `a peak of ${volts(note.from)} cannot lie under its rms; raised to ${volts(note.to)}`;
    case 'double-barrier': {
      const to = note.quantity === 'frequency' ? frequency(note.to) : volts(note.to);
      return `${note.quantity} taken from ${pairNames(note.as, looks)}, ${to}: half of a double barrier stands at the whole`;
    }
    case 'frequency-not-given':
      return `no frequency is given: shown at ${frequency(note.counted)}, judged up to the highest that the tables know`;
    case 'other-pole':
      return `with the plus pole of ${nameOf(note.circuit, looks)} tied to the mains instead of its return: ${volts(note.rms)} rms, ${volts(note.peak)} peak`;
    case 'stated-below-computed':
      return `${note.quantity} ${volts(note.given)} is stated, the converter gives ${volts(note.computed)}, which counts until it is measured`;
    case 'measured-unlike-computed':
      return `${note.quantity} ${volts(note.given)} was measured and counts; the converter gives ${volts(note.computed)}: one of the two is worth a second look`;
    case 'not-in-converter':
      return `the converter does not name ${nameOf(note.circuit, looks)}: tied in the worst way`;
    case 'primary-turns':
      return note.by === 'output'
        ? `${note.turns} turns counted as the primary's: the reading nearer to the output voltage`
        : `${note.turns} turns counted as the primary's: the fewest, which is the worse`;
    case 'turns-disagree':
      return `${nameOf(note.circuit, looks)} is ${volts(note.given)} in the file and ${volts(note.byTurns)} by turns and reflected voltage`;
    case 'bulk-valley':
      return `at ${volts(note.mains)} mains the bulk sinks to ${volts(note.bulk)} between two charges: the low line is taken there`;
    case 'bulk-empty':
      return `at ${volts(note.mains)} mains the bulk capacitor would be empty before its next charge: the low line is taken without ripple`;
    case 'no-primary':
      return 'no winding on the mains side is left to be the primary: nothing could be computed';
    default:
      return unreachable(note);
  }
}

export function neighbourLine({
  layers,
  windings,
  peak,
  rms,
  holds,
  plies: count,
  exceeds,
}: LocalStress): string {
  const [inner, outer] = layers.map((layer) => layer + 1);
  const names = windings[0] === windings[1] ? windings[0] : `${windings[0]} and ${windings[1]}`;
  const between = count === 0 ? 'nothing but enamel between' : `${plies(count)} of tape between`;
  const held =
    holds === null ? 'what its wire holds is not listed' : `enamel holds ${volts(holds)} rms when new`;
  const over = exceeds ? '; more than the enamel holds' : '';
  return `layers ${inner} and ${outer} (${names}): up to ${volts(peak)} peak, ${volts(rms)} rms, ${between}; ${held}${over}`;
}
