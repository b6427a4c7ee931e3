// Sections drawn by hand for tests: rectangles in millimetres, two conductors `a` and `b`, one moulding.

import { nm, mm } from '#units/quantity.ts';
import type { ConductorRegion, Rect, Region, Section, SolidRegion } from '#solver/section/section.ts';

type Corners = readonly [x0: number, y0: number, x1: number, y1: number];

const rectOf = ([x0, y0, x1, y1]: Corners): Rect => ({ x0: mm(x0), y0: mm(y0), x1: mm(x1), y1: mm(y1) });

export const metal = (conductor: string, corners: Corners): ConductorRegion => ({
  kind: 'conductor',
  ...rectOf(corners),
  conductor,
  of: 'winding',
  layer: null,
  bare: true,
  crossing: false,
  strippedLead: false,
  stretched: false,
});

/** Solids of one body have no joint between them. */
export const solid = (corners: Corners, body = 0, change: Partial<SolidRegion> = {}): SolidRegion => ({
  kind: 'moulding',
  ...rectOf(corners),
  body,
  stuff: 0,
  layer: null,
  ply: null,
  crossX: 'measured',
  crossY: 'measured',
  closed: false,
  turnUp: nm(0),
  drifted: false,
  ...change,
});

/** A section that is open to all sides but the lowest, where the core lies. */
export const sectionOf = (frame: Corners, regions: readonly Region[]): Section => ({
  name: 'by hand',
  kind: 'lead',
  slumped: null,
  lays: [],
  regions,
  bands: [],
  frame: rectOf(frame),
  sagging: [],
  potted: false,
  chambers: [],
  stackTops: [],
  coreAbove: null,
});
