// Two searches in turns: one is broken off in its midst, another is run to its end, and the first goes on as if nothing
// had happened, as long as each has a finder of its own.

import { describe, expect, it } from 'vitest';
import { countAll } from '#solver/paths/ply-count.ts';
import { findPieces, networkOf, type SectionLimits } from '#solver/paths/find-pieces.ts';
import type { Network } from '#solver/network/network.ts';
import { PathFinder } from '#solver/paths/path-finder.ts';
import { mm } from '#units/quantity.ts';
import { metal, sectionOf, solid } from '#test/solver/hand-made.ts';

const OPTIONS = { leastThickness: mm(0.4), trackingRank: [0, 0], weak: [] };
const LIMITS: SectionLimits = { metric: 'clearance', x: mm(1), length: [Infinity], window: null };

/** Two windings that a third touches between them, over a wall that the ways run along. */
const sectionWith = (width: number) =>
  sectionOf(
    [-1, -1, 12, 6],
    [
      solid([-1, -1, 12, 0], 1),
      metal('a', [0, 0, 1, 1]),
      metal('c', [1 + width, 0, 2 + width, 2]),
      metal('d', [2 + width, 0, 3 + width, 1]),
      metal('b', [5 + width, 0, 6 + width, 3]),
    ],
  );

const networkWith = (width: number, finder: PathFinder): Network =>
  networkOf(sectionWith(width), OPTIONS, 0, Infinity, finder);

const lengths = (net: Network, finder: PathFinder): readonly string[] =>
  findPieces(net, countAll(3), LIMITS, finder).map(({ between, length }) => `${between.join('-')} ${length}`);

/** The same network, which runs `midway` while a search stands at a node that several conductors touch. */
function interrupted(
  net: Network,
  midway: () => void,
): { readonly net: Network; readonly times: () => number } {
  let times = 0;
  class Touching extends Map<number, readonly number[]> {
    override get(node: number): readonly number[] | undefined {
      times++;
      midway();
      return super.get(node);
    }
  }
  return { net: { ...net, touching: new Touching(net.touching) }, times: () => times };
}

describe('PathFinder', () => {
  const alone = lengths(networkWith(1, new PathFinder()), new PathFinder());

  it('should find the same with another search run to its end in the midst of it', () => {
    const [first, second] = [new PathFinder(), new PathFinder()];
    const other = networkWith(3, second);
    const { net, times } = interrupted(networkWith(1, first), () => void lengths(other, second));
    expect(lengths(net, first)).toEqual(alone);
    expect(times()).toBeGreaterThan(0);
  });

  it('should be what keeps them apart: with one finder for both the first is lost', () => {
    const shared = new PathFinder();
    const other = networkWith(3, shared);
    const { net } = interrupted(networkWith(1, shared), () => void lengths(other, shared));
    expect(lengths(net, shared)).not.toEqual(alone);
  });
});
