// A section as a grid of cells between all coordinates of its regions. Nodes stand where grid lines cross.
// Every move of a path is along x or y (but for sight lines through air), so shortest paths run over these nodes.
// Cells outside the frame count as core, or as air where the drawing ends at the flanges.

import type { Nm } from '#units/quantity.ts';
import type { StuffId } from '#solver/section/build.ts';
import type { SolidOptions } from './pieces.ts';
import { puncturedBy } from './runs.ts';
import type { Crossing, Rect, Region, Section, SolidRegion } from '#solver/section/section.ts';

/** Owner of a cell: `AIR`, a solid (index into `solids`), or a conductor (`CONDUCTOR - index into conductors`). */
export const AIR = -1;
export const CONDUCTOR = -2;

export interface GridSolid {
  readonly body: number;
  readonly stuff: StuffId;
  readonly crossX: Crossing;
  readonly crossY: Crossing;
  readonly closed: boolean;
  readonly turnUp: Nm;
  readonly isMoulding: boolean;
  /** The cover of a wire. */
  readonly isCover: boolean;
  /** Null for the compound of a potted section. */
  readonly region: SolidRegion | null;
}

export interface Grid {
  /** Coordinates of the grid lines, ascending, nanometres. */
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** Owner of cell (i, j), which lies left of line i and below line j; (nx + 1) columns, (ny + 1) rows. */
  readonly owner: Int32Array;
  /** 1 where travel along y counts 0. */
  readonly sags: Uint8Array;
  readonly solids: readonly GridSolid[];
  readonly conductors: readonly string[];
  /** Every joint is closed. */
  readonly potted: boolean;
}

export const columns = (grid: Grid): number => grid.xs.length + 1;

const PAINT_ORDER: Readonly<Record<SolidRegion['kind'], number>> = {
  moulding: 0,
  wrap: 1,
  ply: 2,
  block: 3,
  sleeve: 4,
  wireCover: 5,
};

export function gridOf(section: Section, compound: StuffId, options: SolidOptions): Grid {
  const grid = gridOver(section, compound);
  const { xs, ys } = linesBesideConductors(section, grid, options);
  return xs.size + ys.size === 0 ? grid : refined(grid, xs, ys);
}

/** More lines within the frame: each cuts the cells that it runs through. */
function refined(grid: Grid, moreXs: Lines, moreYs: Lines): Grid {
  const xs = merged(grid.xs, moreXs);
  const ys = merged(grid.ys, moreYs);
  const before = columns(grid);
  const width = xs.length + 1;
  const owner = new Int32Array(width * (ys.length + 1));
  const sags = new Uint8Array(owner.length);
  // cell k lies before line k, the last behind all lines
  const cut = (from: readonly number[], to: readonly number[]): readonly number[] => {
    let k = 0;
    return [...to.map((at) => (from[k]! < at ? ++k : k)), from.length];
  };
  const columnOf = cut(grid.xs, xs);
  const rowOf = cut(grid.ys, ys);
  for (let j = 0; j < rowOf.length; j++) {
    const from = rowOf[j]! * before;
    for (let i = 0; i < width; i++) {
      owner[j * width + i] = grid.owner[from + columnOf[i]!]!;
      sags[j * width + i] = grid.sags[from + columnOf[i]!]!;
    }
  }
  return { ...grid, xs, ys, owner, sags };
}

const merged = (at: readonly number[], more: Lines): readonly number[] =>
  more.size === 0 ? at : [...new Set([...at, ...more])].sort((a, b) => a - b);

type Lines = ReadonlySet<number>;

/**
 * A way past a conductor may come as near as one likes without touching it, in air and through solids: where a way may
 * lead along a conductor's edge or round its corner, a line one nanometre off the edge stands for these ways.
 */
