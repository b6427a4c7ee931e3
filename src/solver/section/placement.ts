// Where every layer lies between the faces of its chamber, with no lead beside it and nothing moved: the span that it
// takes up, the blocks at its ends, and what stands there where a thing that slides out has to stop. Windings that were
// wound side by side share a band; each is then the other's stop.

import { nm, type Nm } from '#units/quantity.ts';
import type { Build, BuildLayer, BuildMargin, BuildWindingLayer } from './build.ts';
import type { Side } from '#units/terms.ts';
import { chamberFaces, type Face, fitOf } from './fit.ts';
import type { LayerFit } from './section.ts';

/** A filled margin: a block on the floor of the band. */
export interface Block {
  readonly x0: Nm;
  readonly x1: Nm;
  readonly height: Nm;
  readonly margin: BuildMargin;
  /** The layer that it was wound with. */
  readonly owner: BuildLayer;
}

export interface Placement {
  readonly x0: Nm;
  readonly x1: Nm;
  /** Beyond each end the flange, the divider, or the winding in the same band. */
  readonly stops: Readonly<Record<Side, Nm>>;
  /** The windings next to it in its band. */
  readonly neighbours: Readonly<Record<Side, BuildWindingLayer | null>>;
  readonly blocks: Readonly<Record<Side, Block | null>>;
}

/** A build with the place of every layer worked out once, since every section asks for the same. */
export interface PlacedBuild {
  readonly build: Build;
  readonly faces: readonly Face[];
  readonly fits: ReadonlyMap<BuildLayer, LayerFit>;
  readonly places: ReadonlyMap<BuildLayer, Placement>;
  /** By chamber its bands, innermost first. */
  readonly bands: readonly (readonly PlacedBand[])[];
}

export interface PlacedBand {
  /** Of its layers in `build.layers`: one, or windings side by side. */
  readonly positions: readonly number[];
  /** Of the layers and of the blocks that were wound with them. */
  readonly height: number;
}

export function placedBuild(build: Build): PlacedBuild {
  const faces = chamberFaces(build);
  const fits = new Map(build.layers.map((layer) => [layer, fitOf(build, layer)]));
  const places = new Map(build.layers.map((layer) => [layer, placementOf(build, layer)]));
  const heightOf = (layer: BuildLayer): number => {
    const { blocks } = places.get(layer)!;
    const own = [blocks.left, blocks.right].filter((block) => block?.owner === layer);
    return Math.max(fits.get(layer)!.height, ...own.map((block) => block!.height));
  };
  const bands: { positions: number[]; height: number }[][] = faces.map(() => []);
  const last: (BuildLayer | undefined)[] = [];
  build.layers.forEach((layer, position) => {
    const all = bands[layer.chamber]!;
    const height = heightOf(layer);
    const band = isBeside(layer, last[layer.chamber]) ? all.at(-1) : undefined;
    if (band === undefined) all.push({ positions: [position], height });
    else {
      band.positions.push(position);
      band.height = Math.max(band.height, height);
    }
    last[layer.chamber] = layer;
  });
  return { build, faces, fits, places, bands };
}

export function placementOf(build: Build, layer: BuildLayer): Placement {
  const face = chamberFaces(build)[layer.chamber]!;
  const own = spanOf(build, layer, face);
  const others = bandMates(build, layer);
  const neighbours = {
    left: nearest(build, face, others, own, 'left'),
    right: nearest(build, face, others, own, 'right'),
  };
  const stopAt = (side: Side): Nm => {
    const next = neighbours[side];
    if (!next) return side === 'left' ? face.x0 : face.x1;
    const span = spanOf(build, next, face);
    // two that overlap, against the file's rules, touch
    return side === 'left' ? nm(Math.min(span.x1, own.x0)) : nm(Math.max(span.x0, own.x1));
  };
  const stops = { left: stopAt('left'), right: stopAt('right') };
  const blockAt = (side: Side): Block | null => {
    const mine = blockOf(build, layer, side, own, stops[side], face);
    const next = neighbours[side];
    const facing = side === 'left' ? 'right' : 'left';
    const theirs = next
      ? blockOf(build, next, facing, spanOf(build, next, face), side === 'left' ? own.x0 : own.x1, face)
      : null;
    return mine && theirs ? oneOfTwo(mine, theirs) : (mine ?? theirs);
  };
  return { ...own, stops, neighbours, blocks: { left: blockAt('left'), right: blockAt('right') } };
}

