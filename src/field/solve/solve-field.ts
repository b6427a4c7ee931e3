// The field of a section: capacitances of every conductor with every other, and the potential everywhere for each set
// of potentials asked for, from two resolutions. Floating conductors take the potential at which they carry no charge.
// Each `yield` tells how far it is, 0 to 1; whoever has enough just does not go on.

import { carriedOver } from '#field/adapt/carried-over.ts';
import { tooCoarse } from '#field/adapt/too-coarse.ts';
import type { FieldSection } from '#field/field-section.ts';
import type { BodyMap } from '#field/mesh/body-map.ts';
import type { Mesh } from '#field/mesh/mesh.ts';
import type { Fineness } from '#field/mesh/drawing.ts';
import { refined, type Refined } from '#field/mesh/refine.ts';
import { meshOf, type Meshed } from '#field/mesh/triangulate.ts';
import { at, couplingsOf, extrapolated, floatingPotentials, symmetric, type Square } from './capacitance.ts';
import { contactOf, type Contact } from './contact.ts';
import { SolvedBefore } from './solved-before.ts';
import { System } from './system.ts';

export interface FieldQuestion {
  readonly section: FieldSection;
  readonly states: readonly AskedState[];
  readonly fineness: Fineness;
  /** 1: a quick look on one mesh, which cannot say how far it is off. */
  readonly resolutions: 1 | 2;
}

export interface AskedState {
  /** A volt figure for each electrode; those of floating ones are not looked at. */
  readonly electrodes: Float64Array;
  /** Conductors that nothing holds. */
  readonly floating: readonly number[];
}

export interface FieldState {
  /** Potential of each point of the mesh, V. */
  readonly potential: Float64Array;
  /** Potential of each electrode, floating ones filled in. */
  readonly electrodes: Float64Array;
  /** Charge of each electrode over the permittivity of vacuum. */
  readonly charges: Float64Array;
  /** Charge of each point of the mesh that metal holds. */
  readonly surface: Float64Array;
}

export interface SolvedField {
  readonly kind: 'solved';
  readonly section: FieldSection;
  /** The finer of the two. */
  readonly mesh: Mesh;
  readonly map: BodyMap;
  /** By conductor, over the permittivity of vacuum: pure numbers in a plane, millimetres round an axis. */
  readonly capacitance: Square;
  /** How far each of them may be off; null where one mesh alone was looked at. */
  readonly off: Square | null;
  readonly states: readonly FieldState[];
  /** The same on the coarser mesh, which tells how far any reading of the finer one may be off; null where there was one alone. */
  readonly coarser: SolvedField | null;
}

export type FieldAnswer =
  | SolvedField
  | ({ readonly kind: 'touching' } & Contact)
  /** No two conductors, or a frame without area: there is no field. */
  | { readonly kind: 'alone' };

export function* solveField(question: FieldQuestion): Generator<number, FieldAnswer, void> {
  const { section } = question;
  const { x0, x1, y0, y1 } = section.frame;
  if (new Set(section.conductors).size < 2 || x1 <= x0 || y1 <= y0) return { kind: 'alone' };
  const contact = contactOf(section);
  if (contact !== null) return { kind: 'touching', ...contact };
  yield 0;
  const meshed = meshOf(section, question.fineness);
  yield 0.1;
  const quick = yield* solvedOn(meshed, section, null, 0.1, 0.2);
  if (question.resolutions === 1) {
    const { mesh, map } = meshed;
    const states = yield* statesOf(quick.system, question, quick.matrix, quick.units, 0.25);
    return {
      kind: 'solved',
      section,
      mesh,
      map,
      capacitance: quick.matrix,
      off: null,
      states,
      coarser: null,
    };
  }
  const { map, system: coarse, units: first, matrix: a } = yield* betterWhereAsked(quick, section);
  const before = yield* statesOf(coarse, question, a, first, 0.3, 0.35);
  const coarser: SolvedField = {
    ...{ kind: 'solved', section, mesh: coarse.mesh, map, capacitance: a, off: null, coarser: null },
    states: before,
  };
  const finer = refined(coarse.mesh, map);
  yield 0.35;
  const fine = new System(finer.mesh, section.axis);
  const near = first.map((potential) => prolonged(potential, finer));
  const second = yield* unitFields(fine, section, near, 0.4, 0.8);
  const b = symmetric(matrixOf(fine, section, second));
  const { matrix, off } = extrapolated(a, b);
  const states = yield* statesOf(fine, question, b, second, 0.8);
  return { kind: 'solved', section, mesh: finer.mesh, map, capacitance: matrix, off, states, coarser };
}

interface OnOneMesh extends Meshed {
  readonly system: System;
  readonly units: readonly Float64Array[];
  readonly matrix: Square;
}

function* solvedOn(
  meshed: Meshed,
  section: FieldSection,
  near: readonly Float64Array[] | null,
  from: number,
  to: number,
): Generator<number, OnOneMesh, void> {
  const system = new System(meshed.mesh, section.axis);
  const units = yield* unitFields(system, section, near, from, to);
  return { ...meshed, system, units, matrix: symmetric(matrixOf(system, section, units)) };
}

