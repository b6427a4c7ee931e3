// Pieces and chains made by hand, lengths in mm, and a pair that asks 2.5 mm for basic and 5.0 mm for reinforced.

import type { Chain, ChainPiece } from '#judge/grade/chain.ts';
import type { Asked } from '#judge/grade/path-grade.ts';
import type { Solid } from '#books/questions/solid.ts';
import type { Piece } from '#solver/network/pieces.ts';
import { because } from '#standards/because.ts';
import { mm, nm, voltsPeak } from '#units/quantity.ts';

type Ends = readonly [string, string];

export function inside(between: Ends, length: number, change: Partial<Piece> = {}): ChainPiece {
  const piece: Piece = {
    between,
    length: mm(length),
    plies: 0,
    punctured: [],
    rank: 0,
    from: [mm(0), mm(0)],
    to: [mm(0), mm(0)],
    trace: () => [],
    ...change,
  };
  return { kind: 'inside', piece, length: piece.length, plies: piece.plies, rank: piece.rank };
}

/** Between pins, along material of the worst group unless changed. */
export const outside = (between: Ends, length: number, rank = 3): ChainPiece => ({
  kind: 'outside',
  between,
  length: mm(length),
  plies: 0,
  rank,
  what: 'pin rows',
  group: 'IIIb',
  entry: null,
  isBare: false,
});

/** Over as many floating conductors as there are joints between the pieces. */
export const chainOf = (...pieces: readonly ChainPiece[]): Chain => ({
  pieces,
  over: pieces.slice(1).map((_, i) => `float ${i + 1}`),
});

/** A ply of tape that stands this peak. */
export const plyOf = (strength: number): Solid => ({
  kind: 'sheet',
  alike: 'tape',
  group: 'IIIa',
  strength: voltsPeak(strength),
  stated: true,
  perMm: 0,
  material: null,
  solid: nm(25_000),
  thickness: nm(60_000),
  bonded: null,
  layers: null,
  because: because('margin-block', { field: '' }),
});

const LEVELS = { basic: voltsPeak(2500), reinforced: voltsPeak(4000) };

/** X is 1 mm; along the worst group twice as much is asked. */
export const ASKED: Asked = {
  distance: (rank) =>
    rank === 3 ? { basic: mm(5), reinforced: mm(10) } : { basic: mm(2.5), reinforced: mm(5) },
  levels: () => ({ ...LEVELS, ordinary: LEVELS }),
  x: mm(1),
  places: [],
};
