// The places of one build where a discharge in air would start: field lines through air, what each carries and holds, the
// worst of every two things that face each other. Gaps are told by what lies at their two ends, so that a winding
// against its tape is one place and not a hundred.

import type { Design } from '#model/design.ts';
import { airLines, type AirLine } from '#field/read/air-lines.ts';
import type { FieldView } from '#field/read/field-view.ts';
import { relativeDensity } from '#stress/breakdown/air.ts';
import { gapHolds } from '#stress/breakdown/paschen.ts';
import { coronaOnset } from '#stress/breakdown/peek.ts';
import { mm, nm } from '#units/quantity.ts';
import type { DrawnField } from '#judge/drawn-field/drawn-field.ts';
import type { FieldCase } from './field-cases.ts';
import type { FieldGap, GapEnd } from './field-report.ts';

/** Lines that begin in less than this part of the strongest field of the air lead to no gap that matters. */
const WEAK = 0.04;
/** Longer gaps are wide for the wire at their end: it may glow before the gap breaks down, mm. */
const WIDE = 0.5;
const MOST_GAPS = 12;

/** `coarser`: the same cases on the coarser mesh; empty where there was one alone. */
export function fieldGaps(
  design: Design,
  drawn: DrawnField,
  views: readonly FieldView[],
  coarser: readonly FieldView[],
  cases: readonly FieldCase[],
  testOf: (between: readonly [string, string]) => number | null,
): readonly FieldGap[] {
  if (drawn.section.background !== 1) return [];
  const best = new Map<string, FieldGap>();
  for (const [i, one] of cases.entries()) {
    const view = views[i]!;
    const least = WEAK * view.strongestInAir;
    for (const line of airLines(view, (strength) => strength >= least)) {
      if (line.length <= 0 || !(line.volts > 0)) continue;
      const holds = heldBy(design, drawn, view, line);
      const margin = holds.volts / line.volts;
      const key = endsKey(drawn, line);
      const before = best.get(key);
      if (before !== undefined && before.margin <= margin) continue;
      best.set(key, gapOf(drawn, line, one, holds, testOf));
    }
  }
  const worst = [...best.values()].sort((a, b) => a.margin - b.margin).slice(0, MOST_GAPS);
  return worst.map((gap) => {
    const view = coarser[cases.findIndex(({ between }) => between.join() === gap.between.join())];
    return view === undefined ? gap : { ...gap, error: errorOf(gap, view) };
  });
}

/** Half of what the two meshes differ by: with errors that fall by the square of the triangles it would be a third. */
function errorOf({ points, peak }: FieldGap, coarser: FieldView): number {
  const [first, last] = [points[0]!, points.at(-1)!];
  const voltsAt = ([x, y]: readonly [number, number], other: readonly [number, number]): number | null => {
    // the very end may lie in the sliver between a round wire and the corners of its mesh
    for (const part of [0, 0.01, 0.03]) {
      const found = coarser.at(x + part * (other[0] - x), y + part * (other[1] - y));
      if (found !== null) return found.volts;
    }
    return null;
  };
  const [a, b] = [voltsAt(first, last), voltsAt(last, first)];
  return a === null || b === null ? 1 : Math.min(1, Math.abs(Math.abs(a - b) - peak) / peak / 2);
}

interface Holds {
  readonly volts: number;
  readonly by: FieldGap['by'];
}

function heldBy(design: Design, drawn: DrawnField, view: FieldView, line: AirLine): Holds {
  const altitude = design.surroundings.altitude.value;
  const paschen = gapHolds(mm(line.length), altitude);
  const glow = line.length > WIDE ? glowVolts(drawn, view, line, relativeDensity(altitude)) : Infinity;
  return glow < paschen ? { volts: glow, by: 'peek' } : { volts: paschen, by: 'paschen' };
}

const endOf = ({ bodies }: DrawnField, body: number): GapEnd => bodies[body]?.kind ?? 'frame';
const layerOf = ({ bodies }: DrawnField, body: number): number | null => bodies[body]?.layer ?? null;

function endsKey(drawn: DrawnField, { ends: [a, b] }: AirLine): string {
  const [from, to] = [a, b].map((body) => `${endOf(drawn, body)} ${layerOf(drawn, body)}`) as [
    string,
    string,
  ];
  return from < to ? `${from} | ${to}` : `${to} | ${from}`;
}

function gapOf(
  drawn: DrawnField,
  line: AirLine,
  { between, peak }: FieldCase,
  { volts, by }: Holds,
  testOf: (between: readonly [string, string]) => number | null,
): FieldGap {
  const points = pairsOf(line.points);
  const [a, b] = line.ends;
  const margin = volts / line.volts;
  return {
    between,
    at: pointAlong(points, line.length / 2),
    points,
    length: line.length,
    peak: line.volts,
    error: null,
    holds: volts,
    margin,
    layers: [layerOf(drawn, a), layerOf(drawn, b)],
    ends: [endOf(drawn, a), endOf(drawn, b)],
    startsAt: margin * peak,
    test: testOf(between),
    by,
  };
}

/** Voltage of the line at which the wire at one of its ends begins to glow. */
function glowVolts(drawn: DrawnField, view: FieldView, line: AirLine, density: number): number {
  const { bodies } = drawn.section;
  const points = pairsOf(line.points);
  const strengthAt = ([x, y]: readonly [number, number]): number => {
    const triangle = view.triangleAt(x, y);
    return triangle === -1 ? 0 : view.strengthIn(triangle);
  };
  const inner = (i: number, k: number): readonly [number, number] => {
    const [a, b] = [points[i]!, points[k]!];
    return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  };
  const places = [inner(0, 1), inner(points.length - 1, points.length - 2)];
  const volts = line.ends.map((end, i) => {
    const body = end === -1 ? null : bodies[end]!;
    if (body?.shape !== 'disc') return Infinity;
    const strength = strengthAt(places[i]!);
    return strength > 0
      ? (line.volts * coronaOnset(nm(Math.ceil(body.overall / 2)), density)) / strength
      : Infinity;
  });
  return Math.min(...volts);
}

function pairsOf(flat: readonly number[]): readonly (readonly [number, number])[] {
  return Array.from({ length: flat.length / 2 }, (_, i) => [flat[2 * i]!, flat[2 * i + 1]!] as const);
}

function pointAlong(points: readonly (readonly [number, number])[], far: number): readonly [number, number] {
  let left = far;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const step = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (step >= left && step > 0) {
      return [a[0] + ((b[0] - a[0]) * left) / step, a[1] + ((b[1] - a[1]) * left) / step];
    }
    left -= step;
  }
  return points.at(-1)!;
}
