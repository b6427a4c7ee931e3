// What the converter puts between two circuits: over every way in which it runs and every two ends, the highest true
// rms and, searched apart, the highest peak. An estimate: rectifier drops, ringing and the conduction of the mains
// bridge are left out.
//
// Steps: computed-rms, computed-peak {value, state, a, aAt, b, bAt}, each over converter-case {variant, line, bulk,
// reflected, overshoot, duty, frequency, primary, turns}.

import type { Circuit, Design } from '#model/design.ts';
import { because, type Because } from '#standards/because.ts';
import { hertz, voltsPeak, type Hertz, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

import { operatingCases, type OperatingCase } from './converter-cases.ts';
import { endsOf, type End } from './converter-ends.ts';
import { primaryOf, woundCircuits, type Primary } from './converter-turns.ts';
import type { ComputedFigure, ComputedStress, EndName, PairWaveform } from './pair-stress.ts';
import { peakOf, rmsOf } from './waveform.ts';

/** A converter ready to be asked: its primary and, for every way in which it runs, the ends of every circuit. */
export interface RunningConverter {
  readonly primary: Primary;
  readonly mainsFrequency: Hertz;
  readonly runs: readonly {
    readonly run: OperatingCase;
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
  const runs = operatingCases(converter, supply).map((run) => {
    const ends = circuits.map((circuit): [string, readonly End[]] => {
      const its = wound.get(circuit.id) ?? { windings: [], total: 0, largest: 0 };
      return [circuit.id, endsOf(circuit, its, primary, run)];
    });
    return { run, ends: new Map(ends) };
  });
  const mainsFrequency = supply.kind === 'dc' ? hertz(0) : supply.frequency.value;
  return { primary, mainsFrequency, runs };
}

/** `tied`: at which pole a circuit that is no mains is tied to the neutral. */
export function computedStress(
  { primary, mainsFrequency, runs }: RunningConverter,
  a: Circuit,
  b: Circuit,
  tied: 'return' | 'plus' = 'return',
): ComputedStress | null {
  let rms: Found<VoltsRms> | null = null;
  let peak: Found<VoltsPeak> | null = null;
  let frequency = 0;
  for (const { run, ends } of runs) {
    frequency = Math.max(frequency, run.frequency);
    const shift = tied === 'plus' ? poleOf(b, run) - poleOf(a, run) : 0;
    for (const from of ends.get(a.id) ?? []) {
      for (const to of ends.get(b.id) ?? []) {
        const waveform = between(from, to, shift, run, mainsFrequency);
        const found = { ends: [from.name, to.name] as const, run, waveform };
        const itsRms = rmsOf(waveform);
        const itsPeak = peakOf(waveform);
        if (rms === null || itsRms > rms.value) rms = { ...found, value: itsRms };
        if (peak === null || itsPeak > peak.value) peak = { ...found, value: itsPeak };
      }
    }
  }
  if (rms === null || peak === null) return null;
  return {
    rms: figureOf('computed-rms', rms, primary),
    peak: figureOf('computed-peak', peak, primary),
    frequency: hertz(frequency),
  };
}

interface Found<Q> {
  readonly value: Q;
  readonly ends: readonly [EndName, EndName];
  readonly run: OperatingCase;
  readonly waveform: PairWaveform;
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

function figureOf<Q extends number>(
  step: string,
  { value, ends, run, waveform }: Found<Q>,
  primary: Primary,
): ComputedFigure<Q> {
  const [a, b] = ends;
  const worst = waveform.states.reduce((one, other) =>
    Math.abs(other.level) > Math.abs(one.level) ? other : one,
  );
  const values = {
    value,
    a: a.circuit,
    aAt: a.at,
    aDiode: a.diode,
    b: b.circuit,
    bAt: b.at,
    bDiode: b.diode,
  };
  return {
    value,
    ends,
    variant: run.variant,
    line: run.line,
    waveform,
    because: because(step, { ...values, state: worst.state }, [], [caseOf(run, primary)]),
  };
}

function caseOf(run: OperatingCase, primary: Primary): Because {
  const { variant, line, bulk, reflected, overshoot, frequency, shares } = run;
  const duty = shares.find(({ state }) => state === 'on')?.share ?? 0;
  return because('converter-case', {
    variant,
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
