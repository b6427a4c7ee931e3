// Field lines through air, from solid or metal to solid or metal: how long each is and what voltage it carries. The
// direction is the mean over the air triangles round each point, so that a line does not stagger along their sides.
// Begun at every triangle of air beside something; a line that does not arrive is left out.

import { AIR } from '#field/mesh/body-map.ts';
import { weights, type FieldView } from './field-view.ts';

export interface AirLine {
  /** Points of the line, mm: x0, y0, x1, y1, … */
  readonly points: readonly number[];
  readonly length: number;
  readonly volts: number;
  /** Bodies at its two ends; `AIR` at the edge of the frame. */
  readonly ends: readonly [number, number];
}

const MOST_STEPS = 600;

/** `isWorth` is asked before a line is drawn: field strength where it begins, V/mm. */
export function* airLines(view: FieldView, isWorth: (strength: number) => boolean): Generator<AirLine> {
  const { mesh } = view.field;
  const smooth = smoothed(view);
  for (let t = 0; t < mesh.body.length; t++) {
    if (mesh.body[t] !== AIR || !isWorth(view.strengthIn(t))) continue;
    const besides = [0, 1, 2].some((i) => {
      const across = view.across[3 * t + i]!;
      return across === -1 || mesh.body[across] !== AIR;
    });
    if (!besides) continue;
    const [x, y] = middleOf(view, t);
    const [there, back] = [walk(view, smooth, t, x, y, 1), walk(view, smooth, t, x, y, -1)];
    if (there === null || back === null) continue;
    const points = [...back.points.toReversed(), [x, y] as const, ...there.points].flat();
    yield {
      points,
      length: there.length + back.length,
      volts: Math.abs(there.volts - back.volts),
      ends: [back.end, there.end],
    };
  }
}

interface Walked {
  readonly points: (readonly [number, number])[];
  readonly length: number;
  /** Potential where it ends. */
  readonly volts: number;
  readonly end: number;
}

/** Along the field (1) or against it (-1), to the end of the air. */
function walk(
  view: FieldView,
  smooth: Float64Array,
  from: number,
  x0: number,
  y0: number,
  way: 1 | -1,
): Walked | null {
  const { mesh } = view.field;
  const points: (readonly [number, number])[] = [];
  let [t, x, y, length, entered] = [from, x0, y0, 0, -1];
  for (let step = 0; step < MOST_STEPS; step++) {
    const direction = directionAt(view, smooth, t, x, y);
    if (direction === null) return null;
    const out = leave(view, t, x, y, way * direction[0], way * direction[1], entered);
    if (out === null) return null;
    length += Math.hypot(out.x - x, out.y - y);
    points.push([out.x, out.y]);
    [x, y] = [out.x, out.y];
    const next = view.across[3 * t + out.side]!;
    if (next === -1) {
      return { points, length, volts: view.voltsIn(t, x, y), end: metalBeside(view, t, out.side) };
    }
    if (mesh.body[next] !== AIR) {
      return { points, length, volts: view.voltsIn(t, x, y), end: mesh.body[next]! };
    }
    entered = [0, 1, 2].find((side) => view.across[3 * next + side] === t) ?? -1;
    t = next;
  }
  return null;
}

/** Where a straight way leaves a triangle, and through which side; not through the one it came in by. */
function leave(
  { field: { mesh } }: FieldView,
  t: number,
  x: number,
  y: number,
  dx: number,
  dy: number,
  entered: number,
): { readonly x: number; readonly y: number; readonly side: number } | null {
  let best = Infinity;
  let side = -1;
  for (let i = 0; i < 3; i++) {
    if (i === entered) continue;
    const [a, b] = [mesh.triangles[3 * t + i]!, mesh.triangles[3 * t + ((i + 1) % 3)]!];
    const [ex, ey] = [mesh.x[b]! - mesh.x[a]!, mesh.y[b]! - mesh.y[a]!];
    // the inside lies to the left of every side: outward is to the right
    const outward = dx * ey - dy * ex;
    if (outward <= 0) continue;
    const far = ((mesh.x[a]! - x) * ey - (mesh.y[a]! - y) * ex) / outward;
    if (far < best) [best, side] = [Math.max(0, far), i];
  }
  return side === -1 ? null : { x: x + best * dx, y: y + best * dy, side };
}

function directionAt(
  { field: { mesh } }: FieldView,
  smooth: Float64Array,
  t: number,
  x: number,
  y: number,
): readonly [number, number] | null {
  const share = weights(mesh, t, x, y);
  let [dx, dy] = [0, 0];
  for (let i = 0; i < 3; i++) {
    const point = mesh.triangles[3 * t + i]!;
    dx += share[i]! * smooth[2 * point]!;
    dy += share[i]! * smooth[2 * point + 1]!;
  }
  const size = Math.hypot(dx, dy);
  return size > 0 ? [dx / size, dy / size] : null;
}

/** Field at each point: the mean over the triangles of air round it, weighed by their area. */
function smoothed({ field: { mesh }, vector }: FieldView): Float64Array {
  const { x, y, triangles, body } = mesh;
  const sum = new Float64Array(2 * x.length);
  for (let t = 0; t < body.length; t++) {
    if (body[t] !== AIR) continue;
    const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
    const area = (x[b]! - x[a]!) * (y[c]! - y[a]!) - (x[c]! - x[a]!) * (y[b]! - y[a]!);
    for (const point of [a, b, c]) {
      sum[2 * point]! += area * vector[2 * t]!;
      sum[2 * point + 1]! += area * vector[2 * t + 1]!;
    }
  }
  return sum;
}

function middleOf({ field: { mesh } }: FieldView, t: number): readonly [number, number] {
  const [a, b, c] = [mesh.triangles[3 * t]!, mesh.triangles[3 * t + 1]!, mesh.triangles[3 * t + 2]!];
  return [(mesh.x[a]! + mesh.x[b]! + mesh.x[c]!) / 3, (mesh.y[a]! + mesh.y[b]! + mesh.y[c]!) / 3];
}

/** The metal behind an outer side; the frame has none. */
function metalBeside({ field: { mesh, map } }: FieldView, t: number, side: number): number {
  const [a, b] = [mesh.triangles[3 * t + side]!, mesh.triangles[3 * t + ((side + 1) % 3)]!];
  for (const point of [a, b]) {
    if (mesh.electrode[point] === -1) continue;
    const code = map.at(mesh.x[point]!, mesh.y[point]!);
    if (code !== AIR) return code >> 1;
  }
  return AIR;
}
