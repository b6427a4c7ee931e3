// A way as a pupil draws it on the section: settled on the surfaces near it, measured, and told by what it runs through.
// Millimetres. It is never corrected: what was drawn elsewhere than on a surface stays there.

import type { Section } from '#solver/section/section.ts';
import { inMm } from '#units/quantity.ts';

export type Point = readonly [number, number];

interface Solid {
  readonly kind: 'ply' | 'core' | 'other';
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** What one draws on: the solids of a section as boxes, and the columns of its flanges' faces. */
export interface Ground {
  readonly solids: readonly Solid[];
  readonly faces: readonly number[];
}

export interface DrawnWay {
  readonly points: readonly Point[];
  readonly length: number;
  /** How many separate plies it goes through from one side to the other. */
  readonly plies: number;
  readonly isOverCore: boolean;
  readonly isAtFlange: boolean;
}

/** Within this much a drawn point settles on a surface. */
const REACH = 0.1;
/** A point closer than this to a side is on it, not inside. */
const RIM = 0.005;

export const groundOf = ({ regions, chambers }: Section): Ground => ({
  solids: regions.map((region) => ({
    kind:
      region.kind === 'ply' ? 'ply' : region.kind === 'conductor' && region.of === 'core' ? 'core' : 'other',
    x0: inMm(region.x0),
    y0: inMm(region.y0),
    x1: inMm(region.x1),
    y1: inMm(region.y1),
  })),
  faces: chambers.flatMap(({ x0, x1 }) => [inMm(x0), inMm(x1)]),
});

export function drawnWay(points: readonly Point[], { solids, faces }: Ground): DrawnWay {
  const settled = withoutRepeats(points.map((point) => settle(point, solids)));
  return {
    points: settled,
    length: lengthOf(settled),
    plies: solids.filter((solid) => solid.kind === 'ply' && isCrossed(solid, settled)).length,
    isOverCore: solids.some((solid) => solid.kind === 'core' && isEntered(solid, settled)),
    isAtFlange: settled.some(([x]) => faces.some((face) => Math.abs(face - x) <= REACH)),
  };
}

export const lengthOf = (points: readonly Point[]): number =>
  points
    .slice(1)
    .reduce((sum, [x, y], i) => sum + Math.hypot(x - (points[i]?.[0] ?? x), y - (points[i]?.[1] ?? y)), 0);

/** On the nearest side of any solid in reach, both ways by themselves; else as it was drawn. */
function settle([x, y]: Point, solids: readonly Solid[]): Point {
  const near = solids.filter(
    ({ x0, x1, y0, y1 }) => x0 - REACH <= x && x <= x1 + REACH && y0 - REACH <= y && y <= y1 + REACH,
  );
  return [
    nearest(
      x,
      near.flatMap(({ x0, x1 }) => [x0, x1]),
    ),
    nearest(
      y,
      near.flatMap(({ y0, y1 }) => [y0, y1]),
    ),
  ];
}

const nearest = (value: number, sides: readonly number[]): number =>
  sides
    .filter((side) => Math.abs(side - value) <= REACH)
    .sort((a, b) => Math.abs(a - value) - Math.abs(b - value))[0] ?? value;

const withoutRepeats = (points: readonly Point[]): readonly Point[] =>
  points.filter(([x, y], i) => i === 0 || x !== points[i - 1]?.[0] || y !== points[i - 1]?.[1]);

/** It passes the middle of the ply's height within the ply, not round its end. */
const isCrossed = (ply: Solid, points: readonly Point[]): boolean =>
  points.slice(1).some((to, i) => {
    const from = points[i] ?? to;
    const [low, high] = from[1] < to[1] ? [from, to] : [to, from];
    const [middle, rise] = [(ply.y0 + ply.y1) / 2, high[1] - low[1]];
    if (rise === 0 || low[1] > middle || high[1] < middle) return false;
    const x = low[0] + ((high[0] - low[0]) * (middle - low[1])) / rise;
    return x > ply.x0 + RIM && x < ply.x1 - RIM;
  });

const isEntered = ({ x0, x1, y0, y1 }: Solid, points: readonly Point[]): boolean =>
  points.some(([x, y]) => x >= x0 - RIM && x <= x1 + RIM && y >= y0 - RIM && y <= y1 + RIM);
