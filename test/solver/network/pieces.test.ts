// Shortest pieces on sections drawn by hand: joints and punctured plies, closed joints, edges turned up, sight lines.
// `a` lies under plies that run from wall to wall, `b` on top of them, each 3 mm from either wall.

import { describe, expect, it } from 'vitest';
import { shortestPieces } from '#solver/paths/find-pieces.ts';
import type { PathOptions, Piece } from '#solver/network/pieces.ts';
import type { Region, Section, SolidRegion } from '#solver/section/section.ts';
import { inMm, mm } from '#units/quantity.ts';
import { metal, sectionOf, solid } from '#test/solver/hand-made.ts';

const TAPE = 7;
const CLOSED_JOINT = 5;
const STRONG = { crossX: 'strong', crossY: 'strong' } as const;
const OPTIONS: PathOptions = {
  metric: 'creepage',
  x: mm(1),
  leastThickness: mm(0.4),
  trackingRank: [],
};

function piecesOf(section: Section, change: Partial<PathOptions> = {}): readonly Piece[] {
  const pieces = shortestPieces(section, { ...OPTIONS, ...change }, CLOSED_JOINT, 3);
  return pieces.filter(({ between }) => between.includes('a') && between.includes('b'));
}

/** Plies punctured and length in millimetres, fewest plies first. */
const summed = (pieces: readonly Piece[]) =>
  pieces.map(({ plies, length }) => [plies, inMm(length)] as const).sort((p, q) => p[0] - q[0]);

function taped(count: number, thickness: number, ply: Partial<SolidRegion> = {}, potted = false): Section {
  const floor = 1 + count * thickness;
  const closed = { closed: potted };
  const margin = (x0: number, y: number, body: number) => solid([x0, y, x0 + 3, y + 1], body, closed);
  const plies = Array.from({ length: count }, (_, i) =>
    solid([0, 1 + i * thickness, 10, 1 + (i + 1) * thickness], 10 + i, {
      ...closed,
      kind: 'ply',
      stuff: TAPE,
      layer: 1,
      ply: i,
      ...ply,
    }),
  );
  const regions: readonly Region[] = [
    solid([-1, -20, 11, 0], 0, closed),
    solid([-1, 0, 0, 6], 0, closed),
    solid([10, 0, 11, 6], 0, closed),
    margin(0, 0, 1),
    margin(7, 0, 2),
    margin(0, floor, 3),
    margin(7, floor, 4),
    ...plies,
    metal('a', [3, 0, 7, 1]),
    metal('b', [3, floor, 7, floor + 1]),
  ];
  return { ...sectionOf([-1, -20, 11, 6], regions), potted };
}

describe('pieces out of a sleeve', () => {
  it('should go through the cover of its wire and the sleeve, one after the other, in whatever order they are laid', () => {
    const own = { crossX: 1, crossY: 1 } as const;
    const sleeve = solid([3, 0, 7, 1], 1, { kind: 'sleeve', stuff: 4 });
    const cover = solid([3.2, 0.2, 6.8, 0.8], 2, { ...own, kind: 'wireCover', stuff: 3 });
    const floor = solid([-1, -20, 11, 0]);
    const conductors = [metal('a', [3.3, 0.3, 6.7, 0.7]), metal('b', [3, 1, 7, 2])];
    for (const solids of [
      [sleeve, cover],
      [cover, sleeve],
    ]) {
      const found = piecesOf(sectionOf([-1, -20, 11, 6], [floor, ...solids, ...conductors]));
      expect(summed(found)).toEqual([[2, 0]]);
      expect(found[0]!.punctured.map(({ stuff }) => stuff).sort()).toEqual([3, 4]);
    }
  });
});

