// The search for pieces against relaxing every edge until nothing changes, on random sections: it must drop no way that
// another does not beat, whatever bounds it uses.

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  begun,
  countOf,
  hopped,
  noMoreThan,
  withHop,
  withMaterial,
  withPlies,
} from '#solver/paths/path-label.ts';
import { countAll, type Counting, packed } from '#solver/paths/ply-count.ts';
import { findPieces, networkOf, type SectionLimits } from '#solver/paths/find-pieces.ts';
import { LowerBounds } from '#solver/paths/least-length.ts';
import { ACROSS_AIR, CLOSED, type Network, SIGHT, THROUGH } from '#solver/network/network.ts';
import type { Piece } from '#solver/network/pieces.ts';
import type { Metric } from '#units/terms.ts';
import type { Region } from '#solver/section/section.ts';
import { inMm, mm } from '#units/quantity.ts';
import { metal, sectionOf, solid } from '#test/solver/hand-made.ts';

const RUNS = 200;
const GRADING: Counting = {
  classes: [null, 0, 1],
  enough: [3, undefined],
  byRank: true,
};

const edge = fc.integer({ min: 0, max: 5 });
const span = fc.tuple(edge, fc.integer({ min: 1, max: 3 }));
const block = fc.record({
  x: span,
  y: span,
  what: fc.constantFrom('a', 'b', 'c', 'ply', 'ply', 'ply', 'moulding', 'thin', 'closed'),
});

const PLY = { kind: 'ply', stuff: 1, crossX: 'strong', crossY: 1 } as const;

/** A closed joint between `a` and `b`, too long to be walked, with a place on its way where two short ones would meet. */
function cemented(x: number, y: number, i: number): readonly Region[] {
  const ply = { ...PLY, layer: 100 + i, closed: true };
  return [
    metal('a', [x, y, x + 0.2, y + 0.2]),
    solid([x + 0.2, y, x + 0.8, y + 0.1], 100 + i, ply),
    solid([x + 0.2, y + 0.1, x + 0.8, y + 0.2], 200 + i, ply),
    solid([x + 0.2, y + 0.2, x + 0.5, y + 0.3], 300 + i, ply),
    metal('b', [x + 0.8, y, x + 1, y + 0.2]),
  ];
}

const section = fc.array(block, { minLength: 5, maxLength: 11 }).map((blocks) => {
  const regions = blocks.flatMap(({ x: [x, width], y: [y, height], what }, i): readonly Region[] => {
    if (what === 'closed') return cemented(x, y, i);
    const high = what === 'ply' || what === 'thin' ? 0.1 : height;
    const corners = [x, y, x + width, y + high] as const;
    if (what === 'a' || what === 'b' || what === 'c') return [metal(what, corners)];
    if (what === 'ply') return [solid(corners, i, { ...PLY, layer: i })];
    return [solid(corners, i, { stuff: what === 'thin' ? 2 : 0 })];
  });
  const ends = [metal('a', [0, 0, 1, 1]), metal('b', [6, 0, 7, 2])];
  return sectionOf([-1, -1, 12, 12], [solid([-1, -1, 12, 0], 99), ...regions, ...ends]);
});

const networks = section.map((made) =>
  networkOf(made, { leastThickness: mm(0.4), trackingRank: [1, 0, 2] }, 1),
);

const limitsOf = (metric: Metric, change: Partial<SectionLimits> = {}): SectionLimits => ({
  metric,
  x: mm(1.2),
  length: [Infinity],
  window: null,
  ...change,
});

/** Whole nanometres. Of two ways that are as long the search may give the one that picked up more as well. */
const ascending = (lengths: readonly number[]) => [...new Set(lengths.map(Math.round))].sort((a, b) => a - b);

/** A way so far: what it picked up, and how much closed solid matter lies behind it. */
interface Way {
  readonly length: number;
  readonly code: number;
  readonly depth: number;
}

