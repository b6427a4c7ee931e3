// What is on the paper, as plain data: each mark in pixels of its paper, y downward, with its colours. Three writers put
// marks where they are seen (canvas, SVG, DXF); none of them knows what a transformer is, and no mark knows a writer.

import type { Hatch } from './hatches.ts';

export type Point = readonly [number, number];

export interface Stroke {
  readonly color: string;
  readonly width: number;
  readonly dash?: readonly number[];
}

/** A colour, a hatch on its ground, or nothing. */
export type Fill = string | Hatch | null;

export type Mark = AreaMark | LineMark | CircleMark | WordsMark | ChipMark | StampMark;

interface Common {
  /** What it is: `core`, `path`, `turns P`. Names the DXF layer and the node. */
  readonly role: string;
  /** From 0 to 1; 1 where left out. */
  readonly opacity?: number;
}

/** A filled figure with one outline; holes run the other way round. */
export interface AreaMark extends Common {
  readonly kind: 'area';
  readonly loops: readonly (readonly Point[])[];
  readonly fill: Fill;
  readonly stroke: Stroke | null;
}

/** Open lines that share one stroke. */
export interface LineMark extends Common {
  readonly kind: 'line';
  readonly runs: readonly (readonly Point[])[];
  readonly stroke: Stroke;
}

/** Upright ellipses count as circles: a stretched drawing has them. */
export interface CircleMark extends Common {
  readonly kind: 'circle';
  readonly at: Point;
  readonly rx: number;
  readonly ry: number;
  /** The radius of the thing, where what is drawn gives way to the width of a rim. */
  readonly radius?: number;
  readonly fill: Fill;
  readonly stroke: Stroke | null;
}

export type Align = 'left' | 'center' | 'right';

export interface WordsMark extends Common {
  readonly kind: 'words';
  /** Middle of the line's height, and where `align` says. */
  readonly at: Point;
  readonly words: string;
  readonly size: number;
  readonly color: string;
  readonly bold?: boolean;
  readonly align?: Align;
}

/** Words in a box with its middle at `at`. */
export interface ChipMark extends Common {
  readonly kind: 'chip';
  readonly at: Point;
  readonly words: string;
  readonly size: number;
  readonly width: number;
  readonly height: number;
  readonly fill: string;
  readonly rim: string;
  readonly color: string;
  readonly dash?: readonly number[];
}

/** The same small marks, drawn round 0, 0, at many places; thousands cost what ten do. */
export interface StampMark extends Common {
  readonly kind: 'stamp';
  readonly marks: readonly Exclude<Mark, StampMark>[];
  readonly at: readonly Point[];
}