/** The mesh made finer where the field breaks on it, before the second resolution makes all of it finer. */
function* betterWhereAsked(found: OnOneMesh, section: FieldSection): Generator<number, OnOneMesh, void> {
  const which = tooCoarse(found.mesh, found.units, couplingsOf(found.matrix), section.axis);
  if (which.length === 0) return found;
  const meshed = found.divided(which);
  yield 0.25;
  const near = found.units.map((unit) => carriedOver(meshed.mesh, unit));
  return yield* solvedOn(meshed, section, near, 0.25, 0.3);
}

function* statesOf(
  system: System,
  { section, states }: FieldQuestion,
  matrix: Square,
  units: readonly Float64Array[],
  from: number,
  to = 1,
): Generator<number, readonly FieldState[], void> {
  const found: FieldState[] = [];
  const before = atRest(system, section);
  units.forEach((unit, k) => before.keep(unitVolts(section, k), unit));
  for (const [i, asked] of states.entries()) {
    yield from + ((to - from) * i) / states.length;
    found.push(stateOf(system, section, asked, matrix, units, before));
  }
  return found;
}

/** A volt on each conductor in turn. */
function* unitFields(
  system: System,
  section: FieldSection,
  near: readonly Float64Array[] | null,
  from: number,
  to: number,
): Generator<number, readonly Float64Array[], void> {
  const found: Float64Array[] = [];
  const before = atRest(system, section);
  const { length } = section.conductors;
  for (let k = 0; k < length; k++) {
    yield from + ((to - from) * k) / length;
    const volts = unitVolts(section, k);
    const isLast = k > 0 && k === length - 1;
    found.push(system.solve(volts, isLast || near === null ? before.near(volts) : near[k]!));
    before.keep(volts, found[k]!);
  }
  return found;
}

/** With every electrode at one volt there is a volt everywhere: the last conductor follows from all others. */
function atRest(system: System, { electrodes }: FieldSection): SolvedBefore {
  const before = new SolvedBefore(system.mesh.x.length);
  before.keep(new Float64Array(electrodes.length).fill(1), new Float64Array(system.mesh.x.length).fill(1));
  return before;
}

const unitVolts = ({ electrodes }: FieldSection, k: number): Float64Array =>
  Float64Array.from(electrodes, (conductor) => (conductor === k ? 1 : 0));

function matrixOf(system: System, section: FieldSection, units: readonly Float64Array[]): Square {
  const size = section.conductors.length;
  const value = new Float64Array(size * size);
  units.forEach((potential, column) => {
    conductorCharges(system, section, potential).forEach((charge, row) => {
      value[row * size + column] = charge;
    });
  });
  return { size, value };
}

function conductorCharges(
  system: System,
  { electrodes, conductors }: FieldSection,
  potential: Float64Array,
): Float64Array {
  const found = new Float64Array(conductors.length);
  system.electrodeCharges(potential, electrodes.length).forEach((charge, i) => {
    found[electrodes[i]!]! += charge;
  });
  return found;
}

function stateOf(
  system: System,
  section: FieldSection,
  { electrodes: asked, floating }: AskedState,
  matrix: Square,
  units: readonly Float64Array[],
  before: SolvedBefore,
): FieldState {
  const floats = (electrode: number) => floating.indexOf(section.electrodes[electrode]!);
  const electrodes = asked.map((volts, i) => (floats(i) === -1 ? volts : 0));
  const potential = system.solve(electrodes, before.near(electrodes));
  before.keep(electrodes, potential);
  const charges = conductorCharges(system, section, potential);
  floatingPotentials(matrix, floating, charges).forEach((volts, f) => {
    const unit = units[floating[f]!]!;
    for (let i = 0; i < potential.length; i++) potential[i]! += volts * unit[i]!;
    section.electrodes.forEach((conductor, i) => {
      if (conductor === floating[f]) electrodes[i] = volts;
    });
  });
  const all = system.electrodeCharges(potential, section.electrodes.length);
  return { potential, electrodes, charges: all, surface: system.charges(potential) };
}

/** The potential of the coarse mesh at the points of the finer one. */
function prolonged(potential: Float64Array, { mesh, from }: Refined): Float64Array {
  const found = new Float64Array(mesh.x.length);
  found.set(potential);
  for (let i = 0; i < from.length; i += 2) {
    found[potential.length + i / 2] = (potential[from[i]!]! + potential[from[i + 1]!]!) / 2;
  }
  return found;
}

/** Largest part by which a capacitance between two conductors may be off, of those that are no trifle; null: not known. */
export function relativeError({ capacitance, off }: SolvedField): number | null {
  if (off === null) return null;
  const parts = couplingsOf(capacitance).map(({ between: [i, k], value }) => at(off, i, k) / value);
  return Math.max(0, ...parts);
}
