// Whether a piece stands on bare metal at both ends: there length alone counts.

import type { ChainPiece } from '#judge/grade/chain.ts';
import type { Piece } from '#solver/network/pieces.ts';
import type { ConductorRegion, Region, Section } from '#solver/section/section.ts';
import { nm } from '#units/quantity.ts';
import type { KeyedLimits } from './path-cache.ts';

/** Of all the places where two conductors touch, the search names one; bare metal touching at another is the worse. */
export function atBareMetal(section: Section, piece: Piece, window: KeyedLimits['window']): Piece {
  const [a, b] = piece.between.map((conductor) =>
    section.regions.filter((r): r is ConductorRegion => isBareOf(r, conductor)),
  );
  const [from, to] = window ?? [-Infinity, Infinity];
  for (const one of a!) {
    for (const other of b!) {
      const x = nm(Math.max(one.x0, other.x0));
      const y = nm(Math.max(one.y0, other.y0));
      if (x > Math.min(one.x1, other.x1) || y > Math.min(one.y1, other.y1) || x < from || x > to) continue;
      return { ...piece, from: [x, y], to: [x, y], trace: () => [] };
    }
  }
  return piece;
}

const isBareOf = (r: Region, conductor: string): r is ConductorRegion =>
  r.kind === 'conductor' && r.conductor === conductor && r.bare;

/** A contact of bare metal, enamel or cover on neither side. */
export function isBareContact(section: Section | null, piece: ChainPiece): boolean {
  if (piece.kind === 'outside') return piece.isBare;
  if (section === null || !isContact(piece)) return false;
  const [x, y] = piece.piece.from;
  const bare = (conductor: string) =>
    section.regions.some((r) => isBareOf(r, conductor) && r.x0 <= x && r.x1 >= x && r.y0 <= y && r.y1 >= y);
  return piece.piece.between.every(bare);
}

export const isContact = ({ length, plies }: Pick<Piece, 'length' | 'plies'>): boolean =>
  length === 0 && plies === 0;
