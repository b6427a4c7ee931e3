// The search for chains against going through every one of them, on links made at random.
// What must come out the same: the shortest by plies punctured, and the weakest by grade.

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Chain,
  type ChainPiece,
  chainLength,
  chainPlies,
  chainsBetween,
  type Links,
  linksOf,
} from '#judge/grade/chain.ts';
import { heightOf } from '#standards/ladder.ts';
import { gradeOfPath, type GradingTools, seriesWeights } from '#judge/grade/path-grade.ts';
import { solidRules } from '#judge/grade/solid-rules.ts';
import { ruleBook } from '#books/shelf.ts';
import { ASKED, inside, outside, plyOf } from './made-chain.ts';

const FLOATING = ['core', 'foil', 'band', 'clip'] as const;

/** Stands the basic test, as one ply of common tape does. */
const PLY = plyOf(3050);
const TOOLS: GradingTools = { stuffs: new Map([[0, PLY]]), rules: solidRules(ruleBook('iec-62368-1')!) };

const ends = fc
  .tuple(fc.constantFrom('pri', ...FLOATING), fc.constantFrom(...FLOATING, 'out'))
  .filter(([a, b]) => a !== b);
const millimetres = fc.constantFrom(0, 0.4, 1, 1.5, 2.5, 4, 5, 6);
/** The best of the material groups or the worst, along which twice as much is asked. */
const group = fc.constantFrom(0, 3);
const within = fc
  .tuple(ends, millimetres, fc.integer({ min: 0, max: 3 }), group)
  .map(([between, length, plies, rank]) =>
    inside(between, length, { plies, rank, punctured: plies === 0 ? [] : [{ stuff: 0, count: plies }] }),
  );
const stated = fc
  .tuple(ends, millimetres, group)
  .map(([between, length, rank]) => outside(between, length, rank));
const pieces = fc.array(fc.oneof({ weight: 4, arbitrary: within }, { weight: 1, arbitrary: stated }), {
  minLength: 2,
  maxLength: 14,
});

/** Every chain over at least one floating conductor, none of them twice. */
function* everyChain(links: Links, at: string, { pieces, over }: Chain): Generator<Chain> {
  for (const [next, steps] of links.get(at) ?? []) {
    for (const step of steps) {
      const longer = [...pieces, step];
      if (next === 'out' && over.length > 0) yield { pieces: longer, over };
      else if ((FLOATING as readonly string[]).includes(next) && !over.includes(next))
        yield* everyChain(links, next, { pieces: longer, over: [...over, next] });
    }
  }
}

const runsInside = ({ pieces }: Chain): boolean => pieces.some(({ kind }) => kind === 'inside');

const found = (links: Links, weigh: (piece: ChainPiece) => readonly number[]): readonly Chain[] =>
  [...chainsBetween(links, 'pri', 'out', new Set(FLOATING), { x: ASKED.x, longest: Infinity, weigh })].filter(
    ({ over }) => over.length > 0,
  );

const lengths = (chains: readonly Chain[]): readonly number[] =>
  [0, 1, 2, 3, 4].map((k) =>
    Math.min(...chains.filter((chain) => chainPlies(chain) <= k).map((chain) => chainLength(chain, ASKED.x))),
  );

const weakest = (chains: readonly Chain[]): number =>
  Math.min(...chains.map((chain) => heightOf(gradeOfPath(chain, ASKED, TOOLS).value)));

describe('search for chains', () => {
  it('should find the shortest of all chains by plies, with and without those wholly outside', () => {
    fc.assert(
      fc.property(pieces, (made) => {
        const links = linksOf(made, (conductor) => conductor);
        const all = [...everyChain(links, 'pri', { pieces: [], over: [] })];
        const some = found(links, ({ plies }) => [plies]);
        expect(lengths(some)).toEqual(lengths(all));
        expect(lengths(some.filter(runsInside))).toEqual(lengths(all.filter(runsInside)));
      }),
      { numRuns: 1500, seed: 20 },
    );
  });

  it('should find the weakest of all chains by grade', () => {
    fc.assert(
      fc.property(pieces, (made) => {
        const links = linksOf(made, (conductor) => conductor);
        const all = [...everyChain(links, 'pri', { pieces: [], over: [] })];
        const some = found(links, (piece) => seriesWeights(piece, ASKED, TOOLS));
        expect(weakest(some)).toBe(weakest(all));
        expect(weakest(some.filter(runsInside))).toBe(weakest(all.filter(runsInside)));
      }),
      { numRuns: 1500, seed: 21 },
    );
  });
});