describe('pieces past plies', () => {
  it('should find the way for every number of plies punctured: 3 + 3 + what is left to climb', () => {
    const pieces = piecesOf(taped(3, 0.1));
    expect(summed(pieces)).toEqual([
      [0, 6.3],
      [1, 6.2],
      [2, 6.1],
      [3, 0],
    ]);
    expect(pieces.find(({ plies }) => plies === 2)!.punctured).toEqual([{ stuff: TAPE, count: 2 }]);
  });

  it('should take a ply of the least thickness as strong, and one a little thinner as a ply', () => {
    expect(summed(piecesOf(taped(1, 0.4)))).toEqual([[0, 6.4]]);
    expect(summed(piecesOf(taped(1, 0.399)))).toEqual([
      [0, 6.399],
      [1, 0],
    ]);
  });

  it.each([
    ['a ply of another stuff while shorter than what shows the test', 0.5, 0.6, 1],
    ['strong from there up, to the nanometre', 0.6, 0.6, 0],
    ['one ply however thick where nothing shows it', 0.6, Infinity, 1],
  ])('should take a run of a stuff as %s', (_, thick, below, plies) => {
    const steps = [
      { below: mm(0.4), as: TAPE },
      { below: below === Infinity ? below : mm(below), as: TAPE + 1 },
    ];
    const runs = Array.from({ length: TAPE + 1 }, (__, stuff) => (stuff === TAPE ? steps : []));
    const found = piecesOf(taped(1, thick), { runs });
    expect(found.flatMap(({ punctured }) => punctured)).toEqual(
      plies === 0 ? [] : [{ stuff: TAPE + 1, count: 1 }],
    );
  });

  it('should tell the legs in order: along the joint, up the wall, along the joint', () => {
    const [piece] = piecesOf(taped(1, 0.1)).filter(({ plies }) => plies === 0);
    const legs = piece!.trace();
    expect(legs.map(({ kind, length }) => [kind, inMm(length)])).toEqual([
      ['surface', 3],
      ['surface', 0.1],
      ['surface', 3],
    ]);
    expect(legs[0]!.from).toEqual(piece!.from);
    expect(legs.at(-1)!.to).toEqual(piece!.to);
  });

  it('should keep the worst tracking rank of what it runs along, for creepage only', () => {
    const trackingRank = [2, 0, 0, 0, 0, 0, 0, 3];
    const rank = (metric: PathOptions['metric'], ranks: readonly number[]) =>
      piecesOf(taped(1, 0.1), { metric, trackingRank: ranks }).find(({ plies }) => plies === 0)!.rank;
    expect(rank('creepage', trackingRank)).toBe(3);
    expect(rank('creepage', [2])).toBe(2);
    expect(rank('clearance', trackingRank)).toBe(0);
  });

  it('should lengthen the climb by twice the edge turned up: 6.1 + 2 x 0.3', () => {
    expect(summed(piecesOf(taped(1, 0.1, { turnUp: mm(0.3) })))[0]).toEqual([0, 6.7]);
  });

  it('should go on over the block above where that is shorter: 3 + 0.1 + 1 + 3', () => {
    expect(summed(piecesOf(taped(1, 0.1, { turnUp: mm(1) })))[0]).toEqual([0, 7.1]);
  });

  /** Three plies, the lowest in a layer of its own. */
  const inTwoLayers = (lowest: number, others: number): Section => {
    const section = taped(3, 0.1, { turnUp: mm(others) });
    const regions = section.regions.map((region) =>
      region.kind === 'ply' && region.ply === 0 ? { ...region, layer: 0, turnUp: mm(lowest) } : region,
    );
    return { ...section, regions };
  };

  it('should lengthen it no more where the plies are wound as two layers: 6.3 + 2 x 0.3', () => {
    const one = summed(piecesOf(taped(3, 0.1, { turnUp: mm(0.3) })));
    expect(one[0]).toEqual([0, 6.9]);
    expect(summed(piecesOf(inTwoLayers(0.3, 0.3)))).toEqual(one);
  });

  it('should climb to the end of the edges that lie on top, and down before them: 6.3 + 2 x 0.2', () => {
    // those of the lowest ply end at 1.1 + 0.3, those on it at 1.3 + 0.2
    expect(summed(piecesOf(inTwoLayers(0.3, 0.2)))[0]).toEqual([0, 6.7]);
    expect(summed(piecesOf(inTwoLayers(0, 0.3)))[0]).toEqual([0, 6.9]);
  });
});

