// Tapes, coil former mouldings and sleeves by the ids that files use. Every figure carries where it was seen; what a
// file states beside an id wins over these.

import formersFile from '#tables/materials/formers.json' with { type: 'json' };
import filmsFile from '#tables/materials/films.json' with { type: 'json' };
import sleevesFile from '#tables/materials/sleeves.json' with { type: 'json' };
import tapesFile from '#tables/materials/tapes.json' with { type: 'json' };

import { celsius, inMm, nm, voltsRms, type Celsius, type Nm, type VoltsRms } from '#units/quantity.ts';

import { because, judged, type Cite, type Judged } from '#standards/because.ts';
import type { MaterialGroup } from '#units/terms.ts';
import { cellFor, exactCell } from '#standards/tables/look-up.ts';
import { outOfRange, type OutOfRange } from '#standards/tables/out-of-range.ts';
import { readTable, type Cell, type Table } from '#standards/tables/table.ts';

export {
  fullyInsulatedBreakdown,
  fullyInsulatedWire,
  insulatedWireOverall,
  litzOverall,
  roundWire,
} from './wires.ts';

export interface Figure<T> {
  readonly value: T;
  readonly cite: Cite;
}

interface Material {
  readonly id: string;
  readonly name: string;
  readonly thermalClass: Figure<Celsius>;
  /** Null: not listed, so the worst holds. */
  readonly group: Figure<MaterialGroup> | null;
  /** Relative permittivity, for estimates. */
  readonly permittivity: Figure<number> | null;
}

export interface Tape extends Material {
  /** Base film without the adhesive. */
  readonly film: Figure<Nm> | null;
  /** The whole ply, as it builds up. */
  readonly total: Figure<Nm>;
  /** Least short-time breakdown of the base film; never a withstand by itself, see `filmShare` of a book. */
  readonly leastBreakdown: Figure<VoltsRms> | null;
  /** What a ply is made as: only a film is solid through and through. */
  readonly matter: string | null;
}

export type FormerMaterial = Material;
export interface SleeveMaterial extends Material {
  /** A solid tube or a braid. */
  readonly matter: string | null;
}

const films = readTable(filmsFile);

const tapesTable = readTable(tapesFile);

export const tapes: readonly Tape[] = materialsOf(tapesTable).map((material) => ({
  ...material,
  film: figure(tapesTable, material.id, 'film', nm),
  total: needed(tapesTable, material.id, 'total', nm),
  leastBreakdown: figure(tapesTable, material.id, 'leastBreakdown', voltsRms),
  matter: exactCell(tapesTable, material.id, 'matter')?.word ?? null,
}));

export const formers: readonly FormerMaterial[] = materialsOf(readTable(formersFile));

const sleevesTable = readTable(sleevesFile);

export const sleeves: readonly SleeveMaterial[] = materialsOf(sleevesTable).map((material) => ({
  ...material,
  matter: exactCell(sleevesTable, material.id, 'matter')?.word ?? null,
}));

const byId = <T extends Material>(list: readonly T[]): ((id: string) => T | null) => {
  const index = new Map(list.map((material) => [material.id, material]));
  return (id) => index.get(id) ?? null;
};

export const tapeById = byId(tapes);
export const formerById = byId(formers);
export const sleeveById = byId(sleeves);

/** Least short-time breakdown of a tape's base film at a stated thickness: that of the next thinner film listed. */
export function filmBreakdown(tape: string, film: Nm): Judged<VoltsRms> | OutOfRange {
  const base = tapesTable.file.rows.find(({ at }) => at[0] === tape)?.['base'];
  const cell = typeof base === 'string' ? cellFor(films, film, 'least', [base]) : undefined;
  if (cell?.value == null) {
    const says = `no film strength is listed for ${tape} at ${inMm(film)} mm`;
    return outOfRange(
      says,
      because('out-of-range', { quantity: 'film strength', place: `${tape}, ${inMm(film)} mm` }),
    );
  }
  const values = { tape, film: inMm(film), row: inMm(nm(Number(cell.at))), value: cell.value };
  return judged(voltsRms(cell.value), because('film-breakdown', values, [cell.cite]));
}

function materialsOf(table: Table): readonly Material[] {
  return table.file.rows.map((row) => {
    const id = String(row.at[0]);
    return {
      id,
      name: String(row['name']),
      thermalClass: needed(table, id, 'thermalClass', celsius),
      group: groupOf(exactCell(table, id, 'group')),
      permittivity: figure(table, id, 'permittivity', (value) => value),
    };
  });
}

function figure<T>(table: Table, id: string, column: string, unit: (value: number) => T): Figure<T> | null {
  const cell = exactCell(table, id, column);
  return cell?.value == null ? null : { value: unit(cell.value), cite: cell.cite };
}

function needed<T>(table: Table, id: string, column: string, unit: (value: number) => T): Figure<T> {
  const found = figure(table, id, column, unit);
  if (found === null) throw new Error(`${table.file.id} has no ${column} for ${id}`);
  return found;
}

function groupOf(cell: Cell | undefined): Figure<MaterialGroup> | null {
  return cell?.word == null ? null : { value: cell.word as MaterialGroup, cite: cell.cite };
}
