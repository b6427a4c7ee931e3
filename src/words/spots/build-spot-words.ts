// The sentences of weak spots of the whole build: too hot, too much current for a person, not fitting its window.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { SpotCause, WeakSpot } from '#judge/verdict/spot.ts';
import { lengthNear, lengthTaken } from '#words/text/number-words.ts';

type BuildCause = Exclude<SpotCause, { of: 'path' | 'bridge' }>;
type Heat = Extract<BuildCause, { of: 'heat' }>;
type Touch = Extract<BuildCause, { of: 'touch-current' }>;

export function buildSays({ verdict, length, required }: WeakSpot, cause: BuildCause): string {
  const isShort = verdict === 'falls-short';
  switch (cause.of) {
    case 'heat':
      return heatSays(cause, isShort);
    case 'touch-current':
      return touchSays(cause, isShort);
    case 'stack':
      return `The layers are ${lengthTaken(length ?? 0)} ${lengthUnit()} high, the former ${lengthNear(required ?? 0)} ${lengthUnit()}: they do not fit the window.`;
    case 'turn':
      return `One turn of layer ${cause.layer + 1} is wider than the place it has beside its margins: it does not fit the window.`;
  }
}

export function buildMend({ verdict }: WeakSpot, cause: BuildCause): string {
  const isShort = verdict === 'falls-short';
  switch (cause.of) {
    case 'heat':
      return isShort ? 'Take material of a higher class, or keep it cooler.' : openMend(cause.open);
    case 'touch-current':
      return isShort ? 'Take less capacitance across the barrier.' : '';
    case 'stack':
      return 'Take a higher former or fewer layers.';
    case 'turn':
      return 'Take thinner wire, fewer wires side by side, or narrower margins.';
  }
}

function heatSays({ hottest, plusMinus, limit, made, open }: Heat, isShort: boolean): string {
  const give = plusMinus > 0 ? ` give or take ${plusMinus} K` : '';
  // what has no class sets the limit then, and not the lowest class that is known
  const isOfKnown = made !== null && (isShort || !open.thermalClass);
  const of = !isOfKnown ? '' : ` for class ${made.thermalClass} (${made.of.join(', ')})`;
  return `The hottest insulation is at ${hottest} degC${give}; the rule book allows ${limit} degC${of}${isShort ? '' : openSays(open)}.`;
}

const openSays = ({ method, thermalClass }: Heat['open']): string =>
  `${method ? ', if it was read by thermocouple' : ''}${thermalClass ? ', if what has no class is of the lowest' : ''}`;

function openMend({ method, thermalClass }: Heat['open']): string {
  if (method) return 'Say how it was measured.';
  return thermalClass ? 'Name what the tapes and the former are made of.' : 'Measure it more closely.';
}

function touchSays({ mains, rms, limit, windings, missing }: Touch, isShort: boolean): string {
  const what = isShort
    ? windings === 'field'
      ? 'with the capacitance of the windings by the field, as far as it is sure'
      : 'through the parts across the barrier alone'
    : missing.length > 0
      ? `at the least: of ${missing.join(', ')} no value is given`
      : windings === 'field'
        ? 'with the capacitance of the windings by the field, raised by what it may be off'
        : 'with the estimated capacitance of the windings';
  return `At ${Math.round(mains)} V a person who touches the output takes ${rms.toFixed(2)} mA ${what}; the limit is ${limit} mA.`;
}