describe('pieces up a flange past turned edges', () => {
  it.each([
    // to the end of the edge at 1.1 + 0.5, then across: 3 + 0.1 + 0.5 and 0.9 through air
    ['creepage', 4.5],
    // to that end, and slanting from there to the corner at 0.9, 1.9
    ['clearance', 3 + 0.1 + 0.5 + Math.hypot(0.9, 0.3)],
  ] as const)('should come out where the edge ends, in air: %s', (metric, length) => {
    const section = sectionOf(
      [-1, -20, 11, 6],
      [
        solid([-1, -20, 11, 0]),
        solid([-1, 0, 0, 6]),
        solid([10, 0, 11, 6]),
        metal('a', [3, 0, 5, 1]),
        solid([0, 0, 3, 1], 1, STRONG),
        solid([5, 0, 10, 1], 2, STRONG),
        solid([0, 1, 10, 1.1], 10, { kind: 'ply', stuff: TAPE, layer: 1, turnUp: mm(0.5) }),
        metal('b', [0.9, metric === 'creepage' ? 1.3 : 1.9, 5, 2.5]),
      ],
    );
    const [first] = piecesOf(section, { metric }).filter(({ plies }) => plies === 0);
    expect(inMm(first!.length)).toBeCloseTo(length, 5);
  });

  /** One ply turned up `turnUp` under a block 1 mm high; `b` stands on that block, or 1 mm into the joint over it. */
  const climbing = (turnUp: number, reach: number): Section =>
    sectionOf(
      [-1, -20, 11, 6],
      [
        solid([-1, -20, 11, 0]),
        solid([-1, 0, 0, 6]),
        solid([10, 0, 11, 6]),
        metal('a', [3, 0, 5, 1]),
        solid([0, 0, 3, 1], 1, STRONG),
        solid([5, 0, 10, 1], 2, STRONG),
        solid([0, 1, 10, 1.1], 10, { kind: 'ply', stuff: TAPE, layer: 1, turnUp: mm(turnUp) }),
        solid([0, 1.1, 10, 2.1], 3, STRONG),
        metal('b', [reach, 2.1, 5, 3]),
        solid([5, 2.1, 10, 3], 6, STRONG),
        ...(reach > 0 ? [solid([0, 2.1, reach, 3], 4, STRONG)] : []),
        solid([0, 3, 10, 6], 5, STRONG),
      ],
    );

  it.each([
    ['a joint higher up', 0.5, 1],
    ['a joint that lies before the turned part', 2, 1],
    ['metal at the flange higher up', 0.5, 0],
    ['metal before the turned part', 2, 0],
  ])('should gain nothing where the way goes on to %s: 3 + 1.1', (_, turnUp, reach) => {
    expect(summed(piecesOf(climbing(turnUp, reach)))[0]).toEqual([0, 3 + 1.1 + reach]);
    expect(summed(piecesOf(climbing(0, reach)))[0]).toEqual([0, 3 + 1.1 + reach]);
  });
});

describe('pieces past a third conductor inside solids', () => {
  /** `a` under a ply, a third winding's end between wound blocks over it, a ply, `b` on top: nothing but solids. */
  const shielded = (block: Partial<SolidRegion>): Section =>
    sectionOf(
      [-1, -20, 11, 6],
      [
        solid([-1, -20, 11, 0]),
        solid([-1, 0, 0, 6]),
        solid([10, 0, 11, 6]),
        metal('a', [0, 0, 10, 1]),
        solid([0, 1, 10, 1.1], 10, { kind: 'ply', stuff: TAPE }),
        solid([0, 1.1, 4, 1.6], 1, { kind: 'block', crossX: 'strong', ...block }),
        metal('e', [4, 1.1, 6, 1.6]),
        solid([6, 1.1, 10, 1.6], 2, { kind: 'block', crossX: 'strong', ...block }),
        solid([0, 1.6, 10, 1.7], 11, { kind: 'ply', stuff: TAPE }),
        metal('b', [4, 1.7, 6, 2]),
        solid([0, 1.7, 4, 6], 3, STRONG),
        solid([6, 1.7, 10, 6], 4, STRONG),
        solid([4, 2, 6, 6], 5, STRONG),
      ],
    );

  it('should pass its end as near as one likes through ply, wound block and ply', () => {
    // three turns and two plies are more than are counted; one turn and two plies are three
    expect(summed(piecesOf(shielded({ crossY: 1 }))).at(-1)).toEqual([3, 0.000001]);
    expect(piecesOf(shielded({ crossY: 3 })).filter(({ length }) => length < mm(1))).toEqual([]);
  });

  it('should go round a strong block: 0.1 + 0.5 + 0.1 up the flange and 4 back', () => {
    expect(summed(piecesOf(shielded({ crossY: 'strong' })))).toEqual([
      [0, 4.7],
      [1, 4.6],
      [2, 4.5],
    ]);
  });
});

