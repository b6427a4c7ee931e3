// Voltages that are raised: to the floor below which none counts, and to that of the double barrier that a pair finishes.

import { type Because, because } from '#standards/because.ts';
import type { StressNote } from '#stress/pair/pair-stress.ts';
import { voltsPeak } from '#units/quantity.ts';
import type { Figure, Pair } from './pair-figures.ts';
import type { VoltageFloor } from './voltage-floor.ts';

/** No stated figure is believed under the mains, and no peak under its own rms. */
export function atLeastFloor(pair: Pair, floor: VoltageFloor): Pair {
  const notes = [...pair.notes];
  let { rms, peak } = pair;
  if ((pair.a.role === 'mains') !== (pair.b.role === 'mains')) {
    if (rms.value < floor.rms) {
      notes.push({ kind: 'raised-to-mains', quantity: 'rms', from: rms.value, to: floor.rms });
      rms = raised(rms, floor.rms, floor.because);
    }
    if (peak.value < floor.peak) {
      notes.push({ kind: 'raised-to-mains', quantity: 'peak', from: peak.value, to: floor.peak });
      peak = raised(peak, floor.peak, floor.because);
    }
  }
  if (peak.value < rms.value) {
    notes.push({ kind: 'peak-raised-to-rms', from: peak.value, to: rms.value });
    peak = raised(peak, voltsPeak(rms.value), rms.because);
  }
  return { ...pair, rms, peak, notes };
}

/** What an estimate may be above the floor remains. */
export const raised = <Q extends number>(figure: Figure<Q>, to: Q, by: Because): Figure<Q> => ({
  ...figure,
  value: to,
  within: to > 0 ? Math.max(0, (figure.value * (1 + figure.within)) / to - 1) : 0,
  because: because('raised', { from: figure.value, to }, [], [figure.because, by]),
});

/**
 * An isolated circuit between mains and touchable makes a double barrier: with its first half bridged, the second
 * stands at what lies between the mains and the touchable circuit.
 */
export function asDoubleBarrier(pair: Pair, whole: Pair): Pair {
  const touchable = [pair.a, pair.b].find(({ role }) => role === 'touchable');
  const isolated = [pair.a, pair.b].some(({ role }) => role === 'isolated');
  if (touchable === undefined || !isolated) return pair;
  const other = whole.a.id === touchable.id ? whole.b : whole.b.id === touchable.id ? whole.a : null;
  if (other?.role !== 'mains') return pair;
  const notes = [...pair.notes];
  const larger = <Q extends number>(
    quantity: 'rms' | 'peak' | 'frequency',
    own: Figure<Q>,
    its: Figure<Q>,
  ) => {
    if (its.value * (1 + its.within) <= own.value * (1 + own.within)) return own;
    notes.push({ kind: 'double-barrier', quantity, as: [whole.a.id, whole.b.id], to: its.value });
    return {
      ...its,
      because: because('double-barrier', { from: own.value, to: its.value }, [], [its.because]),
    };
  };
  const rms = larger('rms', pair.rms, whole.rms);
  const peak = larger('peak', pair.peak, whole.peak);
  const frequency = larger('frequency', pair.frequency, whole.frequency);
  const isOpen = (note: StressNote) => note.kind === 'frequency-not-given';
  if (!notes.some(isOpen)) notes.push(...whole.notes.filter(isOpen));
  return { ...pair, rms, peak, frequency, notes };
}
