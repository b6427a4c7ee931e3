// What a path is short of, drawn on beyond one of its ends to the place that would do: a margin wider by so much.

import type { Shortfall } from '#drawing/scene/scene.ts';
import type { PathLeg } from '#judge/verdict/path.ts';
import type { ChosenPath } from './chosen-path.ts';
import type { Point } from '#drawing/scene/outline.ts';

/** From the first chamber's left face to the last one's right, mm. */
export type Width = readonly [number, number];

/** A millionth of a millimetre is the unit of every length. */
const LEAST_MM = 5e-7;

export function shortfallOf({ legs, length, required }: ChosenPath, width: Width): Shortfall | null {
  if (required === null || required - length <= LEAST_MM) return null;
  // a margin mends no way through plies or over the core, nor a contact
  if (length === 0 || legs.some(({ kind, plies }) => kind === 'over' || plies > 0)) return null;
  const counted = legs.filter((leg) => leg.length > 0);
  const [first, last] = [counted[0] ?? legs[0], counted.at(-1) ?? legs.at(-1)];
  if (first === undefined || last === undefined) return null;
  const missing = required - length;
  const { from, way } = levelEnd(first, last) ?? inward(last.to, width);
  const x = Math.min(width[1], Math.max(width[0], from[0] + way * missing));
  const isPlace = missing <= length && Math.abs(Math.abs(x - from[0]) - missing) <= LEAST_MM;
  return x === from[0] ? null : { from, to: [x, from[1]], missing, isPlace };
}

interface End {
  readonly from: Point;
  /** 1 to the right, -1 to the left. */
  readonly way: number;
}

/** The end whose leg runs along the axis, the shorter of the two: that is the margin to widen. */
function levelEnd(first: PathLeg, last: PathLeg): End | null {
  const ends = [
    { leg: last, from: last.to, way: Math.sign(last.to[0] - last.from[0]) },
    { leg: first, from: first.from, way: Math.sign(first.from[0] - first.to[0]) },
  ].filter(({ leg, way }) => way !== 0 && leg.from[1] === leg.to[1]);
  const shortest = [...ends].sort((a, b) => a.leg.length - b.leg.length)[0];
  return shortest ?? null;
}

/** No leg along the axis: what stands at the end would have to withdraw from the nearer flange. */
function inward(from: Point, width: Width): End {
  return { from, way: from[0] < (width[0] + width[1]) / 2 ? 1 : -1 };
}
