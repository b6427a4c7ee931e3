// The working voltage of every pair of circuits. Each figure by itself: measured or stated in the file, else computed
// from the converter, else the floor. Between mains and anything else nothing is taken below the floor.
//
// Steps: working-voltage {a, b, basis} over working-rms, working-peak, working-frequency {basis, value}; under these
// given-voltage {entry, basis, value}, voltage-floor, raised {from, to, to what}, or the steps of the converter.

import type { Circuit, Design } from '#model/design.ts';
import { because, type Because } from '#standards/because.ts';
import { voltsPeak, type Hertz, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

import { computedStress, runningConverter, type RunningConverter } from './computed-stress.ts';
import { converterNotes } from './converter-notes.ts';
import { givenVoltages, type Given } from './given-voltages.ts';
import type { Basis, ComputedStress, PairStressResult, StressNote } from './pair-stress.ts';
import { voltageFloor, type VoltageFloor } from './voltage-floor.ts';

interface Figure<Q> {
  readonly value: Q;
  readonly basis: Basis;
  readonly because: Because;
}

interface Pair {
  readonly a: Circuit;
  readonly b: Circuit;
  readonly rms: Figure<VoltsRms>;
  readonly peak: Figure<VoltsPeak>;
  readonly frequency: Figure<Hertz>;
  readonly computed: ComputedStress | null;
  readonly notes: readonly StressNote[];
}

/** Every two circuits once, in the order of the file. */
export function workingVoltages(design: Design): readonly PairStressResult[] {
  const floor = voltageFloor(design.supply);
  const running = runningConverter(design);
  const pairs = design.circuits.flatMap((a, i) =>
    design.circuits.slice(i + 1).map((b) => atLeastFloor(foundFor(design, running, floor, a, b), floor)),
  );
  return pairs.map((pair) => finished(pairs.reduce(asDoubleBarrier, pair)));
}

/** What the file, the converter or the floor gives, nothing raised yet. */
function foundFor(
  design: Design,
  running: RunningConverter | null,
  floor: VoltageFloor,
  a: Circuit,
  b: Circuit,
): Pair {
  const given = givenVoltages(design, a.id, b.id);
  const computed = running === null ? null : computedStress(running, a, b);
  const rms = figureOf(given.rms, computed?.rms, { ...floor, value: floor.rms });
  const peakFloor =
    rms.basis === 'floor' ? floor.peak : voltsPeak(Math.max(floor.peak, rms.value * Math.SQRT2));
  const peak = figureOf(given.peak, computed?.peak, { ...floor, value: peakFloor });
  const byRunning = computed && { value: computed.frequency, because: computed.rms.because };
  const frequency = figureOf(given.frequency, byRunning, { ...floor, value: floor.frequency });
  const notes = converterNotes(design, running, computed, a, b);
  const entry = given.rms?.entry ?? given.peak?.entry;
  const missing: readonly StressNote[] =
    frequency.basis === 'floor' && entry !== undefined
      ? [{ kind: 'frequency-not-given', entry, counted: frequency.value }]
      : [];
  return { a, b, rms, peak, frequency, computed, notes: [...notes, ...missing] };
}

function figureOf<Q extends number>(
  given: Given<Q> | null,
  computed: { readonly value: Q; readonly because: Because } | null | undefined,
  floor: { readonly value: Q; readonly because: Because },
): Figure<Q> {
  if (given !== null) {
    const { value, basis, entry } = given;
    return { value, basis, because: because('given-voltage', { entry, basis, value }) };
  }
  const { value, because: why } = computed ?? floor;
  return { value, basis: computed ? 'computed' : 'floor', because: why };
}

/** No stated figure is believed under the mains, and no peak under its own rms. */
function atLeastFloor(pair: Pair, floor: VoltageFloor): Pair {
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

const raised = <Q extends number>(figure: Figure<Q>, to: Q, by: Because): Figure<Q> => ({
  ...figure,
  value: to,
  because: because('raised', { from: figure.value, to }, [], [figure.because, by]),
});

/**
 * An isolated circuit between mains and touchable makes a double barrier: with its first half bridged, the second
 * stands at what lies between the mains and the touchable circuit.
 */
function asDoubleBarrier(pair: Pair, whole: Pair): Pair {
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
    if (its.value <= own.value) return own;
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

const STRENGTH: readonly Basis[] = ['floor', 'computed', 'stated', 'measured'];

function finished({ a, b, rms, peak, frequency, computed, notes }: Pair): PairStressResult {
  const basis = STRENGTH.find((one) => one === rms.basis || one === peak.basis) ?? 'floor';
  const why = because(
    'working-voltage',
    { a: a.id, b: b.id, basis },
    [],
    [
      because('working-rms', { basis: rms.basis, value: rms.value }, [], [rms.because]),
      because('working-peak', { basis: peak.basis, value: peak.value }, [], [peak.because]),
      because(
        'working-frequency',
        { basis: frequency.basis, value: frequency.value },
        [],
        [frequency.because],
      ),
    ],
  );
  return {
    between: [a.id, b.id],
    rms: rms.value,
    peak: peak.value,
    frequency: frequency.value,
    basis,
    from: { rms: rms.basis, peak: peak.basis, frequency: frequency.basis },
    estimate: rms.basis === 'computed' || peak.basis === 'computed',
    computed,
    because: why,
    notes,
  };
}
