// The field of a build: the drawn section solved at the voltages that the build was judged at, and what follows from it.
// Works in steps: each `yield` tells how far it is, 0 to 1.

import type { Fineness } from '#field/mesh/drawing.ts';
import { at, withoutFloating, type Square } from '#field/solve/capacitance.ts';
import { type FieldAnswer, relativeError, solveField, type SolvedField } from '#field/solve/solve-field.ts';
import { FieldView } from '#field/read/field-view.ts';
import type { Design } from '#model/design.ts';
import { bookOf } from '#books/book-of.ts';
import { soldIn } from '#judge/assume/sold-in.ts';
import type { Stressed } from '#judge/study/stress-report.ts';
import { windingCapacitances as estimated } from '#stress/current/winding-capacitance.ts';
import { nm, type Nm } from '#units/quantity.ts';
import { divisionOf } from './field-division.ts';
import { drawnField, type DrawnField } from '#judge/drawn-field/drawn-field.ts';
import { fieldCases, type FieldCase } from './field-cases.ts';
import { fieldGaps } from './field-gaps.ts';
import type { FieldCapacitance, FieldReport, NoField, ReportedCase } from './field-report.ts';
import { meanTurn, middleHeight } from '#judge/drawn-field/mean-turn.ts';
import { switchingCases, switchingCharges } from './field-switching.ts';
import { windingCapacitances, windingStates } from './field-windings.ts';
import { reportedCase } from './reported-case.ts';
import { VACUUM } from './vacuum.ts';

export interface FieldOptions {
  readonly fineness: Fineness;
  readonly resolutions: 1 | 2;
  /** Turned round the axis of a round tube. */
  readonly turned: boolean;
}

/** A first look; good to some parts in a hundred, which it cannot say of itself. */
export const COARSE: FieldOptions = { fineness: { around: 8, spacing: 3 }, resolutions: 1, turned: false };
export const FINE: FieldOptions = { fineness: { around: 18, spacing: 2 }, resolutions: 2, turned: false };

/** What the field was solved on, for whoever draws it or asks it at a point. */
export interface FoundField {
  readonly report: FieldReport;
  readonly drawn: DrawnField;
  readonly solved: SolvedField | null;
  readonly cases: readonly FieldCase[];
  /** Of each case. */
  readonly views: readonly FieldView[];
}

const MOST_TURNS = 2500;

export function* fieldOf(
  asFiled: Design,
  study: Stressed,
  { fineness, resolutions, turned }: FieldOptions,
): Generator<number, FoundField, void> {
  const design = soldIn(asFiled, bookOf(asFiled));
  const section = study.sections[0];
  const turns = section === undefined ? [] : (study.turns.get(section.name) ?? []);
  const axis = turned ? axisOf(design) : null;
  const unsolved = (drawn: DrawnField, none: NoField): FoundField => {
    const report = emptyReport(design, study, drawn, none);
    return { report, drawn, solved: null, cases: [], views: [] };
  };
  if (section === undefined || turns.length > MOST_TURNS) {
    const none = { kind: 'too-many-turns', turns: turns.length, most: MOST_TURNS } as const;
    return unsolved(drawnField(design, section ?? noSection(), [], axis), none);
  }
  const drawn = drawnField(design, section, turns, axis);
  const cases = fieldCases(design, drawn, study.stress.pairs);
  const switching = switchingCases(design, drawn);
  // a first look is for the picture
  const windings = resolutions === 1 ? [] : windingStates(drawn);
  const states = [...cases, ...switching, ...windings];
  const answer = yield* solveField({ section: drawn.section, states, fineness, resolutions });
  if (answer.kind !== 'solved') return unsolved(drawn, noField(drawn, answer));
  const counts = { switching: switching.length, windings: windings.length };
  return yield* reported({ design, study, drawn, answer, cases, counts });
}

/** Why there is none. */
const noField = ({ section }: DrawnField, answer: Exclude<FieldAnswer, { kind: 'solved' }>): NoField =>
  answer.kind === 'alone'
    ? { kind: 'alone' }
    : {
        kind: 'touching',
        between: answer.between.map((i) => section.conductors[i]!) as [string, string],
        at: [answer.x / 1e6, answer.y / 1e6],
      };

interface Solved {
  readonly design: Design;
  readonly study: Stressed;
  readonly drawn: DrawnField;
  readonly answer: SolvedField;
  readonly cases: readonly FieldCase[];
  /** How many states follow the cases: those of switching, then those of windings. */
  readonly counts: { readonly switching: number; readonly windings: number };
}

