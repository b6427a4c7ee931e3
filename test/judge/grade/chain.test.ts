// Chains of pieces over floating conductors: which there are, and what of their length counts.

import { describe, expect, it } from 'vitest';
import {
  type ChainPiece,
  chainLength,
  chainPlies,
  chainRank,
  chainsBetween,
  linksOf,
} from '#judge/grade/chain.ts';
import { inMm, mm } from '#units/quantity.ts';
import { chainOf, inside, outside } from '#test/judge/made-chain.ts';

const apart = (conductor: string) => conductor;

function chains(
  pieces: readonly ChainPiece[],
  floating: readonly string[],
  longest = Infinity,
  tied: (conductor: string) => string = apart,
) {
  const limits = {
    x: mm(1),
    longest: longest === Infinity ? Infinity : mm(longest),
    weigh: ({ plies }: ChainPiece) => [plies],
  };
  return [...chainsBetween(linksOf(pieces, tied), 'pri', 'out', new Set(floating), limits)];
}

const told = (found: ReturnType<typeof chains>) =>
  found.map(({ pieces, over }) => [over.join(' '), ...pieces.map(({ length }) => inMm(length))]);

const TO_CORE = inside(['pri', 'core'], 3);
const FROM_CORE = inside(['out', 'core'], 4);

describe('chains between two circuits', () => {
  it('should hold every piece that joins them and every way over a floating conductor', () => {
    const direct = [inside(['pri', 'out'], 6), inside(['out', 'pri'], 0)];
    expect(told(chains([...direct, TO_CORE, FROM_CORE], ['core']))).toEqual([
      ['', 6],
      ['', 0],
      ['core', 3, 4],
    ]);
  });

  it('should not run over a conductor that is bound to a third circuit', () => {
    expect(chains([TO_CORE, FROM_CORE], [])).toEqual([]);
  });

  it('should run over several floating conductors, over none of them twice', () => {
    const foil = inside(['core', 'foil'], 1);
    const found = told(chains([TO_CORE, foil, FROM_CORE, inside(['foil', 'out'], 2)], ['core', 'foil']));
    expect(found).toHaveLength(2);
    expect(found).toContainEqual(['core', 3, 4]);
    expect(found).toContainEqual(['core foil', 3, 1, 2]);
  });

  it('should take every split of plies over its pieces', () => {
    const pieces = [
      TO_CORE,
      inside(['pri', 'core'], 1, { plies: 1 }),
      FROM_CORE,
      inside(['core', 'out'], 2.5, { plies: 1 }),
    ];
    const splits = told(chains(pieces, ['core'])).map(([, a, b]) => `${a} ${b}`);
    expect(splits.sort()).toEqual(['1 2.5', '1 4', '3 2.5', '3 4']);
  });

  it('should leave out what another chain beats, but not where that one runs along better material', () => {
    const worse = inside(['pri', 'core'], 3.5, { rank: 3 });
    const beaten = inside(['pri', 'core'], 3.5);
    expect(told(chains([TO_CORE, beaten, FROM_CORE], ['core']))).toEqual([['core', 3, 4]]);
    expect(told(chains([TO_CORE, worse, FROM_CORE], ['core']))).toEqual([
      ['core', 3, 4],
      ['core', 3.5, 4],
    ]);
  });

  it('should keep a longer way where the shorter one has passed what lies ahead', () => {
    // over b the way to a is shorter, but the only way out of a is over b, and from b nothing was worse yet
    const pieces = [
      inside(['pri', 'b'], 2),
      inside(['b', 'a'], 2, { rank: 3 }),
      inside(['pri', 'a'], 5, { rank: 3 }),
      inside(['b', 'out'], 2),
    ];
    expect(told(chains(pieces, ['a', 'b']))).toEqual([
      ['b', 2, 2],
      ['a b', 5, 2, 2],
    ]);
  });

  it('should run over any number of floating conductors', () => {
    const foils = Array.from({ length: 40 }, (_, i) => `foil ${i}`);
    const ends = ['pri', ...foils, 'out'];
    const pieces = ends.slice(1).map((to, i) => inside([ends[i]!, to], 2));
    expect(told(chains(pieces, foils))).toEqual([[foils.join(' '), ...foils.map(() => 2), 2]]);
  });

  it('should find the least sum among all ways over conductors joined each to each', () => {
    const ends = ['pri', ...Array.from({ length: 12 }, (_, i) => `foil ${i}`), 'out'];
    const pieces = ends.flatMap((from, i) =>
      ends.slice(i + 1).map((to, j) => inside([from, to], 1.1 * (j + 1) ** 1.5)),
    );
    const sums = chains(pieces, ends.slice(1, -1)).map((chain) => chainLength(chain, mm(1)));
    // 13 short steps; every longer step costs more than the steps it spares
    expect(Math.min(...sums)).toBe(mm(13 * 1.1));
  });

  it('should take what is tied together as one: nothing is left of a piece between the two', () => {
    const tied = (conductor: string) => (conductor === 'core' ? 'pri' : conductor);
    expect(told(chains([TO_CORE, FROM_CORE], [], Infinity, tied))).toEqual([['', 4]]);
  });

  it('should join in distances outside', () => {
    expect(told(chains([TO_CORE, outside(['core', 'out'], 2)], ['core']))).toEqual([['core', 3, 2]]);
  });

  it('should stop at a length that decides nothing, pieces under X counted as nothing', () => {
    expect(chains([TO_CORE, FROM_CORE], ['core'], 7)).toHaveLength(1);
    expect(chains([TO_CORE, FROM_CORE], ['core'], 6.999)).toHaveLength(0);
    expect(chains([TO_CORE, inside(['core', 'out'], 0.999)], ['core'], 3)).toHaveLength(1);
  });
});

describe('what counts of a chain', () => {
  it('should be the whole length of one piece, however short', () => {
    expect(chainLength(chainOf(inside(['pri', 'out'], 0.4)), mm(1))).toBe(mm(0.4));
  });

  it('should leave out pieces shorter than X where it runs over a conductor', () => {
    const length = (...lengths: readonly number[]) =>
      chainLength(chainOf(...lengths.map((one) => inside(['a', 'b'], one))), mm(1)) / 1e6;
    expect(length(4, 0.999)).toBe(4);
    expect(length(4, 1)).toBe(5);
    expect(length(0.999, 0.999, 0.999)).toBe(0);
  });

  it('should add up plies and keep the worst tracking rank', () => {
    const chain = chainOf(
      inside(['a', 'b'], 1, { plies: 1, rank: 2 }),
      inside(['b', 'c'], 1, { plies: 2, rank: 1 }),
    );
    expect([chainPlies(chain), chainRank(chain)]).toEqual([3, 2]);
  });
});
