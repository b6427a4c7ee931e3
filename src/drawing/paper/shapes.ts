// The few figures that marks are made of again and again: a chip for words, an arrow's head, a straight line.

import type { AreaMark, ChipMark, LineMark, Point, Stroke } from './mark.ts';
import type { Paper } from './paper.ts';

export const CHIP_SIZE = 12.5;

export interface ChipLook {
  readonly fill: string;
  readonly rim: string;
  readonly color: string;
  readonly size?: number;
  readonly dash?: readonly number[];
}

export const chipWidth = ({ measure }: Pick<Paper, 'measure'>, words: string, size = CHIP_SIZE): number =>
  measure(words, size, true) + size;

export const chipHeight = (size = CHIP_SIZE): number => size * 1.65;

export function chip(
  paper: Pick<Paper, 'measure'>,
  role: string,
  at: Point,
  words: string,
  look: ChipLook,
): ChipMark {
  const { size = CHIP_SIZE, ...colours } = look;
  const [width, height] = [chipWidth(paper, words, size), chipHeight(size)];
  return { kind: 'chip', role, at, words, size, width, height, ...colours };
}

export const line = (role: string, from: Point, to: Point, stroke: Stroke): LineMark => ({
  kind: 'line',
  role,
  runs: [[from, to]],
  stroke,
});

/** A head whose tip is at `tip`, pointing along `way` (a unit vector). */
export function arrowHead(role: string, [x, y]: Point, [dx, dy]: Point, color: string): AreaMark {
  const [long, half] = [7, 3];
  const [bx, by] = [x - dx * long, y - dy * long];
  const loop: readonly Point[] = [
    [x, y],
    [bx - dy * half, by + dx * half],
    [bx + dy * half, by - dx * half],
  ];
  return { kind: 'area', role, loops: [loop], fill: color, stroke: null };
}

export const rectangle = (left: number, top: number, right: number, bottom: number): readonly Point[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];
