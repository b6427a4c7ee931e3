// What IEC 60950-1 asks between two circuits: clearance by the row of the mains peak in table 2K and, for a working peak
// above it, table 2L by steps on top (never a row of 2K above the mains peak while the mains is the source); creepage of
// table 2N; tests of table 5B. Basic insulation above 420 V peak has a level in a part of 5B that nobody here has seen.

import type { Answered, Question, Required } from '#books/questions/required.ts';
import { testOf } from '#books/shared/answered.ts';
import { bridgedGap } from '#books/shared/distances/bridged-gap.ts';
import { forBoth } from '#books/shared/distances/for-both.ts';
import { governingClearance, governingCreepage } from '#books/shared/distances/governing.ts';
import { mainsOf } from '#books/shared/mains.ts';
import { timesRule } from '#books/shared/distances/times-rule.ts';
import { because, judged } from '#standards/because.ts';
import type { Column, MaterialGroup } from '#units/terms.ts';
import { lookUp } from '#standards/tables/look-up.ts';
import { isOutOfRange, outOfRange } from '#standards/tables/out-of-range.ts';
import { roundingOf } from '#standards/tables/rounding.ts';
import { inMm, nm, peakOfSine, voltsPeak, type Nm, type VoltsPeak } from '#units/quantity.ts';
import type { Tables } from './tables.ts';

export function requiredOf(tables: Tables, asked: Question): Required {
  const { files, rules } = tables;
  const clearance = forBoth((column) => requiredClearance(tables, asked, column));
  return {
    clearance,
    creepage: (group) =>
      forBoth((column) => requiredCreepage(tables, asked, group, column, clearance[column])),
    test: forBoth((column) => testLevel(tables, asked, column)),
    noSolids: null,
    highFrequencyTest: () => ({ basic: null, reinforced: null }),
    x: bridgedGap(files.bridgingWidth, rules('bridging-third'), asked, clearance),
  };
}

function requiredClearance(tables: Tables, asked: Question, column: Column): Answered<Nm> {
  const { files, rules } = tables;
  const { withstand } = asked.transients;
  if (isOutOfRange(withstand)) return withstand;
  const mainsPeak = peakOfRow(tables, asked);
  if (isOutOfRange(mainsPeak)) return mainsPeak;
  const entry = voltsPeak(Math.min(asked.peak, mainsPeak.value));
  // the steps of the transient are met from below: a mains without one reads the lowest column
  const transient = files.clearance.file.axes[1]?.at.map(Number).find((step) => step >= withstand.value);
  if (transient === undefined) {
    const place = `a transient of ${withstand.value} V`;
    return outOfRange(
      `${files.clearance.file.id} has no column for ${place}`,
      because('out-of-range', { quantity: 'clearance', place }, [], [withstand.because]),
    );
  }
  const found = lookUp(files.clearance, entry, column, [transient, asked.pollutionDegree]);
  if (found.kind === 'out-of-range') return found;
  const row = judged(nm(found.value), found.because);
  const whole = asked.peak > mainsPeak.value ? withAdditional(tables, asked, column, row) : row;
  const site = {
    altitudes: files.altitude,
    altitudeRule: rules('altitude'),
    rounding: roundingOf(files.clearance),
  };
  return governingClearance(site, asked, column, [whole]);
}

/** The row that the peak of the mains belongs to: of mains up to 150 V no more than 210, up to 300 V 420 V peak. */
function peakOfRow({ files, rules }: Tables, { supply }: Question): Answered<VoltsPeak> {
  const mains = mainsOf(supply);
  const peak = peakOfSine(mains.value);
  const rule = rules('clearance-method');
  const [highest, mainsMost] = [rule.figure('mainsPeak'), rule.figure('mainsMost')];
  if (mains.value <= rules('additional-above-150').figure('mainsMost')) {
    const low = files.clearance.steps.map(Number).filter((step) => step < highest);
    const row = low.find((step) => step >= peak) ?? Math.max(...low);
    return judged(voltsPeak(row), rule.because());
  }
  if (mains.value <= mainsMost) return judged(voltsPeak(highest), rule.because());
  const place = `a mains of ${Math.round(mains.value)} V`;
  return outOfRange(
    `table 2L has no series for ${place}`,
    because('out-of-range', { quantity: 'clearance', place }, rule.because().cites),
  );
}

/** Table 2L by its steps, as two reports use it. */
function withAdditional(
  { files, rules }: Tables,
  { supply, peak, pollutionDegree }: Question,
  column: Column,
  row: { readonly value: Nm; readonly because: Parameters<typeof judged>[1] },
): Answered<Nm> {
  const low = rules('additional-above-150');
  const isLow = mainsOf(supply).value <= low.figure('mainsMost');
  if (isLow && pollutionDegree === 3) {
    const place = 'a low mains in pollution degree 3';
    const why = because('out-of-range', { quantity: 'additional clearance', place }, low.because().cites);
    return outOfRange(`table 2L has no series for ${place}`, why);
  }
  const found = lookUp(isLow ? files.additional150 : files.additional, peak, column);
  if (found.kind === 'out-of-range') return found;
  const value = nm(row.value + found.value);
  const values = { before: inMm(row.value), more: inMm(nm(found.value)), value: inMm(value) };
  return judged(value, because('additional-clearance', values, [], [row.because, found.because]));
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
  const basic = judged(nm(found.value), found.because);
  const byRms = column === 'basic' ? basic : timesRule(rules('reinforced-creepage'), 'factor', basic);
  return governingCreepage(asked, column, group, byRms, null, clearance);
}

const testLevel = ({ files }: Tables, { peak }: Question, column: Column): Answered<VoltsPeak> =>
  testOf(lookUp(files.testVoltage, peak, column), column);
