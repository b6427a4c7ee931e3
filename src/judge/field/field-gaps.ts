// The places of one build where a discharge in air would start: field lines through air, what each carries and holds, the
// worst of every two things that face each other. Gaps are told by what lies at their two ends, so that a winding
// against its tape is one place and not a hundred.

import type { Design } from '#model/design.ts';
import { airLines, type AirLine } from '#field/read/air-lines.ts';
import { FieldView } from '#field/read/field-view.ts';
import type { SolvedField } from '#field/solve/solve-field.ts';
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

export function fieldGaps(
  design: Design,
  drawn: DrawnField,
  field: SolvedField,
  cases: readonly FieldCase[],
  testOf: (between: readonly [string, string]) => number | null,
): readonly FieldGap[] {
  if (drawn.section.background !== 1) return [];
  const best = new Map<string, FieldGap>();
  for (const [i, one] of cases.entries()) {
    const view = new FieldView(field, field.states[i]!);
    const least = WEAK * strongestInAir(view);
    for (const line of airLines(view, (strength) => strength >= least)) {
      const gap = gapOf(design, drawn, view, line, one, testOf);
      if (gap === null) continue;
      const key = gap.ends
        .map((end, k) => `${end} ${gap.layers[k]}`)
        .sort()
        .join(' | ');
      const before = best.get(key);
      if (before === undefined || gap.margin < before.margin) best.set(key, gap);
    }
  }
  return [...best.values()].sort((a, b) => a.margin - b.margin).slice(0, MOST_GAPS);
}

/** Of the triangles of air, the fifth strongest of a thousand: the very edge of a foil is stronger without end. */
export function strongestInAir(view: FieldView): number {
  const { body } = view.field.mesh;
  const all: number[] = [];
  body.forEach((one, t) => {
    if (one === -1) all.push(view.strengthIn(t));
  });
  all.sort((a, b) => b - a);
  return all[Math.floor(all.length / 200)] ?? 0;
}

function gapOf(
  design: Design,
  drawn: DrawnField,
  view: FieldView,
  line: AirLine,
  { between, peak }: FieldCase,
  testOf: (between: readonly [string, string]) => number | null,
): FieldGap | null {
  const length = mm(line.length);
  if (length <= 0 || !(line.volts > 0)) return null;
  const altitude = design.surroundings.altitude.value;
  const paschen = gapHolds(length, altitude);
  const glow = line.length > WIDE ? glowVolts(drawn, view, line, relativeDensity(altitude)) : Infinity;
  const holds = Math.min(paschen, glow);
  const margin = holds / line.volts;
  const points = pairsOf(line.points);
  const ends = line.ends.map((body) => (body === -1 ? null : drawn.bodies[body]!));
  const of = (i: 0 | 1): GapEnd => ends[i]?.kind ?? 'frame';
  return {
    between,
    at: pointAlong(points, line.length / 2),
    points,
    length: line.length,
    peak: line.volts,
    holds,
    margin,
    layers: [ends[0]?.layer ?? null, ends[1]?.layer ?? null],
    ends: [of(0), of(1)],
    startsAt: margin * peak,
    test: testOf(between),
    by: glow < paschen ? 'peek' : 'paschen',
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