function linesBesideConductors(
  section: Section,
  grid: Grid,
  options: SolidOptions,
): { readonly xs: Lines; readonly ys: Lines } {
  const width = columns(grid);
  const xs = new Set<number>();
  const ys = new Set<number>();
  const add = (to: Set<number>, at: readonly number[], k: number, step: -1 | 1) => {
    const gap = step < 0 ? at[k]! - (at[k - 1] ?? at[k]!) : (at[k + 1] ?? at[k]!) - at[k]!;
    if (gap > 2) to.add(at[k]! + step);
  };
  const [upright, level] = [false, true].map((alongX) => {
    const thin = grid.solids.map((solid) => canBeCrossed(solid, options, alongX));
    return (i: number, j: number): boolean => {
      const owner = grid.owner[j * width + i]!;
      return owner === AIR || (owner >= 0 && thin[owner]!);
    };
  }) as [(i: number, j: number) => boolean, (i: number, j: number) => boolean];
  for (const r of section.regions) {
    if (r.kind !== 'conductor') continue;
    const [i0, i1] = [placeOf(grid.xs, r.x0), placeOf(grid.xs, r.x1)];
    const [j0, j1] = [placeOf(grid.ys, r.y0), placeOf(grid.ys, r.y1)];
    // cells i0 + 1 to i1 and j0 + 1 to j1 lie inside; one more on every side takes in the corners
    for (let i = i0; i <= i1 + 1; i++) {
      if (level(i, j0)) add(ys, grid.ys, j0, -1);
      if (level(i, j1 + 1)) add(ys, grid.ys, j1, 1);
    }
    for (let j = j0; j <= j1 + 1; j++) {
      if (upright(i0, j)) add(xs, grid.xs, i0, -1);
      if (upright(i1 + 1, j)) add(xs, grid.xs, i1, 1);
    }
  }
  return { xs, ys };
}

/** A way may lead straight through a solid along one axis, at some place of it. */
export function canBeCrossed(solid: GridSolid, options: SolidOptions, alongX: boolean): boolean {
  const crossing = alongX ? solid.crossX : solid.crossY;
  if (!solid.region) return crossing !== 'strong';
  const { x0, x1, y0, y1 } = solid.region;
  return puncturedBy(options, solid, crossing, alongX ? x1 - x0 : y1 - y0) !== null;
}

/** Place of a coordinate among the lines, the nearest end where it lies outside the frame. */
function placeOf(at: readonly number[], value: number): number {
  const found = at.indexOf(value);
  if (found >= 0) return found;
  return value < at[0]! ? 0 : at.length - 1;
}

/**
 * How high the edges of every layer stand that are turned up: there a way comes out from behind them. One nanometre above
 * the layer it is behind them, and leads through what lies there.
 */
function turnedUpTo(regions: readonly Region[]): readonly number[] {
  const tops = new Map<number | null, { layer: number; edge: number }>();
  for (const r of regions) {
    if (r.kind === 'conductor' || r.turnUp === 0) continue;
    const { layer, edge } = tops.get(r.layer) ?? { layer: -Infinity, edge: -Infinity };
    tops.set(r.layer, { layer: Math.max(layer, r.y1), edge: Math.max(edge, r.y1 + r.turnUp) });
  }
  return [...tops.values()].flatMap(({ layer, edge }) => [layer + 1, edge]);
}

