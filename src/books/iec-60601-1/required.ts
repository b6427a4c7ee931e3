// What IEC 60601-1 asks between two circuits, in means of protection: one where the default book asks basic, two where it
// asks reinforced. Of the patient by table 12, creepage by rms and clearance by the row of the peak; of the operator by the
// one row that was seen, which ends at 250 V rms and 420 V peak; tests at 354 V peak. No rule of high frequency was seen.

import type { Answered, Question, Required } from '#books/questions/required.ts';
import { lengthOf, testOf } from '#books/shared/answered.ts';
import { bridgedGap } from '#books/shared/distances/bridged-gap.ts';
import { forBoth } from '#books/shared/distances/for-both.ts';
import { governingClearance, governingCreepage } from '#books/shared/distances/governing.ts';
import { because, judged } from '#standards/because.ts';
import type { Column, MaterialGroup } from '#units/terms.ts';
import { exactCell, lookUp } from '#standards/tables/look-up.ts';
import { outOfRange, type OutOfRange } from '#standards/tables/out-of-range.ts';
import { roundingOf } from '#standards/tables/rounding.ts';
import { nm, type Nm, type VoltsPeak } from '#units/quantity.ts';
import type { Tables } from './tables.ts';

const MEANS: Readonly<Record<Column, 'one' | 'two'>> = { basic: 'one', reinforced: 'two' };

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
  const found =
    asked.means === 'patient'
      ? lengthOf(lookUp(files.clearancePatient, asked.peak, column))
      : operatorDistance(tables, asked, 'clearance', column);
  const site = {
    altitudes: files.altitude,
    altitudeRule: rules('altitude'),
    rounding: roundingOf(files.creepagePatient),
  };
  return governingClearance(site, asked, column, [found]);
}

function requiredCreepage(
  tables: Tables,
  asked: Question,
  group: MaterialGroup,
  column: Column,
  clearance: Answered<Nm>,
): Answered<Nm> {
  const byRms =
    asked.means === 'patient'
      ? lengthOf(lookUp(tables.files.creepagePatient, asked.rms, column))
      : operatorDistance(tables, asked, 'creepage', column);
  return governingCreepage(asked, column, group, byRms, null, clearance);
}

/** The one row of the operator, as far as it holds. */
function operatorDistance(
  { files, rules }: Tables,
  asked: Question,
  which: 'clearance' | 'creepage',
  column: Column,
): Answered<Nm> {
  const [limits, around] = [rules('operator-limits'), rules('operator-surroundings')];
  const isWithin =
    which === 'creepage' ? asked.rms <= limits.figure('rms') : asked.peak <= limits.figure('peak');
  const holds =
    isWithin &&
    asked.supply.overvoltageCategory <= around.figure('category') &&
    asked.pollutionDegree <= around.figure('degree');
  if (!holds) return beyondRow(which, asked, limits.because().cites);
  const cell = exactCell(files.operatorAtMains, MEANS[column], which);
  if (cell?.value == null) return beyondRow(which, asked, limits.because().cites);
  const values = { means: MEANS[column], quantity: which, value: cell.value / 1e6 };
  return judged(nm(cell.value), because('operator-row', values, [cell.cite], [limits.because()]));
}

function beyondRow(which: string, { rms, peak }: Question, cites: Parameters<typeof because>[2]): OutOfRange {
  const place = `operators at ${Math.round(rms)} V rms, ${Math.round(peak)} V peak`;
  return outOfRange(
    `no row of ${which} was seen for ${place}`,
    because('out-of-range', { quantity: which, place }, cites),
  );
}

const testLevel = ({ files }: Tables, { peak, means }: Question, column: Column): Answered<VoltsPeak> =>
  testOf(lookUp(files.testAtMains, peak, `${MEANS[column]} ${means}`), column);