const beats = (one: Way, other: Way): boolean =>
  one.length <= other.length &&
  one.depth <= other.depth &&
  hopped(one.code) === hopped(other.code) &&
  noMoreThan(one.code, other.code);

/** Nanometres of every way between two conductors that no other beats, by relaxing until nothing changes. */
function relaxed(net: Network, source: number, target: number, counting: Counting, metric: Metric) {
  const onSurface = metric === 'creepage';
  const kept: Way[][] = Array.from({ length: net.nodes }, () => []);
  const touches = (node: number, conductor: number) =>
    net.conductor[node] === conductor ||
    (net.conductor[node] === -2 && net.touching.get(node)!.includes(conductor));
  const ways: Way[] = [];
  const keep = (list: Way[], way: Way): boolean => {
    if (list.some((one) => beats(one, way))) return false;
    list.push(way);
    return true;
  };
  const queue: (Way & { node: number })[] = [];
  const worst = Math.max(...net.rank);
  const fresh: Way = { length: 0, code: begun(counting.byRank && onSurface ? worst : 0), depth: 0 };
  for (let node = 0; node < net.nodes; node++)
    if (touches(node, source) && keep(kept[node]!, fresh)) queue.push({ ...fresh, node });
  for (let at = queue.shift(); at; at = queue.shift()) {
    const { node, length, code } = at;
    if (touches(node, target)) keep(ways, { length, code: withHop(code, false), depth: 0 });
    if (net.conductor[node] !== -1 && !touches(node, source)) continue;
    for (let e = net.start[node]!; e < net.start[node + 1]!; e++) {
      const kind = net.kind[e]!;
      if (onSurface && (kind === SIGHT || (kind === ACROSS_AIR && net.cost[e]! >= mm(1.2)))) continue;
      const closed = kind === CLOSED;
      const depth = closed || kind === THROUGH ? (net.depth[e]! > 0 ? at.depth + net.depth[e]! : 0) : 0;
      const goesOn = depth > 0 && (closed || hopped(code));
      if (goesOn && depth >= net.solidFrom!) continue;
      const isCounted = net.puncture[e]! > 0 && !(closed && hopped(code));
      let next = code;
      if (isCounted) {
        next = withPlies(code, packed(net.punctures[net.puncture[e]! - 1]!, counting));
        if (counting.enough.some((most, cls) => most !== undefined && countOf(next, cls) >= most)) continue;
      }
      if (counting.byRank && onSurface) next = withMaterial(next, worst - net.rank[e]!);
      const way = { length: length + net.cost[e]!, code: withHop(next, goesOn), depth };
      if (keep(kept[net.to[e]!]!, way)) queue.push({ ...way, node: net.to[e]! });
    }
  }
  const least = ways.filter(
    (way) =>
      !ways.some((other) => other !== way && other.length <= way.length && noMoreThan(other.code, way.code)),
  );
  return ascending(least.map((way) => way.length));
}

function between(net: Network, pieces: readonly Piece[], a: number, b: number): readonly number[] {
  const names = [net.grid.conductors[a]!, net.grid.conductors[b]!];
  const all = pieces.filter((piece) => names.every((name) => piece.between.includes(name)));
  return ascending(all.map(({ length }) => length));
}

const pairsOf = (net: Network) =>
  net.grid.conductors.flatMap((_, a) =>
    net.grid.conductors.flatMap((__, b) => (a < b ? [[a, b] as const] : [])),
  );

