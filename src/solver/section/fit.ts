// How turns fit their layer: turns per row, rows, height. Whole nanometres, so that 9.2 / 0.23 is 40 and not 39.99.

import { nm, type Nm } from '#units/quantity.ts';
import type { Build, BuildLayer, BuildWindingLayer } from './build.ts';
import type { LayerFit } from './section.ts';

/** Inner faces of a chamber. */
export interface Face {
  readonly x0: Nm;
  readonly x1: Nm;
}

/** Of every chamber, x from the left flange. */
export function chamberFaces(build: Build): readonly Face[] {
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
