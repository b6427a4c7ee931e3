// How turns fit their layer: turns per row, rows, height. Whole nanometres, so that 9.2 / 0.23 is 40 and not 39.99.

import { nm, type Nm } from '#units/quantity.ts';
import type { Build, BuildLayer, BuildWindingLayer, Side } from './build.ts';
import type { LayerFit } from './section.ts';

/** Where a layer lies between the faces of its chamber, and how wide its margin blocks are. */
export interface Placement {
  readonly x0: Nm;
  readonly x1: Nm;
  readonly blocks: Record<Side, Nm>;
}

/** Inner faces of every chamber, x from the left flange. */
export function chamberFaces(build: Build): readonly { readonly x0: Nm; readonly x1: Nm }[] {
  let x = 0;
  return build.chambers.map((width, i) => {
    const face = { x0: nm(x), x1: nm(x + width) };
    x += width + (build.dividers[i] ?? 0);
    return face;
  });
}

export function fitOf(build: Build, layer: BuildLayer): LayerFit {
  if (layer.kind !== 'winding') {
    const height = layer.kind === 'tape' ? nm(layer.plies * layer.plyThickness) : screenHeight(layer);
    return { layer: layer.index, rows: 0, turnsPerRow: 0, height, doubtful: false, tooWide: false };
  }
  const face = chamberFaces(build)[layer.chamber]!;
  const width = woundWidth(layer, face.x1 - face.x0);
  const perTurn = layer.wire.overall * layer.strands;
  const turnsPerRow = Math.max(1, Math.floor(width / perTurn));
  const rows = Math.ceil(layer.turns / turnsPerRow);
  const height = nm(rows * layer.wire.overall);
  // a row filled to the last turn leaves the helix no width to return
  const doubtful = layer.turns >= turnsPerRow && turnsPerRow * perTurn >= width;
  return { layer: layer.index, rows, turnsPerRow, height, doubtful, tooWide: perTurn > width };
}

function screenHeight(layer: Extract<BuildLayer, { kind: 'screen' }>): Nm {
  if (!layer.overlap) return layer.thickness;
  return nm(2 * layer.thickness + layer.overlap.plies * layer.overlap.plyThickness);
}

function woundWidth(layer: BuildWindingLayer, chamber: number): number {
  if (layer.extent) return layer.extent.to - layer.extent.from;
  return chamber - layer.margins.left.width - layer.margins.right.width;
}

/** Every section of a build asks for the same placements. */
const placements = new WeakMap<Build, Map<BuildLayer, Placement>>();

/** Placement of a layer with no lead beside it and nothing slumped. */
export function placementOf(build: Build, layer: BuildLayer): Placement {
  const known = placements.get(build) ?? new Map<BuildLayer, Placement>();
  placements.set(build, known);
  const placement = known.get(layer) ?? placed(build, layer);
  known.set(layer, placement);
  return placement;
}

function placed(build: Build, layer: BuildLayer): Placement {
  const face = chamberFaces(build)[layer.chamber]!;
  const margin = (side: Side) => layer.margins[side].width;
  const block = (side: Side) => (layer.margins[side].filled ? margin(side) : 0);
  if (layer.kind !== 'winding') {
    return {
      x0: nm(face.x0 + margin('left') + layer.inset.left),
      x1: nm(face.x1 - margin('right') - layer.inset.right),
      blocks: { left: nm(block('left')), right: nm(block('right')) },
    };
  }
  let from: number = layer.extent?.from ?? margin('left');
  let to: number = layer.extent?.to ?? face.x1 - face.x0 - margin('right');
  const fit = fitOf(build, layer);
  if (!layer.spread && fit.rows === 1 && layer.turns < fit.turnsPerRow) {
    const covered = layer.turns * layer.strands * layer.wire.overall;
    if (layer.startsAt === 'left') to = from + covered;
    else from = to - covered;
  }
  // a measured position wins over a block, which then ends at the winding
  const room = { left: from, right: face.x1 - face.x0 - to };
  return {
    x0: nm(face.x0 + from),
    x1: nm(face.x0 + to),
    blocks: { left: nm(Math.min(block('left'), room.left)), right: nm(Math.min(block('right'), room.right)) },
  };
}
