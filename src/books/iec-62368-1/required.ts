// What the standard asks between two circuits: clearance by both procedures, creepage by tracking group, test levels,
// the width under which gaps are bridged.

import { bridgedGap } from '#books/shared/distances/bridged-gap.ts';
import { forBoth } from '#books/shared/distances/for-both.ts';
import type { Answered, Question, Required } from '#books/questions/required.ts';
import { because, judged, type Judged } from '#standards/because.ts';
import type { Column, MaterialGroup } from '#units/terms.ts';
import { nextRowOf } from '#standards/tables/next-row.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import { inMm, nm, voltsPeak, type Nm, type VoltsPeak } from '#units/quantity.ts';
import type { Distances } from './distances.ts';
import type { Voltages } from './voltages.ts';

/** The tables that decide, and the frequency above which those for high frequency are asked. */
export interface Tables extends Distances, Voltages {
  readonly highFrequencyAbove: number;
}

export function requiredOf(tables: Tables, asked: Question): Required {
  const clearance = forBoth((column) => requiredClearance(tables, asked, column));
  const creepage = byKey((group: MaterialGroup) =>
    forBoth((column) => requiredCreepage(tables, asked, group, column, clearance[column])),
  );
  return {
    clearance,
    creepage,
    test: forBoth((column) => testLevel(tables, asked, column)),
    noSolids: null,
    highFrequencyTest: byKey((material) =>
      forBoth((column) => tables.highFrequencyTest(asked.peak, asked.frequency, column, material)),
    ),
    x: bridgedGap(tables.bridgingWidths, tables.bridgingThird, asked, clearance),
  };
}

/** Worked out once for every key that is asked for. */
function byKey<K, T>(make: (key: K) => T): (key: K) => T {
  const made = new Map<K, T>();
  return (key) => {
    const known = made.get(key) ?? make(key);
    made.set(key, known);
    return known;
  };
}

function requiredClearance(tables: Tables, asked: Question, column: Column): Answered<Nm> {
  const { pollutionDegree: pd, altitude, peak } = asked;
  const { withstand, temporaryOvervoltage: overvoltage } = asked.transients;
  if (isOutOfRange(withstand)) return withstand;
  if (isOutOfRange(overvoltage)) return overvoltage;
  // procedure 1: the largest voltage that lasts; procedure 2: the transient
  const lasting = voltsPeak(Math.max(peak, overvoltage.value));
  const found = [
    tables.clearanceByPeak(lasting, pd, column),
    ...(withstand.value > 0 ? [tables.clearanceByWithstand(withstand.value, pd, column)] : []),
    ...(asked.frequency > tables.highFrequencyAbove ? [tables.clearanceHighFrequency(peak, pd, column)] : []),
  ];
  const refused = found.find(isOutOfRange);
  if (refused) return refused;
  const known = found.filter((one): one is Judged<Nm> => !isOutOfRange(one));
  const largest = known.reduce((a, b) => (b.value > a.value ? b : a));
  const at = tables.altitudeFactor(altitude);
  if (isOutOfRange(at)) return at;
  const value =
    at.value > 1 ? tables.roundDistanceUp(nm(Math.round(largest.value * at.value))) : largest.value;
  const from = [
    ...known.map((one) => one.because),
    overvoltage.because,
    withstand.because,
    at.because,
    ...(asked.altitudeFrom === null ? [] : [asked.altitudeFrom]),
  ];
  const values = {
    column,
    value: inMm(value),
    largest: inMm(largest.value),
    factor: at.value,
    altitude,
    lasting,
    withstand: withstand.value,
    nextRow: nextRowOf(largest.because),
  };
  return judged(value, because('required-clearance', values, [], from));
}

function requiredCreepage(
  tables: Tables,
  { pollutionDegree: pd, rms, peak, frequency }: Question,
  group: MaterialGroup,
  column: Column,
  clearance: Answered<Nm>,
): Answered<Nm> {
  const byRms = tables.creepageByRms(rms, pd, group, column);
  if (isOutOfRange(byRms)) return byRms;
  if (isOutOfRange(clearance)) return clearance;
  const above = frequency > tables.highFrequencyAbove;
  const byPeak = above ? tables.creepageHighFrequency(peak, frequency, pd, column) : null;
  if (byPeak && isOutOfRange(byPeak)) return byPeak;
  const value = nm(Math.max(byRms.value, byPeak?.value ?? 0, clearance.value));
  const governs =
    value === byRms.value ? 'rms' : byPeak && value === byPeak.value ? 'high-frequency' : 'clearance';
  const from = [
    byRms.because,
    ...(byPeak ? [byPeak.because] : []),
    ...(governs === 'clearance' ? [clearance.because] : []),
  ];
  const values = {
    column,
    group,
    pollutionDegree: pd,
    value: inMm(value),
    governs,
    nextRow: nextRowOf(byRms.because),
  } as const;
  return judged(value, because('required-creepage', values, [], from));
}

function testLevel(tables: Tables, { peak, transients }: Question, column: Column): Answered<VoltsPeak> {
  const { withstand, temporaryOvervoltage: overvoltage } = transients;
  if (isOutOfRange(withstand)) return withstand;
  const found = [
    tables.testByWorkingPeak(peak, column),
    ...(withstand.value > 0 ? [tables.testByTransient(withstand.value, column)] : []),
    ...(!isOutOfRange(overvoltage) && overvoltage.value > 0
      ? [tables.testByTemporaryOvervoltage(transients.mains, column)]
      : []),
  ];
  const refused = found.find(isOutOfRange);
  if (refused) return refused;
  const known = found.filter((one): one is Judged<VoltsPeak> => !isOutOfRange(one));
  const largest = known.reduce((a, b) => (b.value > a.value ? b : a));
  const from = known.map((one) => one.because);
  return judged(largest.value, because('test-level', { column, value: largest.value }, [], from));
}