/** The layers of one band, innermost and first wound first: one, or windings side by side. */
export function layersOfBand(build: Build, layer: BuildLayer): readonly BuildLayer[] {
  const mine = build.layers.filter(({ chamber }) => chamber === layer.chamber);
  const joins = (i: number): boolean => isBeside(mine[i], mine[i - 1]);
  let first = mine.indexOf(layer);
  let end = first + 1;
  while (joins(first)) first--;
  while (joins(end)) end++;
  return mine.slice(first, end);
}

/** Wound into the band of the winding before it. */
export const isBeside = (layer: BuildLayer | undefined, before: BuildLayer | undefined): boolean =>
  layer?.kind === 'winding' && layer.beside === true && before?.kind === 'winding';

const bandMates = (build: Build, layer: BuildLayer): readonly BuildWindingLayer[] =>
  layer.kind === 'winding'
    ? layersOfBand(build, layer).filter(
        (other): other is BuildWindingLayer => other !== layer && other.kind === 'winding',
      )
    : [];

interface Span {
  readonly x0: Nm;
  readonly x1: Nm;
}

function spanOf(build: Build, layer: BuildLayer, face: Face): Span {
  const { left, right } = layer.margins;
  if (layer.kind !== 'winding') {
    return {
      x0: nm(face.x0 + left.width + layer.inset.left),
      x1: nm(face.x1 - right.width - layer.inset.right),
    };
  }
  let from: number = layer.extent?.from ?? left.width;
  let to: number = layer.extent?.to ?? face.x1 - face.x0 - right.width;
  const fit = fitOf(build, layer);
  if (!layer.spread && fit.rows === 1 && layer.turns < fit.turnsPerRow) {
    const covered = layer.turns * layer.strands * layer.wire.overall;
    if (layer.startsAt === 'left') to = from + covered;
    else from = to - covered;
  }
  return { x0: nm(face.x0 + from), x1: nm(face.x0 + to) };
}

function nearest(
  build: Build,
  face: Face,
  others: readonly BuildWindingLayer[],
  own: Span,
  side: Side,
): BuildWindingLayer | null {
  const middle = (span: Span): number => span.x0 + span.x1;
  let found: BuildWindingLayer | null = null;
  let at = side === 'left' ? -Infinity : Infinity;
  for (const other of others) {
    const there = middle(spanOf(build, other, face));
    const isThere = side === 'left' ? there < middle(own) : there >= middle(own);
    if (!isThere || (side === 'left' ? there <= at : there >= at)) continue;
    found = other;
    at = there;
  }
  return found;
}

/** A block is measured from the flange; a measured position wins over it, and a winding in the way ends it. */
function blockOf(build: Build, layer: BuildLayer, side: Side, own: Span, stop: Nm, face: Face): Block | null {
  const margin = layer.margins[side];
  const height = margin.height ?? fitOf(build, layer).height;
  // a block of no height holds nothing and fills nothing
  if (!margin.filled || height === 0) return null;
  const x0 = side === 'left' ? stop : nm(Math.max(face.x1 - margin.width, own.x1));
  const x1 = side === 'left' ? nm(Math.min(face.x0 + margin.width, own.x0)) : stop;
  return x0 < x1 ? { x0, x1, height, margin, owner: layer } : null;
}

/** Between two windings in one band both may have filled the gap: the higher block is the one that is there. */
function oneOfTwo(a: Block, b: Block): Block {
  const [higher, lower] = b.height > a.height ? [b, a] : [a, b];
  return { ...higher, x0: nm(Math.min(higher.x0, lower.x0)), x1: nm(Math.max(higher.x1, lower.x1)) };
}
