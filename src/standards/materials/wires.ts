// Diameters and breakdown voltages of winding wires by bare diameter. A size between rows carries the growth and the
// voltage of the next larger row, which the derivation names; a stated overall diameter wins and is not asked here.

import litzFile from '#tables/materials/litz.json' with { type: 'json' };
import fullyInsulatedFile from '#tables/materials/wire-fully-insulated.json' with { type: 'json' };
import fullyInsulatedStrengthFile from '#tables/materials/wire-fully-insulated-strength.json' with { type: 'json' };
import layerInsulatedFile from '#tables/materials/wire-layer-insulated.json' with { type: 'json' };
import roundFile from '#tables/materials/wire-round.json' with { type: 'json' };
import roundBreakdownFile from '#tables/materials/wire-round-breakdown.json' with { type: 'json' };

import { inMm, nm, voltsRms, type Nm, type VoltsRms } from '#units/quantity.ts';

import { because, judged, type Judged } from '#standards/because.ts';
import { cellFor, exactCell } from '#standards/tables/look-up.ts';
import { outOfRange, type OutOfRange } from '#standards/tables/out-of-range.ts';
import { readTable, type Cell, type Table } from '#standards/tables/table.ts';

export interface RoundWire {
  /** Largest overall diameter of the grade. */
  readonly overall: Nm;
  /** Least growth of the diameter by the enamel. */
  readonly minIncrease: Nm;
  /** Least breakdown; two films in series from 0.112 mm up (twisted pair), one below. */
  readonly breakdown: VoltsRms | null;
}

export interface FullyInsulatedWire {
  readonly overall: Nm;
  /** One film against metal. */
  readonly leastBreakdown: VoltsRms;
}

const round = readTable(roundFile);
const roundBreakdown = readTable(roundBreakdownFile);
const fullyInsulated = readTable(fullyInsulatedFile);
const fullyInsulatedStrength = readTable(fullyInsulatedStrengthFile);
const layerInsulated = readTable(layerInsulatedFile);
const litz = readTable(litzFile);

export function roundWire(conductor: Nm, grade: 1 | 2 | 3): Judged<RoundWire> | OutOfRange {
  const overall = cellFor(round, conductor, `overall${grade}`);
  const increase = cellFor(round, conductor, `increase${grade}`);
  if (overall?.value == null || increase?.value == null) return noSize(round, conductor, grade);
  const volts = cellFor(roundBreakdown, conductor, `grade${grade}`);
  const value = {
    overall: grown(conductor, overall, overall.value),
    minIncrease: nm(increase.value),
    breakdown: volts?.value == null ? null : voltsRms(volts.value),
  };
  const values = {
    ...sizeValues(conductor, grade, overall),
    overall: inMm(value.overall),
    minIncrease: inMm(value.minIncrease),
    breakdown: value.breakdown,
    specimen: cellFor(roundBreakdown, conductor, 'specimen')?.word ?? null,
  };
  const cites = [overall.cite, increase.cite, ...(volts === undefined ? [] : [volts.cite])];
  return judged(value, because('round-wire', values, cites));
}

export function fullyInsulatedWire(
  conductor: Nm,
  grade: 3 | 4 | 5 | 6 | 7 | 8 | 9,
): Judged<FullyInsulatedWire> | OutOfRange {
  const overall = cellFor(fullyInsulated, conductor, `overall${grade}`);
  const volts = cellFor(fullyInsulated, conductor, `breakdown${grade}`);
  if (overall?.value == null || volts?.value == null) return noSize(fullyInsulated, conductor, grade);
  const value = { overall: grown(conductor, overall, overall.value), leastBreakdown: voltsRms(volts.value) };
  const values = {
    ...sizeValues(conductor, grade, overall),
    overall: inMm(value.overall),
    leastBreakdown: value.leastBreakdown,
  };
  return judged(value, because('fully-insulated-wire', values, [overall.cite, volts.cite]));
}

/** Least breakdown that the standard asks of fully insulated wire of this growth, for sizes the grade table lacks. */
export function fullyInsulatedBreakdown(conductor: Nm, overall: Nm): Judged<VoltsRms> | OutOfRange {
  const cell = cellFor(fullyInsulatedStrength, conductor, 'cold');
  if (cell?.value == null || overall < conductor) return noSize(fullyInsulatedStrength, conductor, null);
  const increase = inMm(nm(overall - conductor));
  const value = voltsRms(Number((cell.value * increase * 1000).toPrecision(9)));
  const values = { conductor: inMm(conductor), increase, perMicrometre: cell.value, value };
  return judged(value, because('fully-insulated-strength', values, [cell.cite]));
}

/** Wire with three extruded layers. */
export function insulatedWireOverall(conductor: Nm): Judged<Nm> {
  const growth = exactCell(layerInsulated, 'three extruded layers', 'growth');
  if (growth?.value == null) throw new Error('the growth of layer-insulated wire is missing');
  const value = nm(conductor + growth.value);
  const values = { conductor: inMm(conductor), growth: inMm(nm(growth.value)), value: inMm(value) };
  return judged(value, because('layer-insulated-wire', values, [growth.cite]));
}

/** Largest diameter of a bundle of enamelled strands. */
export function litzOverall(
  strand: Nm,
  grade: 1 | 2 | 3,
  strands: number,
  serving: 'none' | 'single' | 'double',
): Judged<Nm> | OutOfRange {
  const wire = roundWire(strand, grade);
  if ('kind' in wire) return wire;
  const packing = exactCell(litz, serving, 'packing');
  const growth = exactCell(litz, serving, 'growth');
  if (packing?.value == null || growth?.value == null) throw new Error(`litz has no serving ${serving}`);
  const value = nm(Math.ceil(packing.value * Math.sqrt(strands) * wire.value.overall + growth.value));
  const values = {
    strands,
    serving,
    packing: packing.value,
    growth: inMm(nm(growth.value)),
    value: inMm(value),
  };
  return judged(value, because('litz-bundle', values, [packing.cite, growth.cite], [wire.because]));
}

/** The bare diameter with the growth of the row. */
const grown = (conductor: Nm, cell: Cell, overall: number): Nm => nm(conductor + overall - Number(cell.at));

function sizeValues(conductor: Nm, grade: number, cell: Cell) {
  const row = nm(Number(cell.at));
  return { conductor: inMm(conductor), grade, row: inMm(row), exact: row === conductor };
}

function noSize(table: Table, conductor: Nm, grade: number | null): OutOfRange {
  const place = `conductor of ${inMm(conductor)} mm${grade === null ? '' : `, grade ${grade}`}`;
  const says = `${table.file.id} lists no ${place}`;
  return outOfRange(says, because('out-of-range', { quantity: table.file.quantity, place }));
}
