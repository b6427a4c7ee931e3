// Builds made by hand for tests: one chamber of 10 mm by 5 mm unless changed, flanges and tube 1 mm, lengths in mm.
// The stuffs are 0 moulding, 1 block, 2 tape, 3 wire cover, 4 sleeve, 5 closed joint.

import type {
  Build,
  BuildScreenLayer,
  BuildTapeLayer,
  BuildWindingLayer,
  BuildWire,
  Lay,
} from '#solver/section/build.ts';
import type { Rect, Region } from '#solver/section/section.ts';
import { inMm, mm, nm } from '#units/quantity.ts';

export const LEAST = mm(0.4);

export const made = (layers: Build['layers'], change: Partial<Build> = {}): Build => ({
  height: mm(5),
  wall: { kind: 'moulded', thickness: mm(1) },
  flange: mm(1),
  split: false,
  moulding: 0,
  chambers: [mm(10)],
  dividers: [],
  outerGap: mm(0.5),
  wrap: null,
  layers: layers.map((layer, index) => ({ ...layer, index })),
  lays: [],
  potted: false,
  closedJoint: 5,
  ...change,
});

export const margin = (width: number, filled = true, height: number | null = null) => ({
  width: mm(width),
  filled,
  height: height === null ? null : mm(height),
  moulded: false,
  turn: mm(0.15),
  stuff: 1,
});

export const margins = (left: number, right = left, filled = true) => ({
  left: margin(left, filled),
  right: margin(right, filled),
});

export const wire = (overall: number, change: Partial<BuildWire> = {}): BuildWire => ({
  overall: mm(overall),
  metal: null,
  cover: null,
  bare: false,
  slumps: true,
  ...change,
});

export const strongCover = { thickness: mm(0.1), plies: null, stuff: 3 };

/** One row of wire of 0.5 mm, spread over its width. */
export const winding = (circuit: string, change: Partial<BuildWindingLayer> = {}): BuildWindingLayer => ({
  kind: 'winding',
  index: 0,
  chamber: 0,
  margins: margins(0),
  winding: circuit,
  circuit,
  turns: 5,
  strands: 1,
  spread: true,
  startsAt: 'left',
  wire: wire(0.5),
  anchored: false,
  extent: null,
  ...change,
});

export const tape = (plies: number, change: Partial<BuildTapeLayer> = {}): BuildTapeLayer => ({
  kind: 'tape',
  index: 0,
  chamber: 0,
  margins: margins(0),
  plies,
  plyThickness: mm(0.1),
  stuff: 2,
  inset: { left: nm(0), right: nm(0) },
  cemented: false,
  turnUp: nm(0),
  ...change,
});

export const screen = (change: Partial<BuildScreenLayer> = {}): BuildScreenLayer => ({
  kind: 'screen',
  index: 0,
  chamber: 0,
  margins: margins(0),
  circuit: null,
  id: 'screen',
  thickness: mm(0.05),
  overlap: null,
  inset: { left: nm(0), right: nm(0) },
  ...change,
});

/** A bare lead that leaves its layer at the left by the slot. */
export const lay = (circuit: string, layer: number, change: Partial<Lay> = {}): Lay => ({
  name: `${circuit} start`,
  group: `${circuit} start`,
  circuit,
  layer,
  at: 'left',
  exit: 'left',
  way: 'slot',
  wire: wire(0.5),
  sleeve: null,
  crossTape: 0,
  upTo: null,
  kind: 'lead',
  apart: null,
  ...change,
});

export const sleeve = (wall: number, into: number) => ({ wall: mm(wall), into: mm(into), stuff: 4 });

/** Corners in millimetres. */
export const cornersOf = (r: Rect): readonly number[] => [inMm(r.x0), inMm(r.y0), inMm(r.x1), inMm(r.y1)];

export const allCorners = (regions: readonly Region[], which: (region: Region) => boolean) =>
  regions.filter(which).map(cornersOf);