function* reported({
  design,
  study,
  drawn,
  answer,
  cases,
  counts,
}: Solved): Generator<number, FoundField, void> {
  yield 0.97;
  const testOf = (between: readonly [string, string]) =>
    study.verdict.pairs.find((pair) => pair.between.join() === between.join())?.required?.test?.peak ?? null;
  const views = cases.map((_, i) => new FieldView(answer, answer.states[i]!));
  yield 0.98;
  const { coarser, capacitance } = answer;
  const before = coarser === null ? [] : cases.map((_, i) => new FieldView(coarser, coarser.states[i]!));
  const gaps = fieldGaps(design, drawn, views, before, cases, testOf);
  yield 0.99;
  const { floating } = drawn;
  const floated = withoutFloating(capacitance, floating);
  const atWindings = cases.length + counts.switching;
  const report: FieldReport = {
    ...emptyReport(design, study, drawn, null),
    capacitances: capacitancesOf(design, drawn, answer, capacitance),
    effective: capacitancesOf(design, drawn, answer, floated, floating),
    windings: counts.windings === 0 ? [] : windingCapacitances(design, drawn, answer, atWindings),
    cases: cases.map((one, i): ReportedCase => reportedCase(drawn, views[i]!, one)),
    gaps,
    inceptionPeak: gaps[0]?.startsAt ?? null,
    division: gaps[0] === undefined ? [] : divisionOf(drawn, views, cases, gaps[0]),
    switching: switchingCharges(design, drawn, answer, cases.length),
    error: relativeError(answer),
    points: answer.mesh.x.length,
  };
  return { report, drawn, solved: answer, cases, views };
}

function emptyReport(design: Design, study: Stressed, drawn: DrawnField, none: NoField | null): FieldReport {
  return {
    format: 'layerwright-field/1',
    title: design.title,
    section: study.sections[0]?.name ?? 'plain',
    none,
    turned: drawn.section.axis !== null,
    capacitances: [],
    effective: [],
    windings: [],
    cases: [],
    gaps: [],
    inceptionPeak: null,
    division: [],
    switching: [],
    error: null,
    altitude: design.surroundings.altitude.value,
    permittivities: drawn.permittivities,
    points: 0,
  };
}

/** Only a round tube has an axis. */
function axisOf({ former }: Design): Nm | null {
  return former.tube?.shape === 'round' ? nm(-Math.round(former.tube.width.value / 2)) : null;
}

function noSection(): Parameters<typeof drawnField>[1] {
  throw new Error('a build has at least its plain section');
}

/** Between every two owners, those of one name together. */
function capacitancesOf(
  design: Design,
  drawn: DrawnField,
  { off, section }: SolvedField,
  matrix: Square,
  without: readonly number[] = [],
): readonly FieldCapacitance[] {
  const owners = [...new Set(section.conductors.filter((_, i) => !without.includes(i)))];
  const facing = estimated(design);
  return owners.flatMap((a, i) =>
    owners.slice(i + 1).map((b): FieldCapacitance => {
      const value = Math.max(0, -sumBetween(section, matrix, a, b));
      const error = off === null ? null : value > 0 ? Math.min(1, sumBetween(section, off, a, b) / value) : 0;
      const estimate = estimateOf(facing, a, b);
      const between = [a, b] as const;
      if (section.axis !== null)
        return { between, farads: value * VACUUM * 1e-3, perMetre: null, error, meanTurn: null, estimate };
      const turn = meanTurn(design, middleHeight(drawn, [a, b])).millimetres;
      const perMetre = value * VACUUM;
      return { between, farads: perMetre * turn * 1e-3, perMetre, error, meanTurn: turn, estimate };
    }),
  );
}

function sumBetween({ conductors }: SolvedField['section'], of: Square, a: string, b: string): number {
  let total = 0;
  conductors.forEach((one, i) =>
    conductors.forEach((other, k) => {
      if (one === a && other === b) total += at(of, i, k);
    }),
  );
  return total;
}

function estimateOf(facing: ReturnType<typeof estimated>, a: string, b: string): number | null {
  const own = facing.filter(({ between }) => between.includes(a) && between.includes(b));
  return own.length === 0 ? null : own.reduce((total, { farads }) => total + farads, 0);
}