describe('pieces through the cover of a wire', () => {
  const covered = (height: number): Section =>
    sectionOf(
      [-1, -20, 11, 12],
      [
        solid([-1, -20, 11, 0]),
        metal('a', [0, 0, 10, 1]),
        solid([0, 1, 10, 1 + height], 6, { kind: 'wireCover', crossX: 1, crossY: 1 }),
        metal('b', [0, 1 + height, 10, 10]),
      ],
    );

  it('should count it while the run is under the least thickness, and take it as strong from there', () => {
    expect(summed(piecesOf(covered(0.399)))).toEqual([
      [0, 0.399],
      [1, 0],
    ]);
    expect(summed(piecesOf(covered(0.4)))).toEqual([[0, 0.4]]);
  });
});

describe('pieces past closed joints', () => {
  /** Two plies from `a` to `b`, which reach their joint and, 0.05 mm off it, the surfaces under and over them. */
  const endToEnd = (length: number, closed: boolean): Section => {
    const ply = { kind: 'ply', stuff: TAPE, layer: 1, closed, ...STRONG } as const;
    return sectionOf(
      [-1, -20, length + 1, 5],
      [
        solid([-1, -20, length + 1, 0]),
        solid([-1, 0, 0, 0.2], 0, STRONG),
        solid([length, 0, length + 1, 0.2], 0, STRONG),
        solid([0, 0, length, 0.1], 1, { ...ply, ply: 0 }),
        solid([0, 0.1, length, 0.2], 2, { ...ply, ply: 1 }),
        metal('a', [-1, 0.05, 0, 0.15]),
        metal('b', [length, 0.05, length + 1, 0.15]),
      ],
    );
  };

  it('should run between plies that are not cemented, round those that are: 0.05 + 8 + 0.05', () => {
    expect(summed(piecesOf(endToEnd(8, false)))).toEqual([[0, 8]]);
    expect(summed(piecesOf(endToEnd(8, true)))).toEqual([[0, 8.1]]);
  });

  it('should count a closed joint shorter than the least thickness as one ply of its own stuff', () => {
    const pieces = piecesOf(endToEnd(0.399, true));
    expect(summed(pieces)).toEqual([
      [0, 0.499],
      [1, 0],
    ]);
    expect(pieces.find(({ plies }) => plies === 1)!.punctured).toEqual([{ stuff: CLOSED_JOINT, count: 1 }]);
    expect(summed(piecesOf(endToEnd(0.4, true)))).toEqual([[0, 0.5]]);
  });

  /** Three plies from `a`, at their lower joint, to `b`, at the upper one; a seam under them half-way. */
  const stepwise = (length: number): Section => {
    const ply = { kind: 'ply', stuff: TAPE, layer: 1, closed: true, crossX: 'strong' } as const;
    return sectionOf(
      [-1, -20, length + 1, 5],
      [
        solid([-1, -20, length / 2, 0], 4, STRONG),
        solid([length / 2, -20, length + 1, 0], 5, STRONG),
        solid([-1, 0, 0, 0.2], 0, STRONG),
        solid([length, 0, length + 1, 0.1], 0, STRONG),
        solid([0, 0, length, 0.1], 1, { ...ply, ply: 0 }),
        solid([0, 0.1, length, 0.15], 2, { ...ply, ply: 1 }),
        solid([0, 0.15, length, 0.25], 3, { ...ply, ply: 2 }),
        metal('a', [-1, 0.05, 0, 0.12]),
        metal('b', [length, 0.12, length + 1, 0.2]),
      ],
    );
  };

  it('should add up what runs along two closed joints and through the ply between: under 0.4 mm two plies, else none', () => {
    const steps = (length: number) => summed(piecesOf(stepwise(length))).filter(([, each]) => each === 0);
    expect(steps(0.34)).toEqual([[2, 0]]);
    // 0.3 + 0.05 + 0.3: each joint is under 0.4 mm, together they are not
    expect(steps(0.6)).toEqual([]);
  });

  it('should leave no way without a puncture where everything is potted', () => {
    expect(summed(piecesOf(taped(3, 0.1, {}, true)))).toEqual([[3, 0]]);
    expect(piecesOf(taped(1, 0.4, {}, true))).toEqual([]);
  });
});

