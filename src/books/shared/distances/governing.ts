// What governs a distance: the largest of several figures, raised by the altitude for a clearance; a creepage is never less
// than the clearance. A figure that is out of range leaves none.

import type { Answered, Question } from '#books/questions/required.ts';
import { because, judged, type Judged } from '#standards/because.ts';
import type { Column, MaterialGroup } from '#units/terms.ts';
import { nextRowOf } from '#standards/tables/next-row.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';
import type { Rounding, Table } from '#standards/tables/table.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';
import { raisedByAltitude } from './raised-by-altitude.ts';

/** Null in place of a figure: that way asks nothing. */
type Figures = readonly (Answered<Nm> | null)[];

export interface Site {
  readonly altitudes: Table;
  /** Null where the table of altitudes is the book's own. */
  readonly altitudeRule: Rule | null;
  readonly rounding: Rounding;
}

export function governingClearance(
  { altitudes, altitudeRule, rounding }: Site,
  asked: Question,
  column: Column,
  figures: Figures,
): Answered<Nm> {
  const { withstand } = asked.transients;
  if (isOutOfRange(withstand)) return withstand;
  const refused = refusedOf(figures);
  if (refused !== null) return refused;
  const known = knownOf(figures);
  const largest = known.reduce((a, b) => (b.value > a.value ? b : a));
  const raised = raisedByAltitude(altitudes, altitudeRule, asked.altitude, largest.value, rounding);
  if (isOutOfRange(raised)) return raised;
  const { value, factor } = raised.value;
  const values = {
    column,
    value: inMm(value),
    largest: inMm(largest.value),
    factor,
    altitude: asked.altitude,
    lasting: asked.peak,
    withstand: withstand.value,
    nextRow: nextRowOf(largest.because),
  };
  const from = [
    ...known.map((one) => one.because),
    withstand.because,
    ...raised.value.because,
    ...(asked.altitudeFrom === null ? [] : [asked.altitudeFrom]),
  ];
  return judged(value, because('required-clearance', values, [], from));
}

/** `highFrequency` null: nothing is asked beside the ordinary table. */
export function governingCreepage(
  asked: Question,
  column: Column,
  group: MaterialGroup,
  byRms: Answered<Nm>,
  highFrequency: Answered<Nm> | null,
  clearance: Answered<Nm>,
): Answered<Nm> {
  if (isOutOfRange(byRms)) return byRms;
  if (isOutOfRange(clearance)) return clearance;
  if (highFrequency !== null && isOutOfRange(highFrequency)) return highFrequency;
  const value = nm(Math.max(byRms.value, highFrequency?.value ?? 0, clearance.value));
  const governs =
    value === byRms.value ? 'rms' : value === highFrequency?.value ? 'high-frequency' : 'clearance';
  const from = [
    byRms.because,
    ...(highFrequency === null ? [] : [highFrequency.because]),
    ...(governs === 'clearance' ? [clearance.because] : []),
  ];
  const values = {
    column,
    group,
    pollutionDegree: asked.pollutionDegree,
    value: inMm(value),
    governs,
    nextRow: nextRowOf(byRms.because),
  } as const;
  return judged(value, because('required-creepage', values, [], from));
}

const refusedOf = (figures: Figures) => figures.find((one) => one !== null && isOutOfRange(one)) ?? null;

const knownOf = (figures: Figures): readonly Judged<Nm>[] =>
  figures.filter((one): one is Judged<Nm> => one !== null && !isOutOfRange(one));
