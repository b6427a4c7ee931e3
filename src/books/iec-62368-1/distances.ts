// Distances that a rule book asks for through air and along surfaces. Each answer is rounded as its table says,
// factors after the table, doubling after the rounding.

import { nm, type Hertz, type Metres, type Nm, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

import { judged, type Judged } from '#standards/because.ts';
import { byGrade, byPollution } from '#standards/tables/factors.ts';
import type { Column, MaterialGroup, PollutionDegree } from '#units/terms.ts';
import { lookUp, type Found } from '#standards/tables/look-up.ts';
import { highFrequencyCreepage } from '#books/shared/distances/high-frequency-creepage.ts';
import type { OutOfRange } from '#standards/tables/out-of-range.ts';
import { roundUp, roundingOf } from '#standards/tables/rounding.ts';
import type { Rule, Rules } from '#standards/tables/rules-in-words.ts';
import type { Table } from '#standards/tables/table.ts';

export interface DistanceTables {
  readonly clearanceByPeak: Table;
  readonly clearanceHighFrequency: Table;
  readonly clearanceByWithstand: Table;
  readonly altitude: Table;
  readonly creepage: Table;
  readonly creepageHighFrequency: Table;
  readonly bridgingWidth: Table;
}

export interface Distances {
  readonly clearanceByPeak: (peak: VoltsPeak, pd: PollutionDegree, column: Column) => Judged<Nm> | OutOfRange;
  /** Asked of parts of the voltage above 30 kHz only. */
  readonly clearanceHighFrequency: (
    peak: VoltsPeak,
    pd: PollutionDegree,
    column: Column,
  ) => Judged<Nm> | OutOfRange;
  readonly clearanceByWithstand: (
    withstand: VoltsPeak,
    pd: PollutionDegree,
    column: Column,
  ) => Judged<Nm> | OutOfRange;
  readonly altitudeFactor: (altitude: Metres) => Judged<number> | OutOfRange;
  readonly creepageByRms: (
    rms: VoltsRms,
    pd: PollutionDegree,
    group: MaterialGroup,
    column: Column,
  ) => Judged<Nm> | OutOfRange;
  /** Null: nothing is asked beside the ordinary table. */
  readonly creepageHighFrequency: (
    peak: VoltsPeak,
    frequency: Hertz,
    pd: PollutionDegree,
    column: Column,
  ) => Judged<Nm | null> | OutOfRange;
  /** Rule of the clearance tables, used once more after a factor on a clearance. */
  readonly roundDistanceUp: (value: Nm) => Nm;
  /** Widths under which gaps count as bridged, and the rule by which a third of a clearance may be one. */
  readonly bridgingWidths: Table;
  readonly bridgingThird: Rule;
}

export function distancesOf(tables: DistanceTables, rules: Rules): Distances {
  const { clearanceByPeak, clearanceHighFrequency, clearanceByWithstand, altitude, creepage } = tables;
  return {
    clearanceByPeak: (peak, pd, column) => length(lookUp(clearanceByPeak, peak, column, [pd])),
    clearanceHighFrequency: (peak, pd, column) =>
      mapFound(lookUp(clearanceHighFrequency, peak, column), (found) =>
        byPollution(clearanceHighFrequency, found, pd),
      ),
    clearanceByWithstand: (withstand, pd, column) =>
      length(lookUp(clearanceByWithstand, withstand, column, [pd])),
    altitudeFactor: (metres) =>
      mapFound(lookUp(altitude, metres, 'factor'), (found) => judged(found.value, found.because)),
    creepageByRms: (rms, pd, group, column) =>
      mapFound(lookUp(creepage, rms, group, [pd]), (found) =>
        byGrade(creepage, judged(nm(found.value), found.because), column),
      ),
    creepageHighFrequency: (peak, frequency, pd, column) =>
      highFrequencyCreepage(tables.creepageHighFrequency, rules('high-frequency'), {
        peak,
        frequency,
        pd,
        column,
      }),
    roundDistanceUp: (value) => roundUp(value, roundingOf(clearanceByPeak)),
    bridgingWidths: tables.bridgingWidth,
    bridgingThird: rules('bridging-third'),
  };
}

function mapFound<T>(found: Found | OutOfRange, then: (found: Found) => T): T | OutOfRange {
  return found.kind === 'found' ? then(found) : found;
}

const length = (found: Found | OutOfRange): Judged<Nm> | OutOfRange =>
  mapFound(found, ({ value, because: why }) => judged(nm(value), why));
