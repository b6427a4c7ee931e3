// Whole paths between two circuits: one piece, or a chain of pieces over floating conductors.
// Conductors that are tied together count as one: the core with the circuit it is bound to.

import type { Metric, Piece } from '#solver/pieces.ts';
import type { MaterialGroup } from '#standards/grade.ts';
import type { Nm } from '#units/quantity.ts';

/** A piece of a section, or a distance outside the window that the file states. */
export type ChainPiece =
  | {
      readonly kind: 'inside';
      readonly piece: Piece;
      readonly length: Nm;
      readonly plies: number;
      readonly rank: number;
    }
  | {
      readonly kind: 'outside';
      readonly between: readonly [string, string];
      readonly length: Nm;
      readonly plies: 0;
      readonly rank: number;
      readonly what: string;
      readonly group: MaterialGroup;
    };

export interface Chain {
  /** In order from the first circuit to the second. */
  readonly pieces: readonly ChainPiece[];
  /** Floating conductors run over, in order. */
  readonly over: readonly string[];
}

const between = (piece: ChainPiece): readonly [string, string] =>
  piece.kind === 'inside' ? piece.piece.between : piece.between;

/** Pieces by the two conductors that they join, with tied conductors taken as one. */
export type Links = ReadonlyMap<string, ReadonlyMap<string, readonly ChainPiece[]>>;

export function linksOf(pieces: readonly ChainPiece[], tied: (conductor: string) => string): Links {
  const links = new Map<string, Map<string, ChainPiece[]>>();
  const add = (from: string, to: string, piece: ChainPiece) => {
    const row = links.get(from) ?? new Map<string, ChainPiece[]>();
    links.set(from, row);
    const all = row.get(to);
    if (all) all.push(piece);
    else row.set(to, [piece]);
  };
  for (const piece of pieces) {
    const [a, b] = between(piece).map(tied) as [string, string];
    if (a === b) continue;
    add(a, b, piece);
    add(b, a, piece);
  }
  return links;
}

/** More floating conductors in one chain than this are not looked at: each further one only adds insulation. */
const MOST_OVER = 5;

/** What bounds the chains looked at: their counted length, with pieces under `x` counted as nothing. */
export interface ChainLimits {
  readonly x: Nm;
  readonly longest: number;
}

/** Every chain from `from` to `to` over floating conductors, each visited once, no longer than the limit. */
export function* chainsBetween(
  links: Links,
  from: string,
  to: string,
  floating: ReadonlySet<string>,
  limits: ChainLimits,
): Generator<Chain> {
  const direct = links.get(from)?.get(to) ?? [];
  for (const piece of direct) yield { pieces: [piece], over: [] };
  yield* extended(links, from, to, floating, limits, { pieces: [], over: [] }, 0);
}

function* extended(
  links: Links,
  at: string,
  to: string,
  floating: ReadonlySet<string>,
  limits: ChainLimits,
  { pieces, over }: Chain,
  length: number,
): Generator<Chain> {
  if (over.length >= MOST_OVER) return;
  const counted = (piece: ChainPiece) => (piece.length < limits.x ? 0 : piece.length);
  for (const [next, steps] of links.get(at) ?? []) {
    if (!floating.has(next) || over.includes(next)) continue;
    const last = links.get(next)?.get(to) ?? [];
    for (const step of steps) {
      const soFar = length + counted(step);
      if (soFar > limits.longest) continue;
      const chain = { pieces: [...pieces, step], over: [...over, next] };
      for (const end of last) {
        if (soFar + counted(end) <= limits.longest)
          yield { pieces: [...chain.pieces, end], over: chain.over };
      }
      yield* extended(links, next, to, floating, limits, chain, soFar);
    }
  }
}

/** Length of a piece as it counts in a chain over conductors: nothing where it is shorter than X. */
export const countedLength = (chain: Chain, piece: ChainPiece, x: Nm): number =>
  chain.pieces.length > 1 && piece.length < x ? 0 : piece.length;

export const chainLength = (chain: Chain, x: Nm): number =>
  chain.pieces.reduce((sum, piece) => sum + countedLength(chain, piece, x), 0);

export const chainPlies = (chain: Chain): number => chain.pieces.reduce((sum, piece) => sum + piece.plies, 0);

export const chainRank = (chain: Chain): number => Math.max(0, ...chain.pieces.map((piece) => piece.rank));

export type { Metric };
