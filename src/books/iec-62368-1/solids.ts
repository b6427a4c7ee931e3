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
  type VoltsPeak,
  type VoltsRms,
} from '#units/quantity.ts';

import type {
  HeatAnswers,
  SolidAnswers,
  TouchCurrentLimit,
  TouchCurrentLimits,
} from '#books/questions/book.ts';
import type { CapacitorClass, PartTables } from '#books/shared/parts/bridge-grade.ts';
import { because, judged, type Judged } from '#standards/because.ts';
import { exactCell } from '#standards/tables/look-up.ts';
import type { Rules } from '#standards/tables/rules-in-words.ts';
import type { Cell, Table } from '#standards/tables/table.ts';

export interface SolidTables {
  readonly wireLayers: Table;
  readonly breakdownField: Table;
  readonly capacitors: Table;
  readonly insulationTemperature: Table;
  readonly windingTemperatureOverload: Table;
  readonly touchCurrent: Table;
}

/** What the book itself asks its tables; the rest answers the judge as it is. */
export interface Solids extends SolidAnswers, HeatAnswers, PartTables {
  readonly touchCurrentLimits: TouchCurrentLimits;
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
    singlePart: singlePart(rules),
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

function singlePart(rules: Rules): PartTables['singlePart'] {
  const rule = rules('single-y1');
  const value = {
    mainsMost: voltsRms(rule.figure('mainsMost')),
    categoryMost: rule.figure('categoryMost'),
  };
  return judged(value, rule.because());
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
