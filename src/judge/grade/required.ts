// What the rule book asks between two circuits: clearance by both procedures, creepage by tracking group, test levels,
// the width under which gaps are bridged. Null figures are out of the book's range: then nothing reaches them.

import { because, judged, type Judged } from '#standards/because.ts';
import type { Book } from '#books/book.ts';
import type { Column, Grade, MaterialGroup } from '#standards/grade.ts';
import { nextRowOf } from '#standards/next-row.ts';
import { isOutOfRange, type OutOfRange } from '#standards/out-of-range.ts';
import type { Design } from '#model/design.ts';
import type { PairStressResult } from '#stress/voltages/pair-stress.ts';
import { mainsOf, type Transients } from '#stress/voltages/transient.ts';
import { inMm, nm, voltsPeak, type Nm, type VoltsPeak } from '#units/quantity.ts';

export interface Both<T> {
  readonly basic: T;
  readonly reinforced: T;
}

export interface PairRequired {
  readonly clearance: Both<Judged<Nm> | OutOfRange>;
  readonly creepage: (group: MaterialGroup) => Both<Judged<Nm> | OutOfRange>;
  /** Electric strength test, peak. */
  readonly test: Both<Judged<VoltsPeak> | OutOfRange>;
  /** Level for solids of a material (null: of none that is named) above 30 kHz; null where the frequency is not above it. */
  readonly highFrequencyTest: (material: string | null) => Both<Judged<VoltsPeak> | null>;
  /** Gaps narrower than this are bridged. */
  readonly x: Judged<Nm>;
}

export function requiredFor(
  book: Book,
  design: Design,
  stress: PairStressResult,
  transients: Transients,
  needed: Grade | null,
): PairRequired {
  const both = <T>(make: (column: Column) => T): Both<T> => ({
    basic: make('basic'),
    reinforced: make('reinforced'),
  });
  const clearance = both((column) => requiredClearance(book, design, stress, transients, column));
  const creepage = byKey((group: MaterialGroup) =>
    both((column) => requiredCreepage(book, design, stress, group, column, clearance[column])),
  );
  return {
    clearance,
    creepage,
    test: both((column) => testLevel(book, design, stress, transients, column)),
    highFrequencyTest: byKey((material) =>
      both((column) => book.highFrequencyTest(stress.peak, stress.frequency, column, material)),
    ),
    x: bridgedUnder(book, design, needed, clearance),
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

function requiredClearance(
  book: Book,
  design: Design,
  stress: PairStressResult,
  transients: Transients,
  column: Column,
): Judged<Nm> | OutOfRange {
  const pd = design.surroundings.pollutionDegree;
  const { withstand, temporaryOvervoltage: overvoltage } = transients;
  if (isOutOfRange(withstand)) return withstand;
  if (isOutOfRange(overvoltage)) return overvoltage;
  // procedure 1: the largest voltage that lasts; procedure 2: the transient
  const lasting = voltsPeak(Math.max(stress.peak, overvoltage.value));
  const found = [
    book.clearanceByPeak(lasting, pd, column),
    ...(withstand.value > 0 ? [book.clearanceByWithstand(withstand.value, pd, column)] : []),
    ...(stress.frequency > book.highFrequencyAbove
      ? [book.clearanceHighFrequency(stress.peak, pd, column)]
      : []),
  ];
  const refused = found.find(isOutOfRange);
  if (refused) return refused;
  const known = found.filter((one): one is Judged<Nm> => !isOutOfRange(one));
  const largest = known.reduce((a, b) => (b.value > a.value ? b : a));
  const at = book.altitudeFactor(design.surroundings.altitude.value);
  if (isOutOfRange(at)) return at;
  const value = at.value > 1 ? book.roundDistanceUp(nm(Math.round(largest.value * at.value))) : largest.value;
  const from = [...known.map((one) => one.because), overvoltage.because, withstand.because, at.because];
  const values = {
    column,
    value: inMm(value),
    largest: inMm(largest.value),
    factor: at.value,
    altitude: design.surroundings.altitude.value,
    lasting,
    withstand: withstand.value,
    nextRow: nextRowOf(largest.because),
  };
  return judged(value, because('required-clearance', values, [], from));
}

function requiredCreepage(
  book: Book,
  design: Design,
  stress: PairStressResult,
  group: MaterialGroup,
  column: Column,
  clearance: Judged<Nm> | OutOfRange,
): Judged<Nm> | OutOfRange {
  const pd = design.surroundings.pollutionDegree;
  const byRms = book.creepageByRms(stress.rms, pd, group, column);
  if (isOutOfRange(byRms)) return byRms;
  if (isOutOfRange(clearance)) return clearance;
  const above = stress.frequency > book.highFrequencyAbove;
  const byPeak = above ? book.creepageHighFrequency(stress.peak, stress.frequency, pd, column) : null;
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

function testLevel(
  book: Book,
  design: Design,
  stress: PairStressResult,
  transients: Transients,
  column: Column,
): Judged<VoltsPeak> | OutOfRange {
  const { withstand, temporaryOvervoltage: overvoltage } = transients;
  if (isOutOfRange(withstand)) return withstand;
  const found = [
    book.testByWorkingPeak(stress.peak, column),
    ...(withstand.value > 0 ? [book.testByTransient(withstand.value, column)] : []),
    ...(!isOutOfRange(overvoltage) && overvoltage.value > 0
      ? [book.testByTemporaryOvervoltage(mainsOf(design.supply).value, column)]
      : []),
  ];
  const refused = found.find(isOutOfRange);
  if (refused) return refused;
  const known = found.filter((one): one is Judged<VoltsPeak> => !isOutOfRange(one));
  const largest = known.reduce((a, b) => (b.value > a.value ? b : a));
  const from = known.map((one) => one.because);
  return judged(largest.value, because('test-level', { column, value: largest.value }, [], from));
}

function bridgedUnder(
  book: Book,
  design: Design,
  needed: Grade | null,
  clearance: Both<Judged<Nm> | OutOfRange>,
): Judged<Nm> {
  const width = book.bridgingWidth(design.surroundings.pollutionDegree);
  if (needed === null || needed === 'none' || needed === 'functional') return width;
  const wanted = needed === 'reinforced' || needed === 'double' ? clearance.reinforced : clearance.basic;
  if (isOutOfRange(wanted)) return width;
  const { divisor, below } = book.bridgingShare.value;
  if (wanted.value >= below) return width;
  const share = Math.floor(wanted.value / divisor);
  if (share >= width.value) return width;
  const values = { value: inMm(nm(share)), clearance: inMm(wanted.value), divisor };
  return judged(
    nm(share),
    because('bridging-share', values, [], [width.because, book.bridgingShare.because]),
  );
}
