// What a rule book says of solid insulation and of parts: least thickness, plies, wires, capacitors, temperatures,
// touch current, and the grade needed between two circuits by their roles.

import {
  amperes,
  celsius,
  nm,
  peakOfSine,
  voltsRms,
  type Amperes,
  type Celsius,
  type Nm,
  type VoltsPeak,
  type VoltsRms,
} from '#units/quantity.ts';

import { because, judged, type Judged } from '#standards/because.ts';
import type { Grade, Role } from '#standards/grade.ts';
import { exactCell } from '#standards/look-up.ts';
import type { Rules } from '#standards/rules-in-words.ts';
import type { Cell, Table } from '#standards/table.ts';

export interface SolidTables {
  readonly wireLayers: Table;
  readonly breakdownField: Table;
  readonly capacitors: Table;
  readonly neededGrades: Table;
  readonly insulationTemperature: Table;
  readonly windingTemperatureOverload: Table;
  readonly touchCurrent: Table;
}

export type CapacitorClass = 'Y1' | 'Y2' | 'Y4' | 'X1' | 'X2' | 'none' | 'unknown';
export type OverloadState = 'unprotected' | 'firstHour' | 'afterFirstHour' | 'mean';

export interface TouchCurrentLimit {
  readonly rms: Amperes;
  readonly peak: Amperes;
  readonly dc: Amperes;
}

export interface Solids {
  /** One solid layer as supplementary or reinforced insulation. */
  readonly leastThickness: () => Judged<Nm>;
  /** How many thin sheets: `alone` each standing the test of the grade, or `anyTwo` of which any two together do. */
  readonly plyRule: (
    grade: 'supplementary' | 'reinforced',
  ) => Judged<{ readonly alone: number; readonly anyTwo: number }>;
  /** Sheets that cannot be parted: the stack stands the test voltage times these. */
  readonly bondedPlies: Judged<{
    readonly two: number;
    readonly threeOrMore: number;
    readonly mandrelLeast: VoltsRms;
  }>;
  /** Raised test that makes a cemented joint or a potted void solid. */
  readonly proofFactor: Judged<number>;
  /** Part of a film's short-time breakdown that is counted as its withstand; a house rule. */
  readonly filmShare: Judged<number>;
  readonly wireLayers: (layers: 1 | 2 | 3) => Judged<'basic' | 'basic and supplementary' | 'reinforced'>;
  /** What the type test shows of one cover with so many certified layers: half of two twisted wires, peak. */
  readonly coverShown: (layers: 1 | 2 | 3) => Judged<VoltsPeak>;
  /**
   * What a millimetre of a moulding or film is shown to stand, V peak: the share of a film's strength times the field of
   * the table, in which a material has a row that bears its name, else another counts in its place.
   */
  readonly shownPerMm: (material: string | null) => Judged<number>;
  readonly capacitorGrade: (
    safetyClass: CapacitorClass,
  ) => Judged<'none' | 'functional' | 'basic' | 'reinforced'>;
  /** No part of the class is rated higher; null where the class has none. */
  readonly capacitorRatedAtMost: (safetyClass: CapacitorClass) => Judged<VoltsRms> | null;
  /** Null: nothing is asked between these two. The order of the roles is the same thing. */
  readonly neededGrade: (a: Role, b: Role) => Judged<Grade | null>;
  readonly touchCurrentLimits: {
    readonly normal: Judged<TouchCurrentLimit>;
    readonly singleFault: Judged<TouchCurrentLimit>;
    readonly protectiveConductor: Judged<Amperes>;
  };
  /** Classes for which the book has limits, rising. */
  readonly thermalClasses: readonly number[];
  /** Highest temperature in normal use; null where the thermal class has no row. */
  readonly insulationTemperature: (thermalClass: number) => Judged<Celsius> | null;
  readonly windingTemperatureOverload: (thermalClass: number, state: OverloadState) => Judged<Celsius> | null;
  /** What a winding's limit is lowered by where a thermocouple reads it, in kelvin. */
  readonly thermocoupleAllowance: Judged<number>;
}

