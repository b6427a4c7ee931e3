// What IEC 60664-1 asks between two circuits, with its part 4 above 30 kHz: clearance by the impulse and by the peaks that
// last, the largest; creepage by rms, reinforced twice; solids are held to the temporary overvoltage and to the impulse.

import type { Answered, Question, Required } from '#books/questions/required.ts';
import { lengthOf } from '#books/shared/answered.ts';
import { bridgedGap } from '#books/shared/distances/bridged-gap.ts';
import { forBoth } from '#books/shared/distances/for-both.ts';
import { governingClearance, governingCreepage } from '#books/shared/distances/governing.ts';
import { partFourClearance, partFourCreepage } from '#books/shared/distances/part-four.ts';
import { timesRule } from '#books/shared/distances/times-rule.ts';
import { because, judged, type Judged } from '#standards/because.ts';
import type { Column, MaterialGroup } from '#units/terms.ts';
import { lookUp, type Found } from '#standards/tables/look-up.ts';
import { isOutOfRange, type OutOfRange } from '#standards/tables/out-of-range.ts';
import { roundingOf } from '#standards/tables/rounding.ts';
import { nm, voltsPeak, type Nm, type VoltsPeak } from '#units/quantity.ts';
import { reinforcedImpulse, timesPeak } from './overvoltages.ts';
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

const isHigh = ({ rules }: Tables, { frequency }: Question): boolean =>
  frequency > rules('high-frequency').figure('above');

function requiredClearance(tables: Tables, asked: Question, column: Column): Answered<Nm> {
  const { files, rules } = tables;
  const { pollutionDegree, peak, transients } = asked;
  const { withstand, temporaryOvervoltage: overvoltage } = transients;
  if (isOutOfRange(withstand)) return withstand;
  if (isOutOfRange(overvoltage)) return overvoltage;
  const rule = rules('reinforced-clearance');
  const raise = (one: Judged<VoltsPeak>): Judged<VoltsPeak> =>
    column === 'basic'
      ? one
      : timesPeak(rule.figure('factor'), one.value, [one.because], rule.because(['factor']).cites);
  const entering: Judged<VoltsPeak> =
    overvoltage.value > peak ? overvoltage : judged(peak, overvoltage.because);
  const lasting = raise(entering);
  const impulse =
    column === 'basic' || withstand.value === 0 ? withstand : reinforcedImpulse(tables, withstand);
  const site = {
    altitudes: files.altitude,
    altitudeRule: null,
    rounding: roundingOf(files.clearanceByWithstand),
  };
  return governingClearance(site, asked, column, [
    // the floor of the pollution degree stands in every row of the impulses, whatever the impulse
    lengthAt(lookUp(files.clearanceByWithstand, impulse.value, 'basic', [pollutionDegree]), impulse),
    lengthAt(lookUp(files.clearanceByPeak, lasting.value, 'basic'), lasting),
    isHigh(tables, asked)
      ? partFourClearance(files.clearanceHighFrequency, rules('high-frequency-clearance'), peak, column)
      : null,
  ]);
}

const lengthAt = (found: Found | OutOfRange, entry: Judged<VoltsPeak>): Answered<Nm> =>
  found.kind === 'found'
    ? judged(nm(found.value), { ...found.because, from: [...found.because.from, entry.because] })
    : found;

function requiredCreepage(
  tables: Tables,
  asked: Question,
  group: MaterialGroup,
  column: Column,
  clearance: Answered<Nm>,
): Answered<Nm> {
  const { files, rules } = tables;
  const basic = lengthOf(lookUp(files.creepage, asked.rms, group, [asked.pollutionDegree]));
  if (isOutOfRange(basic)) return basic;
  const byRms = column === 'basic' ? basic : timesRule(rules('reinforced-creepage'), 'factor', basic);
  const high = isHigh(tables, asked)
    ? partFourCreepage(files.creepageHighFrequency, rules('high-frequency-creepage'), asked, column)
    : null;
  return governingCreepage(asked, column, group, byRms, high, clearance);
}

/** No less than what stands across the solid in use. */
function testLevel(tables: Tables, { peak, transients }: Question, column: Column): Answered<VoltsPeak> {
  const { withstand, temporaryOvervoltage: overvoltage } = transients;
  if (isOutOfRange(withstand)) return withstand;
  if (isOutOfRange(overvoltage)) return overvoltage;
  const short = tables.rules('temporary-overvoltage');
  const proves = tables.rules('impulse-proves-solids').because();
  const levels: readonly Judged<VoltsPeak>[] = [
    judged(voltsPeak(peak), proves),
    ...(withstand.value === 0 ? [] : [column === 'basic' ? withstand : reinforcedImpulse(tables, withstand)]),
    ...(overvoltage.value === 0
      ? []
      : [
          column === 'basic'
            ? overvoltage
            : timesPeak(
                short.figure('reinforced'),
                overvoltage.value,
                [overvoltage.because],
                short.because(['reinforced']).cites,
              ),
        ]),
  ];
  const largest = levels.reduce((a, b) => (b.value > a.value ? b : a));
  const from = [...levels.map((one) => one.because), proves];
  return judged(largest.value, because('test-level', { column, value: largest.value }, [], from));
}