function gridOver(section: Section, compound: StuffId): Grid {
  const { frame } = section;
  const regions = section.regions.filter((r) => isInside(r, frame));
  const xs = lines(
    regions.flatMap((r) => [r.x0, r.x1]),
    frame.x0,
    frame.x1,
  );
  const ys = lines(
    [...[...regions, ...section.sagging].flatMap((r) => [r.y0, r.y1]), ...turnedUpTo(regions)],
    frame.y0,
    frame.y1,
  );
  const width = xs.length + 1;
  const owner = new Int32Array(width * (ys.length + 1)).fill(AIR);
  const sags = new Uint8Array(owner.length);
  const paint = painterOn(xs, ys, frame);
  // solids first, what lies inside others after them; conductors last, since doubt counts against the build
  const solidRegions = regions
    .filter((r): r is SolidRegion => r.kind !== 'conductor')
    .sort((a, b) => PAINT_ORDER[a.kind] - PAINT_ORDER[b.kind]);
  const solids = solidRegions.map(solidOf);
  solidRegions.forEach((r, index) => paint(r, owner, index));
  const conductors = [
    ...new Set(['core', ...section.regions.flatMap((r) => (r.kind === 'conductor' ? [r.conductor] : []))]),
  ];
  for (const r of regions) {
    if (r.kind === 'conductor') paint(r, owner, CONDUCTOR - conductors.indexOf(r.conductor));
  }
  if (section.potted) {
    solids.push(solidOfCompound(compound));
    pourInto(owner, width, solids.length - 1);
  }
  for (const band of section.sagging) paint(band, sags, 1);
  surround(section, owner, width, ys.length + 1, section.potted ? solids.length - 1 : AIR);
  return { xs, ys, owner, sags, solids, conductors, potted: section.potted };
}

const isInside = (r: Rect, frame: Rect): boolean =>
  r.x0 < frame.x1 && r.x1 > frame.x0 && r.y0 < frame.y1 && r.y1 > frame.y0;

/** Gives the cells of a rectangle, as far as it lies within the frame, a value. */
function painterOn(xs: readonly number[], ys: readonly number[], frame: Rect) {
  const width = xs.length + 1;
  const xIndex = new Map(xs.map((x, i) => [x, i]));
  const yIndex = new Map(ys.map((y, j) => [y, j]));
  return (r: Rect, cells: Int32Array | Uint8Array, value: number): void => {
    const i0 = xIndex.get(Math.max(r.x0, frame.x0))! + 1;
    const i1 = xIndex.get(Math.min(r.x1, frame.x1))!;
    const j0 = yIndex.get(Math.max(r.y0, frame.y0))! + 1;
    const j1 = yIndex.get(Math.min(r.y1, frame.y1))!;
    for (let j = j0; j <= j1; j++) cells.fill(value, j * width + i0, j * width + i1 + 1);
  };
}

const solidOf = (r: SolidRegion): GridSolid => ({
  body: r.body,
  stuff: r.stuff,
  crossX: r.crossX,
  crossY: r.crossY,
  closed: r.closed,
  turnUp: r.turnUp,
  isMoulding: r.kind === 'moulding',
  isCover: r.kind === 'wireCover',
  region: r,
});

const solidOfCompound = (stuff: StuffId): GridSolid => ({
  body: -1,
  stuff,
  crossX: 'measured',
  crossY: 'measured',
  closed: true,
  turnUp: 0 as Nm,
  isMoulding: false,
  isCover: false,
  region: null,
});

/** Compound fills all air within the frame. */
function pourInto(owner: Int32Array, width: number, compound: number): void {
  for (let cell = width; cell < owner.length - width; cell++) {
    const i = cell % width;
    if (i > 0 && i < width - 1 && owner[cell] === AIR) owner[cell] = compound;
  }
}

/** Outside the frame: core all round, or under the tube only; elsewhere air, or compound where the build is potted. */
function surround(section: Section, owner: Int32Array, width: number, height: number, open: number): void {
  const core = CONDUCTOR;
  for (let i = 0; i < width; i++) owner[i] = core;
  if (section.coreAbove === null) {
    for (let j = 0; j < height; j++) {
      owner[j * width] = open;
      owner[j * width + width - 1] = open;
    }
    owner.fill(open, (height - 1) * width);
    return;
  }
  for (let i = 0; i < width; i++) owner[(height - 1) * width + i] = core;
  for (let j = 0; j < height; j++) {
    owner[j * width] = core;
    owner[j * width + width - 1] = core;
  }
}

function lines(values: readonly number[], from: number, to: number): number[] {
  const within = values.filter((value) => value > from && value < to);
  return [...new Set([from, ...within, to])].sort((a, b) => a - b);
}