export function solidsOf(tables: SolidTables, rules: Rules): Solids {
  const thickness = rules('least-thickness');
  const least = judged(nm(thickness.figure('thickness')), thickness.because());
  return {
    leastThickness: () => least,
    plyRule: (grade) => {
      const rule = rules(`plies-${grade}`);
      return judged({ alone: rule.figure('alone'), anyTwo: rule.figure('anyTwo') }, rule.because());
    },
    bondedPlies: bondedPlies(rules),
    proofFactor: single(rules, 'proven-joint', 'testFactor'),
    filmShare: single(rules, 'film-strength', 'share'),
    wireLayers: (layers) => word(tables.wireLayers, layers, 'grade', 'wire-layers'),
    coverShown: (layers) => coverShown(tables.wireLayers, layers),
    shownPerMm: (material) => shownPerMm(tables.breakdownField, rules, material),
    capacitorGrade: (safetyClass) => word(tables.capacitors, safetyClass, 'grade', 'capacitor'),
    capacitorRatedAtMost: (safetyClass) => ratedAtMost(tables.capacitors, safetyClass),
    neededGrade: (a, b) => neededGrade(tables.neededGrades, a, b),
    touchCurrentLimits: {
      normal: touchLimit(tables.touchCurrent, 'normal'),
      singleFault: touchLimit(tables.touchCurrent, 'single-fault'),
      protectiveConductor: current(tables.touchCurrent, 'protective-conductor', 'acRms'),
    },
    thermalClasses: tables.insulationTemperature.steps.map(Number),
    insulationTemperature: (thermalClass) =>
      temperature(tables.insulationTemperature, thermalClass, 'normal'),
    windingTemperatureOverload: (thermalClass, state) =>
      temperature(tables.windingTemperatureOverload, thermalClass, state),
    thermocoupleAllowance: single(rules, 'measured-by-thermocouple', 'lowerBy'),
  };
}

function single(rules: Rules, id: string, key: string): Judged<number> {
  const rule = rules(id);
  return judged(rule.figure(key), rule.because([key]));
}

function bondedPlies(rules: Rules): Solids['bondedPlies'] {
  const rule = rules('bonded-plies');
  const value = {
    two: rule.figure('two'),
    threeOrMore: rule.figure('threeOrMore'),
    mandrelLeast: voltsRms(rule.figure('mandrelLeast')),
  };
  return judged(value, rule.because());
}

function met(table: Table, at: number | string, column: string): Cell {
  const cell = exactCell(table, at, column);
  if (cell === undefined) throw new Error(`${table.file.id} has no row ${at}`);
  return cell;
}

/** The words of these columns are those of the type asked for; `test/standards` holds the tables to it. */
function word<Word extends string>(
  table: Table,
  at: number | string,
  column: string,
  step: 'wire-layers' | 'capacitor',
): Judged<Word> {
  const cell = met(table, at, column);
  return judged(cell.word as Word, because(step, { at, value: cell.word }, [cell.cite]));
}

/** Two covers lie between twisted wires. */
function coverShown(table: Table, layers: 1 | 2 | 3): Judged<VoltsPeak> {
  const { value: pair, cite } = met(table, layers, 'twistedPair');
  if (pair === null) throw new Error(`${table.file.id} has no type test of ${layers} layers`);
  const value = peakOfSine(voltsRms(pair / 2));
  return judged(value, because('cover-shown', { layers, pair, value }, [cite]));
}

function shownPerMm(table: Table, rules: Rules, material: string | null): Judged<number> {
  const other = rules('field-unlisted');
  const names = table.file.rows.map(({ at }) => String(at[0]));
  const own = names.find((name) => name.toLowerCase() === material?.toLowerCase()) ?? null;
  const { value: field, cite } = met(table, own ?? other.word('as'), 'field');
  if (field === null) throw new Error(`${table.file.id} has no field of ${own}`);
  const share = single(rules, 'film-strength', 'share');
  const from = own === null ? [other.because(), share.because] : [share.because];
  const values = { material, row: own ?? other.word('as'), field, share: share.value };
  return judged(field * share.value, because('field-shown', values, [cite], from));
}

function ratedAtMost(table: Table, safetyClass: CapacitorClass): Judged<VoltsRms> | null {
  const { value, cite } = met(table, safetyClass, 'ratedAtMost');
  if (value === null) return null;
  return judged(voltsRms(value), because('capacitor-rated', { at: safetyClass, value }, [cite]));
}

function neededGrade(table: Table, a: Role, b: Role): Judged<Grade | null> {
  const cell = exactCell(table, a, 'grade', [b]) ?? exactCell(table, b, 'grade', [a]);
  const grade = (cell?.word ?? null) as Grade | null;
  return judged(
    grade,
    because('needed-grade', { a, b, value: grade }, cell === undefined ? [] : [cell.cite]),
  );
}

function current(table: Table, state: string, column: string): Judged<Amperes> {
  const cell = met(table, state, column);
  if (cell.value === null) throw new Error(`${table.file.id} has no ${column} at ${state}`);
  return judged(
    amperes(cell.value),
    because('touch-current', { state, kind: column, value: cell.value }, [cell.cite]),
  );
}

function touchLimit(table: Table, state: string): Judged<TouchCurrentLimit> {
  const [rms, peak, dc] = [
    current(table, state, 'acRms'),
    current(table, state, 'acPeak'),
    current(table, state, 'dc'),
  ];
  const why = because('touch-current-limits', { state }, [], [rms.because, peak.because, dc.because]);
  return judged({ rms: rms.value, peak: peak.value, dc: dc.value }, why);
}

function temperature(table: Table, thermalClass: number, column: string): Judged<Celsius> | null {
  const cell = exactCell(table, thermalClass, column);
  if (cell?.value == null) return null;
  const values = { thermalClass, state: column, value: cell.value };
  return judged(celsius(cell.value), because('temperature-limit', values, [cell.cite]));
}
