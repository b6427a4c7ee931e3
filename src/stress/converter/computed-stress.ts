// What the converter puts between two circuits: over every way in which it runs and every two ends, the highest true
// rms and, searched apart, the highest peak. An estimate: rectifier drops, ringing and the conduction of the mains
// bridge are left out.
//
// Steps: computed-rms, computed-peak {value, state, a, aAt, b, bAt}, each over converter-case {variant, line, bulk,
// reflected, overshoot, duty, frequency, primary, turns}.

import type { Circuit, Design } from '#model/design.ts';
import type { ConverterMode, ConverterVariant } from '#model/design/voltages.ts';
import { because, type Because } from '#standards/because.ts';
import { hertz, voltsPeak, type Hertz } from '#units/quantity.ts';

import { operatingCases, type OperatingCase } from './converter-cases.ts';
import { endsOf, type End } from './converter-ends.ts';
import { primaryOf, reflectedByTurns, woundCircuits, type Primary } from './converter-turns.ts';
import type { ComputedFigure, ComputedStress, PairWaveform } from '#stress/pair/pair-stress.ts';
import { peakOf, rmsOf } from '#stress/pair/waveform.ts';

/** A converter ready to be asked: its primary and, for every way in which it runs, the ends of every circuit. */
export interface RunningConverter {
  readonly primary: Primary;
  readonly mainsFrequency: Hertz;
  readonly runs: readonly {
    readonly run: OperatingCase;
    /** Of this run, which may have turns of its own. */
    readonly primary: Primary;
    readonly ends: ReadonlyMap<string, readonly End[]>;
  }[];
}

/** Null without a converter, or where no winding is left to be its primary. */
export function runningConverter(design: Design): RunningConverter | null {
  const { converter, supply, circuits } = design;
  if (converter === null) return null;
  const wound = woundCircuits(design);
  const primary = primaryOf(design, converter, wound);
  if (primary === null) return null;
  const byTurns = (variant: ConverterVariant) => reflectedByTurns(design, converter, variant);
  const runs = operatingCases(converter, supply, byTurns).map((run) => {
    const own = Object.keys(run.turns).length > 0 ? woundCircuits(design, run.turns) : wound;
    const itsPrimary = own === wound ? primary : (primaryOf(design, converter, own) ?? primary);
    const ends = circuits.map((circuit): [string, readonly End[]] => {
      const its = own.get(circuit.id) ?? { windings: [], total: 0, largest: 0 };
      return [circuit.id, endsOf(circuit, its, itsPrimary, run)];
    });
    return { run, primary: itsPrimary, ends: new Map(ends) };
  });
  const mainsFrequency = supply.kind === 'dc' ? hertz(0) : supply.frequency.value;
  return { primary, mainsFrequency, runs };
}

/** The same running in one mode only. */
export const inMode = (running: RunningConverter, mode: ConverterMode): RunningConverter => ({
  ...running,
  runs: running.runs.filter(({ run }) => run.mode === mode),
});

/** `tied`: at which pole a circuit that is no mains is tied to the neutral. */
export function computedStress(
  { mainsFrequency, runs }: RunningConverter,
  a: Circuit,
  b: Circuit,
  tied: 'return' | 'plus' = 'return',
): ComputedStress | null {
  let rms: Found | null = null;
  let peak: Found | null = null;
  let frequency = 0;
  for (const { run, primary, ends } of runs) {
    frequency = Math.max(frequency, run.frequency);
    const shift = tied === 'plus' ? poleOf(b, run) - poleOf(a, run) : 0;
    for (const from of ends.get(a.id) ?? []) {
      for (const to of ends.get(b.id) ?? []) {
        const figures = figuresBetween(from, to, shift, run);
        const isRms = rms === null || figures.square > rms.square;
        const isPeak = peak === null || figures.peak > peak.peak;
        if (!isRms && !isPeak) continue;
        const found = { ...figures, from, to, shift, run, primary };
        if (isRms) rms = found;
        if (isPeak) peak = found;
      }
    }
  }
  if (rms === null || peak === null) return null;
  const figureOf = foundFigure(mainsFrequency);
  return {
    rms: figureOf('computed-rms', rms, rmsOf),
    peak: figureOf('computed-peak', peak, peakOf),
    frequency: hertz(frequency),
  };
}

interface Found {
  readonly square: number;
  readonly peak: number;
  readonly from: End;
  readonly to: End;
  readonly shift: number;
  readonly run: OperatingCase;
  readonly primary: Primary;
}

/** What `rmsOf` and `peakOf` find of the waveform between two ends, without making it: asked of every two ends. */
function figuresBetween(
  from: End,
  to: End,
  shift: number,
  { shares }: OperatingCase,
): { readonly square: number; readonly peak: number } {
  const swing = from.swing - to.swing;
  let square = (swing * swing) / 2;
  let peak = 0;
  for (const { state, share } of shares) {
    const level = from.levels[state] - to.levels[state] + shift;
    square += share * level * level;
    peak = Math.max(peak, Math.abs(level));
  }
  return { square, peak: peak + Math.abs(swing) };
}

/** How much lower a circuit lies when its plus pole is tied instead of its return. */
const poleOf = ({ id, role }: Circuit, { outputs }: OperatingCase): number =>
  role === 'mains' ? 0 : (outputs.get(id) ?? 0);

/** Voltage of `from` over `to`. */
export function between(
  from: End,
  to: End,
  shift: number,
  run: OperatingCase,
  mainsFrequency: Hertz,
): PairWaveform {
  return {
    swing: voltsPeak(from.swing - to.swing),
    mainsFrequency,
    switchingFrequency: hertz(run.frequency),
    states: run.shares.map(({ state, share }) => ({
      state,
      share,
      level: voltsPeak(from.levels[state] - to.levels[state] + shift),
    })),
  };
}

const foundFigure =
  (mainsFrequency: Hertz) =>
  <Q extends number>(
    step: 'computed-rms' | 'computed-peak',
    { from, to, shift, run, primary }: Found,
    read: (waveform: PairWaveform) => Q,
  ): ComputedFigure<Q> => {
    const waveform = between(from, to, shift, run, mainsFrequency);
    const value = read(waveform);
    const [a, b] = [from.name, to.name];
    const worst = waveform.states.reduce((one, other) =>
      Math.abs(other.level) > Math.abs(one.level) ? other : one,
    );
    const values = { a: a.circuit, aAt: a.at, aDiode: a.diode, b: b.circuit, bAt: b.at, bDiode: b.diode };
    return {
      value,
      rms: rmsOf(waveform),
      peak: peakOf(waveform),
      ends: [a, b],
      variant: run.variant,
      line: run.line,
      mode: run.mode,
      waveform,
      because: because(step, { value, ...values, state: worst.state }, [], [caseOf(run, primary)]),
    };
  };

function caseOf(run: OperatingCase, primary: Primary): Because {
  const { variant, mode, line, bulk, reflected, overshoot, frequency, shares } = run;
  const duty = shares.find(({ state }) => state === 'on')?.share ?? 0;
  return because('converter-case', {
    variant,
    mode,
    line,
    bulk,
    reflected,
    overshoot,
    duty,
    frequency,
    primary: primary.windings.join(', '),
    turns: primary.turns,
  });
}
