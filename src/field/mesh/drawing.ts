// What the outline is drawn with: points, the lines they have to keep, how fine it has to be. Millimetres.

import { inMm } from '#units/quantity.ts';

import type { Disc } from '#field/field-section.ts';
import type { BodyMap } from './body-map.ts';
import type { PointSet } from './point-set.ts';
import type { SizeTree } from './size-tree.ts';

export interface Fineness {
  /** Points round a wire that stands about as far from the next metal as it is thick. */
  readonly around: number;
  /** How wide the squares between may be, in distances between points on wires and edges. */
  readonly spacing: number;
}

/** Lines between two points that have to be edges of triangles; `circle` -1 for straight ones. */
export interface Lines {
  readonly from: number[];
  readonly to: number[];
  readonly circle: number[];
}

export interface Drawing {
  readonly points: PointSet;
  readonly lines: Lines;
  readonly tree: SizeTree;
  readonly map: BodyMap;
  readonly fineness: Fineness;
}

export function addLine(lines: Lines, from: number, to: number, circle: number): void {
  if (from === -1 || to === -1 || from === to) return;
  lines.from.push(from);
  lines.to.push(to);
  lines.circle.push(circle);
}

/** A wire and the next metal are at least its two covers and about a ply or two apart, mm. */
const PLIES_BETWEEN = 0.06;

/** More points where the wire is thick for what lies between it and the next metal; a multiple of four. */
export function countAround({ around }: Fineness, disc: Disc): number {
  const cover = inMm(disc.overall) / 2 - inMm(disc.metal) / 2;
  const apart = 2 * cover + PLIES_BETWEEN;
  const share = Math.min(2, Math.max(0.6, 0.75 * Math.sqrt(inMm(disc.metal) / 2 / apart)));
  return 4 * Math.ceil((around * share) / 4);
}

/** The four main directions are met exactly: there wires touch. */
export function direction(i: number, count: number): readonly [number, number] {
  const angle = (2 * Math.PI * i) / count;
  const round = (value: number): number => Math.round(value * 1e12) / 1e12;
  return [round(Math.cos(angle)), round(Math.sin(angle))];
}