describe('sight lines', () => {
  /** A conductor on the floor, one on top of a wall 3 mm away and 4 mm above its corner. */
  const stepped = (more: readonly Region[] = []) =>
    sectionOf(
      [-1, -20, 8, 9],
      [
        solid([-1, -20, 8, 0]),
        solid([4, 0, 8, 5]),
        metal('a', [0, 0, 1, 1]),
        metal('b', [4, 5, 8, 6]),
        ...more,
      ],
    );
  const lengthOf = (section: Section, metric: PathOptions['metric']) =>
    Math.min(...piecesOf(section, { metric }).map(({ length }) => inMm(length)));

  it('should see straight through air for clearance, and follow the surface for creepage', () => {
    expect(lengthOf(stepped(), 'clearance')).toBeCloseTo(5, 5);
    expect(lengthOf(stepped(), 'creepage')).toBeCloseTo(3 + 5, 5);
  });

  it('should bend at a solid in the way: sqrt(1 + 9) + sqrt(4 + 1)', () => {
    const block = solid([2, 0, 3, 4], 1);
    expect(lengthOf(stepped([block]), 'clearance')).toBeCloseTo(Math.sqrt(10) + Math.sqrt(5), 5);
  });

  it('should pass a third conductor by without touching it: sqrt(1 + 4) + sqrt(4 + 4)', () => {
    const float = metal('float', [2, 0, 2.5, 3]);
    expect(lengthOf(stepped([float]), 'clearance')).toBeCloseTo(Math.sqrt(5) + Math.sqrt(8), 4);
  });

  it('should count no climb through a void that sags: 3 + 5 - 2 along it, sqrt(9 + 9) through it', () => {
    const { frame, ...rest } = stepped();
    const sagging = [{ x0: mm(0), y0: mm(0), x1: mm(8), y1: mm(2) }];
    expect(lengthOf({ ...rest, frame, sagging }, 'creepage')).toBeCloseTo(6, 5);
    expect(lengthOf({ ...rest, frame, sagging }, 'clearance')).toBeCloseTo(Math.sqrt(18), 5);
  });
});

describe('lines through air beside a flange', () => {
  /**
   * `a` lies 1.4 mm inside a flange of 1 mm and 0.35 mm under its rim, `b` on the rim 1.4 mm further out; a strong block
   * 1.2 mm wide stands in the way.
   */
  const beside = (side: 1 | -1): Section => {
    const at = ([x0, y0, x1, y1]: readonly [number, number, number, number]) =>
      side === 1 ? ([x0, y0, x1, y1] as const) : ([-x1, y0, -x0, y1] as const);
    return sectionOf(at([-3, -20, 10, 6]), [
      solid(at([-3, -20, 10, 0])),
      solid(at([-3, 0, 0, 1])),
      solid(at([1.4, 0, 3, 0.6]), 1, STRONG),
      solid(at([0, 0.7, 1.2, 1]), 2, STRONG),
      metal('a', at([1.4, 0.6, 3, 0.65])),
      metal('b', at([-2.4, 1, -1.4, 1.5])),
    ]);
  };

  it.each([1, -1] as const)(
    'should not climb inside it for nothing: hypot(0.2, 0.35) + 1.2 + 1.4 (%i)',
    (side) => {
      const [shortest, ...others] = summed(piecesOf(beside(side), { metric: 'clearance' }));
      expect(shortest![0]).toBe(0);
      expect(shortest![1]).toBeCloseTo(Math.hypot(0.2, 0.35) + 1.2 + 1.4, 4);
      expect(others).toEqual([]);
    },
  );
});
