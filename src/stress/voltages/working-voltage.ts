// The working voltage of every pair of circuits. Each figure by itself: measured or stated in the file, else computed
// from the converter, else the floor. A stated figure lower than the computed one is not believed until it is measured.
// Between mains and anything else nothing is taken below the floor.
//
// Steps: working-voltage {a, b, basis} over working-rms, working-peak, working-frequency {basis, value}; under these
// given-voltage {entry, basis, value}, voltage-floor, raised {from, to, to what}, or the steps of the converter.

import type { Circuit, Design } from '#model/design.ts';
import { type Because, because } from '#standards/because.ts';
import {
  type RunningConverter,
  computedStress,
  inMode,
  runningConverter,
} from '#stress/converter/computed-stress.ts';
import { modesOf } from '#stress/converter/converter-cases.ts';
import { converterNotes } from '#stress/converter/converter-notes.ts';
import { estimateWithin, openConverter } from '#stress/converter/estimate-width.ts';
import type {
  Basis,
  BestFields,
  ComputedStress,
  OpenVoltage,
  PairStressResult,
  StressNote,
} from '#stress/pair/pair-stress.ts';
import { voltsPeak } from '#units/quantity.ts';
import { type Given, givenVoltages } from './given-voltages.ts';
import type { Figure, Pair } from './pair-figures.ts';
import { asDoubleBarrier, atLeastFloor } from './raised-voltage.ts';
import { type VoltageFloor, voltageFloor } from './voltage-floor.ts';

/** A design with what its converter gives, and what is set at its best. */
interface Source {
  readonly design: Design;
  readonly floor: VoltageFloor;
  readonly running: RunningConverter | null;
  readonly isBest: BestFields;
  readonly open: readonly OpenVoltage[];
}

const NOTHING_BEST: BestFields = () => false;

/** Every two circuits once, in the order of the file. */
export function workingVoltages(
  design: Design,
  isBest: BestFields = NOTHING_BEST,
): readonly PairStressResult[] {
  const source: Source = {
    design,
    floor: voltageFloor(design.supply),
    running: runningConverter(design),
    isBest,
    open: openConverter(design, isBest),
  };
  const pairs = design.circuits.flatMap((a, i) =>
    design.circuits.slice(i + 1).map((b) => atLeastFloor(foundFor(source, a, b), source.floor)),
  );
  return pairs.map((pair) => finished(pairs.reduce(asDoubleBarrier, pair)));
}

/** What the file, the converter or the floor gives, nothing raised yet. */
function foundFor(source: Source, a: Circuit, b: Circuit): Pair {
  const { design, floor, running } = source;
  const given = givenVoltages(design, a.id, b.id);
  const computed = computedFor(source, a, b);
  const notes: StressNote[] = [...converterNotes(design, running, computed, a, b)];
  const rms = figureOf(source, 'rms', given.rms, computed?.rms, { ...floor, value: floor.rms }, notes);
  const peakFloor =
    rms.basis === 'floor' ? floor.peak : voltsPeak(Math.max(floor.peak, rms.value * Math.SQRT2));
  const peak = figureOf(source, 'peak', given.peak, computed?.peak, { ...floor, value: peakFloor }, notes);
  const byRunning = computed && { value: computed.frequency, because: computed.rms.because };
  const frequency = plainFigure(given.frequency, byRunning, { ...floor, value: floor.frequency });
  const entry = given.rms?.entry ?? given.peak?.entry;
  if (frequency.basis === 'floor' && entry !== undefined)
    notes.push({ kind: 'frequency-not-given', entry, counted: frequency.value });
  return { a, b, rms, peak, frequency, computed, notes };
}

/** In a mode that nobody knows the worse counts; set at its best the better, each figure by itself. */
function computedFor({ design, running, isBest }: Source, a: Circuit, b: Circuit): ComputedStress | null {
  if (running === null || design.converter === null) return null;
  const modes = modesOf(design.converter);
  if (modes.length === 1 || !isBest('converter.mode')) return computedStress(running, a, b);
  const each = modes.flatMap((mode) => computedStress(inMode(running, mode), a, b) ?? []);
  return each.reduce<ComputedStress | null>(
    (best, one) =>
      best === null
        ? one
        : {
            rms: one.rms.value < best.rms.value ? one.rms : best.rms,
            peak: one.peak.value < best.peak.value ? one.peak : best.peak,
            frequency: one.frequency < best.frequency ? one.frequency : best.frequency,
          },
    null,
  );
}

interface Found<Q> {
  readonly value: Q;
  readonly because: Because;
}

/** Further apart than this part of the measured figure a measurement is worth a second look. */
const UNLIKE = 0.1;

/** What is said of a figure that both the file and the converter give goes into `notes`. */
function figureOf<Q extends number>(
  source: Source,
  quantity: 'rms' | 'peak',
  given: Given<Q> | null,
  computed: Found<Q> | null | undefined,
  floor: Found<Q>,
  notes: StressNote[],
): Figure<Q> {
  const plain = plainFigure(given, computed, floor);
  if (plain.basis === 'computed') return { ...plain, within: estimateWithin(source.open), open: source.open };
  if (given === null || computed == null) return plain;
  const figures = { quantity, given: given.value, computed: computed.value };
  if (given.basis === 'measured') {
    if (Math.abs(computed.value - given.value) > UNLIKE * given.value)
      notes.push({ kind: 'measured-unlike-computed', ...figures });
    return plain;
  }
  if (given.value >= computed.value) return plain;
  notes.push({ kind: 'stated-below-computed', ...figures });
  const field = `workingVoltages[${given.entry}].${quantity}`;
  if (source.isBest(field)) return plain;
  const open: OpenVoltage = { field, counted: { as: 'computed', quantity, value: computed.value } };
  return {
    ...plainFigure(null, computed, floor),
    within: estimateWithin(source.open),
    open: [...source.open, open],
  };
}

function plainFigure<Q extends number>(
  given: Given<Q> | null,
  computed: Found<Q> | null | undefined,
  floor: Found<Q>,
): Figure<Q> {
  const exact = { within: 0, open: [] };
  if (given !== null) {
    const { value, basis, entry } = given;
    return { value, basis, because: because('given-voltage', { entry, basis, value }), ...exact };
  }
  const { value, because: why } = computed ?? floor;
  return { value, basis: computed ? 'computed' : 'floor', because: why, ...exact };
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
    within: { rms: rms.within, peak: peak.within },
    open: openOf([...rms.open, ...peak.open]),
    computed,
    because: why,
    notes,
  };
}

/** Each field once. */
const openOf = (all: readonly OpenVoltage[]): readonly OpenVoltage[] => [
  ...new Map(all.map((one) => [one.field, one])).values(),
];
