import { describe, expect, it } from 'vitest';
import { otherPathScales, pathScaleOf } from '#drawing/path/path-scale.ts';
import { greenhouseVerdict as verdict } from '#test/papers/greenhouse.ts';

const span = ([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]) =>
  Math.hypot(bx - ax, by - ay);

describe('pathScaleOf', () => {
  const scale = pathScaleOf(verdict, 'plain', {}, [0, 12]);

  it('should lay out exactly the length of the path', () => {
    const total = scale?.pieces.reduce((sum, piece) => sum + span(piece.from, piece.to), 0);
    expect(total).toBeCloseTo(4.83, 9);
  });

  it('should alternate filled and hollow at every whole millimetre', () => {
    let walked = 0;
    for (const piece of scale?.pieces ?? []) {
      expect(piece.filled).toBe(Math.floor(walked + 1e-9) % 2 === 0);
      walked += span(piece.from, piece.to);
    }
    expect(scale?.pieces.filter(({ tick }) => tick).length).toBe(4);
  });

  it('should go on by what is missing at the end with the shorter margin', () => {
    expect(scale?.shortfall?.missing).toBeCloseTo(0.77, 9);
    expect(scale?.shortfall?.from).toEqual([1.65, 1.1]);
    expect(scale?.shortfall?.to[0]).toBeCloseTo(2.42, 9);
    expect(scale?.shortfall?.to[1]).toBeCloseTo(1.1, 9);
  });

  it('should draw nothing for a pair that asks nothing', () => {
    expect(pathScaleOf(verdict, 'plain', { pair: ['aux', 'pri'] }, [0, 12])).toBeNull();
  });

  it('should draw on another section the worst that is known of the pair there', () => {
    const [pair, ...rest] = verdict.pairs;
    const [path] = pair!.paths;
    const lead = { ...path!, section: 'lead S finish', length: 5.4 };
    const known = { ...verdict, weakSpots: [], pairs: [{ ...pair!, paths: [path!, lead] }, ...rest] };
    expect(pathScaleOf(known, 'lead S finish', {}, [0, 12])).toMatchObject({ length: 5.4, required: 5.6 });
    const spots = verdict.weakSpots.map((spot) => ({ ...spot, points: [[0, 0] as const, [5, 0] as const] }));
    expect(pathScaleOf({ ...known, weakSpots: spots }, 'lead S finish', {}, [0, 12])?.length).toBe(5.18);
    expect(pathScaleOf(known, 'lead P start', {}, [0, 12])).toBeNull();
    // what plies hold is no weak path, however short
    const held = { ...lead, plies: 3, length: 0, grade: 'reinforced' } as const;
    const both = { ...known, pairs: [{ ...pair!, paths: [path!, held, lead] }, ...rest] };
    expect(pathScaleOf(both, 'lead S finish', {}, [0, 12])?.length).toBe(5.4);
  });

  it('should mark a puncture and count no length for it', () => {
    const [worst, ...rest] = verdict.pairs;
    if (worst?.limiting == null) throw new Error('the fixture has a limiting path');
    const through = {
      kind: 'through',
      from: [3, 0.92],
      to: [3, 1.1],
      length: 0,
      plies: 3,
      course: null,
    } as const;
    const punctured = { ...worst, limiting: { ...worst.limiting, length: 0, legs: [through], plies: 3 } };
    const drawn = pathScaleOf({ ...verdict, pairs: [punctured, ...rest] }, 'plain', {}, [0, 12]);
    expect(drawn?.pieces).toEqual([]);
    expect(drawn?.uncounted).toEqual([]);
    expect(drawn?.punctures.map(({ plies }) => plies)).toEqual([3]);
  });

  it('should list the limiting paths of other pairs but not the one drawn', () => {
    expect(otherPathScales(verdict, 'plain', scale, [0, 12])).toEqual([]);
    expect(otherPathScales(verdict, 'plain', null, [0, 12]).map(({ length }) => length)).toEqual([4.83]);
  });
});
