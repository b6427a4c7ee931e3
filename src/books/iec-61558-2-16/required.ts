// What IEC 61558-2-16 asks between two circuits: clearance, creepage and test by the working voltage, in the one row set
// that anyone here recalls (pollution degree 2, group IIIa, as for category III); above 30 kHz the parent's part 4 as well.

import type { Answered, Question, Required } from '#books/questions/required.ts';
import { lengthOf, testOf } from '#books/shared/answered.ts';
import { bridgedGap } from '#books/shared/distances/bridged-gap.ts';
import { forBoth } from '#books/shared/distances/for-both.ts';
import { governingClearance, governingCreepage } from '#books/shared/distances/governing.ts';
import { noSolidsAbove } from '#books/shared/no-solids-above.ts';
import { partFourClearance, partFourCreepage } from '#books/shared/distances/part-four.ts';
import { because } from '#standards/because.ts';
import type { Column, MaterialGroup } from '#units/terms.ts';
import { lookUp } from '#standards/tables/look-up.ts';
import { outOfRange } from '#standards/tables/out-of-range.ts';
import { roundingOf } from '#standards/tables/rounding.ts';
import type { Nm, VoltsPeak } from '#units/quantity.ts';
import type { Tables } from './tables.ts';

export function requiredOf(tables: Tables, asked: Question): Required {
  const { files, rules } = tables;
  const clearance = forBoth((column) => requiredClearance(tables, asked, column));
  return {
    clearance,
    creepage: (group) =>
      forBoth((column) => requiredCreepage(tables, asked, group, column, clearance[column])),
    test: forBoth((column) => testLevel(tables, asked, column)),
    noSolids: noSolidsAbove(
      rules('solid-thickness'),
      asked,
      (most) => `no thickness is recalled above ${most} V`,
    ),
    highFrequencyTest: () => ({ basic: null, reinforced: null }),
    x: bridgedGap(files.bridgingWidth, rules('bridging-third'), asked, clearance),
  };
}

/** A row of table 13; of another pollution degree there is none. */
function distanceAt(
  { files, rules }: Tables,
  which: 'clearance' | 'creepage',
  { rms, pollutionDegree }: Question,
  column: Column,
): Answered<Nm> {
  const rule = rules('pollution-degree');
  if (pollutionDegree !== rule.figure('degree')) {
    const place = `pollution degree ${pollutionDegree}`;
    const says = `there are no rows of ${which} for ${place}`;
    return outOfRange(says, because('out-of-range', { quantity: which, place }, rule.because().cites));
  }
  return lengthOf(lookUp(files[which], rms, column));
}

const isHigh = ({ rules }: Tables, { frequency }: Question): boolean =>
  frequency > rules('high-frequency').figure('above');

function requiredClearance(tables: Tables, asked: Question, column: Column): Answered<Nm> {
  const { files, rules } = tables;
  const site = {
    altitudes: files.altitude,
    altitudeRule: rules('altitude'),
    rounding: roundingOf(files.clearance),
  };
  return governingClearance(site, asked, column, [
    distanceAt(tables, 'clearance', asked, column),
    isHigh(tables, asked)
      ? partFourClearance(files.clearanceHighFrequency, rules('high-frequency-clearance'), asked.peak, column)
      : null,
  ]);
}

function requiredCreepage(
  tables: Tables,
  asked: Question,
  group: MaterialGroup,
  column: Column,
  clearance: Answered<Nm>,
): Answered<Nm> {
  const { files, rules } = tables;
  const high = isHigh(tables, asked)
    ? partFourCreepage(files.creepageHighFrequency, rules('high-frequency-creepage'), asked, column)
    : null;
  const byRms = distanceAt(tables, 'creepage', asked, column);
  return governingCreepage(asked, column, group, byRms, high, clearance);
}

const testLevel = ({ files }: Tables, { rms }: Question, column: Column): Answered<VoltsPeak> =>
  testOf(lookUp(files.testVoltage, rms, column), column);
