// The oracle's handling: which winding ends come loose and how far, and how far tapes wander.

import type { BuildWindingLayer, Side } from '#solver/section/build.ts';
import type { OracleBand } from './oracle-stack.ts';

export type OracleSlump = null | 'as-is' | 'left' | 'right';

export interface Free {
  readonly left: number;
  readonly right: number;
}

export interface Span {
  readonly x0: number;
  readonly x1: number;
}

/** Occupied width of a band in its section, ends clipped at risers, before handling; what is in a riser's way keeps touching it. */
export function clipped(band: OracleBand, free: Free): Span {
  const x0 = Math.min(Math.max(band.x0, free.left), free.right - 1);
  return { x0, x1: Math.max(Math.min(band.x1, free.right), x0 + 1) };
}

/** Where a thing in this band has to stop on its way to one side: its block, else the face or riser. */
function stop(band: OracleBand, free: Free, side: Side): number {
  const block = band.blocks.find((b) => b.side === side);
  if (side === 'left') return Math.max(free.left, block?.x1 ?? free.left);
  return Math.min(free.right, block?.x0 ?? free.right);
}

/** Width of a winding after handling; `plain` is the same band in the section without leads. */
export function stretched(band: OracleBand, plain: OracleBand, free: Free, face: Free): Span {
  const { x0, x1 } = clipped(band, free);
  if (band.layer.kind !== 'winding') return { x0, x1 };
  return {
    x0: isRetained(band.layer, plain, 'left', face) ? x0 : Math.min(x0, stop(band, free, 'left')),
    x1: isRetained(band.layer, plain, 'right', face) ? x1 : Math.max(x1, stop(band, free, 'right')),
  };
}

function isRetained(layer: BuildWindingLayer, plain: OracleBand, side: Side, face: Free): boolean {
  if (!layer.wire.slumps || layer.anchored) return true;
  const gap = side === 'left' ? plain.x0 - face.left : face.right - plain.x1;
  if (gap < layer.wire.overall) return true;
  const block = plain.blocks.find((b) => b.side === side);
  if (block === undefined) return false;
  return side === 'left' ? block.x1 >= plain.x0 : block.x0 <= plain.x1;
}

/** How far a tape can go to one side; 0 where it already meets something there. */
export function drift(band: OracleBand, free: Free, side: Side): number {
  const { x0, x1 } = clipped(band, free);
  if (band.kind !== 'tape' || x0 >= x1) return 0;
  return side === 'left'
    ? Math.max(0, x0 - stop(band, free, 'left'))
    : Math.max(0, stop(band, free, 'right') - x1);
}
