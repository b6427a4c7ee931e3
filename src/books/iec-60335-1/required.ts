// What IEC 60335-1 asks between two circuits by its own clause 29: clearance by rated impulse voltage, reinforced by the
// next step of it, raised by what the working peak has above the rated one; creepage by ranges of working voltage; test
// voltages by the rating, above 250 V by formula.

import type { Answered, Both, Question, Required } from '#books/required.ts';
import { bridgedGap } from '#books/shared/bridged-gap.ts';
import { mainsOf } from '#books/shared/mains.ts';
import { because, judged, type Judged } from '#standards/because.ts';
import { byGrade } from '#standards/factors.ts';
import type { Column, MaterialGroup } from '#standards/grade.ts';
import { lookUp } from '#standards/look-up.ts';
import { nextRowOf } from '#standards/next-row.ts';
import { isOutOfRange, outOfRange } from '#standards/out-of-range.ts';
import { roundUp, roundingOf } from '#standards/rounding.ts';
import {
  inMm,
  metres,
  nm,
  peakOfSine,
  voltsPeak,
  voltsRms,
  type Nm,
  type VoltsPeak,
} from '#units/quantity.ts';
import { rules, tables } from './tables.ts';

export function requiredOf(asked: Question): Required {
  const both = <T>(make: (column: Column) => T): Both<T> => ({
    basic: make('basic'),
    reinforced: make('reinforced'),
  });
  const clearance = both((column) => requiredClearance(asked, column));
  const none: Both<null> = { basic: null, reinforced: null };
  return {
    clearance,
    creepage: (group) => both((column) => requiredCreepage(asked, group, column, clearance[column])),
    test: both((column) => testLevel(asked, column)),
    highFrequencyTest: () => none,
    x: bridgedGap(tables.bridgingWidth, rules('bridging-third'), asked, clearance),
  };
}

function requiredClearance(asked: Question, column: Column): Answered<Nm> {
  const { pollutionDegree, altitude, peak, transients } = asked;
  const { withstand } = transients;
  if (isOutOfRange(withstand)) return withstand;
  const impulse = column === 'basic' ? withstand : nextStep(withstand);
  if (isOutOfRange(impulse)) return impulse;
  const entry = withExcess(impulse, asked);
  const found = lookUp(tables.clearance, entry.value, 'basic', [pollutionDegree]);
  if (found.kind === 'out-of-range') return found;
  // the parent's factor begins at the height up to which the tables hold
  const at = lookUp(tables.altitude, Math.max(metres(2000), altitude), 'factor');
  if (at.kind === 'out-of-range') return at;
  const raised = roundUp(nm(Math.round(found.value * at.value)), roundingOf(tables.clearance));
  const value = at.value > 1 ? raised : nm(found.value);
  const values = {
    column,
    value: inMm(value),
    largest: inMm(nm(found.value)),
    factor: at.value,
    altitude,
    lasting: peak,
    withstand: withstand.value,
    nextRow: nextRowOf(found.because),
  };
  const from = [found.because, entry.because, at.because];
  return judged(value, because('required-clearance', values, [], from));
}

/** The next higher of the rated impulse voltages. */
function nextStep(withstand: Judged<VoltsPeak>): Answered<VoltsPeak> {
  const rule = rules('reinforced-clearance').because();
  const step = tables.clearance.steps.map(Number).find((each) => each > withstand.value);
  const values = { from: withstand.value, to: step ?? 0 };
  const why = because('impulse-step', values, [], [withstand.because, rule]);
  return step === undefined
    ? outOfRange(`there is no step above ${withstand.value} V`, why)
    : judged(voltsPeak(step), why);
}

/** A working peak above the rated one comes on top. */
function withExcess(impulse: Judged<VoltsPeak>, { supply, peak }: Question): Judged<VoltsPeak> {
  const excess = peak - peakOfSine(mainsOf(supply).value);
  if (excess <= 0) return impulse;
  const value = voltsPeak(impulse.value + excess);
  const rule = rules('stepped-up').because();
  const values = { impulse: impulse.value, excess, value };
  return judged(value, because('impulse-raised', values, [], [impulse.because, rule]));
}

function requiredCreepage(
  { rms, pollutionDegree }: Question,
  group: MaterialGroup,
  column: Column,
  clearance: Answered<Nm>,
): Answered<Nm> {
  if (isOutOfRange(clearance)) return clearance;
  const found = lookUp(tables.creepage, rms, group, [pollutionDegree]);
  if (found.kind === 'out-of-range') return found;
  const byRms = byGrade(tables.creepage, judged(nm(found.value), found.because), column);
  const governs = byRms.value >= clearance.value ? 'rms' : 'clearance';
  const value = nm(Math.max(byRms.value, clearance.value));
  const values = { column, group, pollutionDegree, value: inMm(value), governs, nextRow: null } as const;
  const from = governs === 'rms' ? [byRms.because] : [byRms.because, clearance.because];
  return judged(value, because('required-creepage', values, [], from));
}

/** The formula holds as soon as the working voltage is above its limit, whatever the rating. */
function testLevel({ rms, supply }: Question, column: Column): Answered<VoltsPeak> {
  const above = rules('test-above-250');
  if (rms > above.figure('above')) {
    const [factor, term] = [above.figure(`${column}Factor`), above.figure(`${column}Term`)];
    const value = peakOfSine(voltsRms(factor * rms + term));
    const values = { factor, rms, term, value };
    return judged(
      value,
      because('test-formula', values, [], [above.because([`${column}Factor`, `${column}Term`])]),
    );
  }
  const found = lookUp(tables.testVoltage, Math.min(mainsOf(supply).value, above.figure('above')), column);
  if (found.kind === 'out-of-range') return found;
  const value = peakOfSine(voltsRms(found.value));
  return judged(value, because('test-level', { column, value }, [], [found.because]));
}