describe('the search for pieces', () => {
  it.each([
    { metric: 'creepage', counting: countAll(3) },
    { metric: 'clearance', counting: countAll(3) },
    { metric: 'creepage', counting: GRADING },
    { metric: 'clearance', counting: GRADING },
  ] as const)(
    'should find along $metric what relaxing finds, counting $counting.name',
    ({ metric, counting }) => {
      let found = 0;
      fc.assert(
        fc.property(networks, (net) => {
          const pieces = findPieces(net, counting, limitsOf(metric));
          for (const [a, b] of pairsOf(net)) {
            const expected = relaxed(net, a, b, counting, metric);
            found += expected.length;
            expect(between(net, pieces, a, b)).toEqual(expected);
          }
        }),
        { seed: 7, numRuns: RUNS },
      );
      expect(found).toBeGreaterThan(RUNS);
    },
  );

  it('should leave out with a limit what is longer, and nothing else', () => {
    let left = 0;
    fc.assert(
      fc.property(networks, fc.integer({ min: 0, max: 5 }), (net, most) => {
        const limits = limitsOf('creepage', { length: [mm(most)] });
        const all = findPieces(net, countAll(3), limitsOf('creepage'));
        const some = findPieces(net, countAll(3), limits);
        for (const [a, b] of pairsOf(net)) {
          const expected = between(net, all, a, b).filter((length) => length <= mm(most));
          left += between(net, all, a, b).length - expected.length;
          expect(between(net, some, a, b)).toEqual(expected);
        }
      }),
      { seed: 7, numRuns: RUNS },
    );
    expect(left).toBeGreaterThan(RUNS / 2);
  });

  it('should find the longer way along worse material behind the shorter one along better', () => {
    const floor = (x0: number, x1: number, stuff: number) => solid([x0, -1, x1, 0], stuff, { stuff });
    const places = [floor(-1, 4, 0), floor(4, 12, 1), metal('b', [5, 0, 6, 1]), metal('b', [0, 0, 1, 1])];
    const net = networkOf(
      sectionOf([-1, -1, 12, 12], [...places, metal('a', [2, 0, 3, 1])]),
      { leastThickness: mm(0.4), trackingRank: [1, 3] },
      0,
    );
    const found = findPieces(net, { ...countAll(0), byRank: true }, limitsOf('creepage')).filter(
      ({ between: ends }) => !ends.includes('core'),
    );
    expect(found.map(({ length, rank }) => [inMm(length), rank])).toEqual([
      [1, 1],
      [2, 3],
    ]);
  });

  it('should look only between two x where it is told to', () => {
    const bar = solid([-1, -1, 12, 0]);
    const ends = [metal('a', [0, 0, 1, 1]), metal('b', [3, 0, 4, 1]), metal('b', [9, 0, 10, 1])];
    const net = networkOf(
      sectionOf([-1, -1, 12, 12], [bar, ...ends]),
      { leastThickness: mm(0.4), trackingRank: [0] },
      0,
    );
    const lengths = (window: SectionLimits['window']) =>
      findPieces(net, countAll(0), limitsOf('creepage', { window }))
        .filter(({ between: [a, b] }) => a !== 'core' && b !== 'core')
        .map(({ length }) => inMm(length));
    expect(lengths(null)).toEqual([2]);
    expect(lengths([mm(0), mm(3)])).toEqual([2]);
    expect(lengths([mm(0), mm(2.9)])).toEqual([]);
  });
});

describe('the least length to a conductor', () => {
  it('should never be more than what is left of a piece', () => {
    fc.assert(
      fc.property(networks, (net) => {
        for (const metric of ['creepage', 'clearance'] as const)
          for (const [a, b] of pairsOf(net)) {
            const bounds = new LowerBounds().to(net, b);
            const starts = [...net.conductor.keys()].filter(
              (node) =>
                net.conductor[node] === a ||
                (net.conductor[node] === -2 && net.touching.get(node)!.includes(a)),
            );
            const least = Math.min(Infinity, ...starts.map((node) => bounds[node]!));
            const shortest = Math.min(Infinity, ...relaxed(net, a, b, countAll(3), metric));
            // `shortest` is in whole nanometres
            expect(least).toBeLessThanOrEqual(shortest + 1);
          }
      }),
      { seed: 7, numRuns: RUNS / 2 },
    );
  });
});
