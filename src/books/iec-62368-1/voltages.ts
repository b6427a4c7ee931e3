// Voltages that a rule book lays down: what the mains brings, and the levels of the electric strength test.
// All levels are peaks; a sine at mains frequency has them over the square root of two, dc has them as they are.

import {
  seconds,
  voltsPeak,
  type Hertz,
  type Seconds,
  type VoltsPeak,
  type VoltsRms,
} from '#units/quantity.ts';

import { peakOf } from '#books/shared/answered.ts';
import { because, judged, type Because, type Judged } from '#standards/because.ts';
import type { Column, OvervoltageCategory } from '#units/terms.ts';
import { lookUp } from '#standards/tables/look-up.ts';
import type { OutOfRange } from '#standards/tables/out-of-range.ts';
import { reductionFactor } from './reduction-factor.ts';
import type { Rules } from '#standards/tables/rules-in-words.ts';
import type { Table } from '#standards/tables/table.ts';

export interface VoltageTables {
  readonly mainsTransient: Table;
  readonly temporaryOvervoltage: Table;
  readonly testByTransient: Table;
  readonly testByPeak: Table;
  readonly testByTemporaryOvervoltage: Table;
  readonly fieldReduction: Table;
}

export interface Voltages {
  /** `mains` is line to neutral. No interpolation: the next row up. */
  readonly mainsTransient: (mains: VoltsRms, category: OvervoltageCategory) => Judged<VoltsPeak> | OutOfRange;
  readonly temporaryOvervoltage: (mains: VoltsRms) => Judged<VoltsPeak> | OutOfRange;
  readonly testByTransient: (withstand: VoltsPeak, column: Column) => Judged<VoltsPeak> | OutOfRange;
  readonly testByWorkingPeak: (peak: VoltsPeak, column: Column) => Judged<VoltsPeak> | OutOfRange;
  /** Entered with the mains voltage that the temporary overvoltage belongs to. */
  readonly testByTemporaryOvervoltage: (mains: VoltsRms, column: Column) => Judged<VoltsPeak> | OutOfRange;
  readonly testSeconds: Judged<Seconds>;
  readonly routineTest: Judged<{
    readonly secondsLeast: Seconds;
    readonly secondsMost: Seconds;
    /** Part of the type-test level. */
    readonly levelShare: number;
  }>;
  /**
   * Level for solid insulation that also sees this peak above 30 kHz; null at and under 30 kHz. `material` is an id of
   * ours, null where none is named; one without a row of the reduction table takes the mean of the rows named for it.
   */
  readonly highFrequencyTest: (
    peak: VoltsPeak,
    frequency: Hertz,
    column: Column,
    material: string | null,
  ) => Judged<VoltsPeak> | null;
}

export function voltagesOf(tables: VoltageTables, rules: Rules): Voltages {
  const test = rules('electric-strength-test');
  const routine = rules('routine-test');
  const standIn = rules('reduction-unlisted');
  return {
    mainsTransient: (mains, category) => peakOf(lookUp(tables.mainsTransient, mains, `category ${category}`)),
    temporaryOvervoltage: (mains) => peakOf(lookUp(tables.temporaryOvervoltage, mains, 'peak')),
    testByTransient: (withstand, column) => peakOf(lookUp(tables.testByTransient, withstand, column)),
    testByWorkingPeak: (working, column) => peakOf(lookUp(tables.testByPeak, working, column)),
    testByTemporaryOvervoltage: (mains, column) =>
      peakOf(lookUp(tables.testByTemporaryOvervoltage, mains, column)),
    testSeconds: judged(seconds(test.figure('seconds')), test.because()),
    routineTest: judged(
      {
        secondsLeast: seconds(routine.figure('secondsLeast')),
        secondsMost: seconds(routine.figure('secondsMost')),
        levelShare: routine.figure('levelShare'),
      },
      routine.because(),
    ),
    highFrequencyTest: (working, frequency, column, material) => {
      if (frequency <= rules('high-frequency').figure('above')) return null;
      const reduction = reductionFactor(tables.fieldReduction, frequency, material, {
        first: standIn.word('first'),
        last: standIn.word('last'),
      });
      const unlisted = reduction.because.step === 'field-reduction' ? [] : [standIn.because()];
      return highFrequencyLevel(working, column, reduction, rules, unlisted);
    },
  };
}

/** The rule is in rms of a sine of the working peak; as a peak the square roots cancel. */
function highFrequencyLevel(
  working: VoltsPeak,
  column: Column,
  reduction: Judged<number>,
  rules: Rules,
  unlisted: readonly Because[],
): Judged<VoltsPeak> {
  const rule = rules('high-frequency-test');
  const factor = rule.figure(column);
  const value = voltsPeak((factor * working) / reduction.value);
  const from: readonly Because[] = [reduction.because, ...unlisted, rule.because([column])];
  const values = { peak: working, factor, reduction: reduction.value, value };
  return judged(value, because('high-frequency-test', values, [], from));
}
