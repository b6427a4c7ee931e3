// Whole paths between two circuits: one piece, or a chain of pieces over floating conductors.
// Conductors that are tied together count as one: the core with the circuit it is bound to.

import type { Piece } from '#solver/network/pieces.ts';
import type { Metric, MaterialGroup } from '#units/terms.ts';
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
      /** Its place in the file's `outside`; null where it is none of these. */
      readonly entry: number | null;
      /** Metal on metal. */
      readonly isBare: boolean;
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

/** What chains are looked for. Lengths in nanometres, pieces under `x` counted as nothing. */
export interface ChainLimits {
  readonly x: Nm;
  /** Longer chains decide nothing. */
  readonly longest: number;
  /** What a piece adds to a chain besides its length: the smaller each figure, the weaker. None is below 0. */
  readonly weigh: (piece: ChainPiece) => readonly number[];
}

/**
 * Chains from `from` to `to` over floating conductors, each visited once, no longer than the limit. Left out is a chain
 * that one found before beats: no longer, along no better material, and adding up to no more of anything that is weighed.
 */
export function* chainsBetween(
  links: Links,
  from: string,
  to: string,
  floating: ReadonlySet<string>,
  limits: ChainLimits,
): Generator<Chain> {
  const direct = links.get(from)?.get(to) ?? [];
  for (const piece of direct) yield { pieces: [piece], over: [] };
  if (floating.size === 0) return;
  const kept = new KeptChains(links);
  const weights = new Map<ChainPiece, readonly number[]>();
  const weightsOf = (step: ChainPiece): readonly number[] => {
    const known = weights.get(step) ?? limits.weigh(step);
    weights.set(step, known);
    return known;
  };
  let wave: readonly Begun[] = [begin(from)];
  while (wave.length > 0) {
    const next: Begun[] = [];
    for (const begun of wave) {
      if (kept.isBeaten(begun)) continue;
      for (const [at, steps] of links.get(begun.at) ?? []) {
        const ends = at === to && begun.pieces.length > 0;
        if (!ends && (!floating.has(at) || begun.over.includes(at))) continue;
        for (const step of steps) {
          const length = begun.length + (step.length < limits.x ? 0 : step.length);
          if (length > limits.longest) continue;
          const longer = extended(begun, step, at, ends, length, weightsOf(step));
          if (!kept.keep(longer)) continue;
          if (ends) yield longer;
          else next.push(longer);
        }
      }
    }
    wave = next;
  }
}

/** A chain so far, with what its pieces add up to. */
interface Begun extends Chain {
  readonly at: string;
  readonly length: number;
  readonly rank: number;
  /** Some of it runs inside the window. */
  readonly isInside: boolean;
  readonly weights: readonly number[];
}

const begin = (at: string): Begun => ({
  at,
  pieces: [],
  over: [],
  length: 0,
  rank: 0,
  isInside: false,
  weights: [],
});

function extended(
  chain: Begun,
  step: ChainPiece,
  at: string,
  ends: boolean,
  length: number,
  weights: readonly number[],
): Begun {
  return {
    at,
    pieces: [...chain.pieces, step],
    over: ends ? chain.over : [...chain.over, at],
    length,
    rank: Math.max(chain.rank, step.rank),
    isInside: chain.isInside || step.kind === 'inside',
    weights: weights.map((weight, i) => weight + (chain.weights[i] ?? 0)),
  };
}

/** The chains that nothing beats yet, by the conductor where they end. */
class KeptChains {
  readonly #at = new Map<string, Begun[]>();
  readonly #links: Links;
  #isUniform: boolean | null = null;

  constructor(links: Links) {
    this.#links = links;
  }

  /** All pieces run along the same material. */
  get isUniform(): boolean {
    return (this.#isUniform ??= hasOneRank(this.#links));
  }

  isBeaten(chain: Begun): boolean {
    return chain.pieces.length > 0 && !(this.#at.get(chain.at) ?? []).includes(chain);
  }

  /** Returns false where another chain beats this one. */
  keep(chain: Begun): boolean {
    const known = this.#at.get(chain.at) ?? [];
    if (known.some((other) => this.#beats(other, chain))) return false;
    this.#at.set(chain.at, [...known.filter((other) => !this.#beats(chain, other)), chain]);
    return true;
  }

  #beats(one: Begun, other: Begun): boolean {
    if (one.length > other.length || one.rank < other.rank) return false;
    if (other.isInside && !one.isInside) return false;
    if (!one.weights.every((weight, i) => weight <= other.weights[i]!)) return false;
    // what the other one goes on over may lie behind this one: the loop is then cut out, and with it what made the
    // material of this one as bad
    return this.isUniform || one.over.every((conductor) => other.over.includes(conductor));
  }
}

function hasOneRank(links: Links): boolean {
  const all = [...links.values()].flatMap((row) => [...row.values()].flat());
  return all.every(({ rank }) => rank === all[0]?.rank);
}

/** Length of a piece as it counts in a chain over conductors: nothing where it is shorter than X. */
export const countedLength = (chain: Chain, piece: ChainPiece, x: Nm): number =>
  chain.pieces.length > 1 && piece.length < x ? 0 : piece.length;

export const chainLength = (chain: Chain, x: Nm): number =>
  chain.pieces.reduce((sum, piece) => sum + countedLength(chain, piece, x), 0);

export const chainPlies = (chain: Chain): number => chain.pieces.reduce((sum, piece) => sum + piece.plies, 0);

export const chainRank = (chain: Chain): number => Math.max(0, ...chain.pieces.map((piece) => piece.rank));

export type { Metric };
