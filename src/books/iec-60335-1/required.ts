// What IEC 60335-1 asks between two circuits by its own clause 29: clearance by rated impulse voltage, reinforced by the
// next step of it, raised by what the working peak has above the rated one; creepage by ranges of working voltage, above
// 30 kHz by the parent's table too; test voltages by the rating, above 250 V by formula. Solids have rules up to 250 V.

import type { Answered, Question, Required } from '#books/questions/required.ts';
import { testOf } from '#books/shared/answered.ts';
import { bridgedGap } from '#books/shared/distances/bridged-gap.ts';
import { forBoth } from '#books/shared/distances/for-both.ts';
import { governingClearance, governingCreepage } from '#books/shared/distances/governing.ts';
import { mainsOf } from '#books/shared/mains.ts';
import { noSolidsAbove } from '#books/shared/no-solids-above.ts';
import { partFourCreepage } from '#books/shared/distances/part-four.ts';
import { because, judged, type Judged } from '#standards/because.ts';
import { byGrade } from '#standards/tables/factors.ts';
import type { Column, MaterialGroup } from '#units/terms.ts';
import { lookUp } from '#standards/tables/look-up.ts';
import { isOutOfRange, outOfRange } from '#standards/tables/out-of-range.ts';
import { roundingOf } from '#standards/tables/rounding.ts';
import { nm, peakOfSine, voltsPeak, voltsRms, type Nm, type VoltsPeak } from '#units/quantity.ts';
import type { Tables } from './tables.ts';

export function requiredOf(tables: Tables, asked: Question): Required {
  const { files, rules } = tables;
  const clearance = forBoth((column) => requiredClearance(tables, asked, column));
  return {
    clearance,
    creepage: (group) =>
      forBoth((column) => requiredCreepage(tables, asked, group, column, clearance[column])),
    test: {
      ...forBoth((column) => testLevel(tables, asked, column)),
      supplementary: testLevel(tables, asked, 'supplementary'),
    },
    noSolids: noSolidsAbove(
      rules('solid-thickness'),
      asked,
      (most) => `29.3 is written for working voltages up to ${most} V`,
    ),
    highFrequencyTest: () => ({ basic: null, reinforced: null }),
    x: bridgedGap(files.bridgingWidth, rules('bridging-third'), asked, clearance),
  };
}

function requiredClearance({ files, rules }: Tables, asked: Question, column: Column): Answered<Nm> {
  const { withstand } = asked.transients;
  if (isOutOfRange(withstand)) return withstand;
  const impulse = column === 'basic' ? withstand : nextStep({ files, rules }, withstand);
  if (isOutOfRange(impulse)) return impulse;
  const entry = withExcess({ files, rules }, impulse, asked);
  const found = lookUp(files.clearance, entry.value, 'basic', [asked.pollutionDegree]);
  if (found.kind === 'out-of-range') return found;
  const why = { ...found.because, from: [...found.because.from, entry.because] };
  const site = {
    altitudes: files.altitude,
    altitudeRule: rules('altitude'),
    rounding: roundingOf(files.clearance),
  };
  return governingClearance(site, asked, column, [judged(nm(found.value), why)]);
}

/** The next higher of the rated impulse voltages. */
function nextStep({ files, rules }: Tables, withstand: Judged<VoltsPeak>): Answered<VoltsPeak> {
  const rule = rules('reinforced-clearance').because();
  const step = files.clearance.steps.map(Number).find((each) => each > withstand.value);
  const values = { from: withstand.value, to: step ?? 0 };
  const why = because('impulse-step', values, [], [withstand.because, rule]);
  return step === undefined
    ? outOfRange(`there is no step above ${withstand.value} V`, why)
    : judged(voltsPeak(step), why);
}

/** A working peak above the rated one comes on top. */
function withExcess(
  { rules }: Tables,
  impulse: Judged<VoltsPeak>,
  { supply, peak }: Question,
): Judged<VoltsPeak> {
  const excess = peak - peakOfSine(mainsOf(supply).value);
  if (excess <= 0) return impulse;
  const value = voltsPeak(impulse.value + excess);
  const rule = rules('stepped-up').because();
  const values = { impulse: impulse.value, excess, value };
  return judged(value, because('impulse-raised', values, [], [impulse.because, rule]));
}

function requiredCreepage(
  { files, rules }: Tables,
  asked: Question,
  group: MaterialGroup,
  column: Column,
  clearance: Answered<Nm>,
): Answered<Nm> {
  const found = lookUp(files.creepage, asked.rms, group, [asked.pollutionDegree]);
  if (found.kind === 'out-of-range') return found;
  const byRms = byGrade(files.creepage, judged(nm(found.value), found.because), column);
  const high =
    asked.frequency > rules('high-frequency').figure('above')
      ? partFourCreepage(files.creepageHighFrequency, rules('high-frequency-creepage'), asked, column)
      : null;
  return governingCreepage(asked, column, group, byRms, high, clearance);
}

/** The formula holds as soon as the working voltage is above its limit, whatever the rating. */
function testLevel(
  { files, rules }: Tables,
  { rms, supply }: Question,
  column: Column | 'supplementary',
): Answered<VoltsPeak> {
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
  const rated = Math.min(mainsOf(supply).value, above.figure('above'));
  return testOf(lookUp(files.testVoltage, rated, column), column);
}
