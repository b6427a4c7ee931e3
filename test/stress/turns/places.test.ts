import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import type { Design } from '#model/design.ts';
import { runningConverter } from '#stress/converter/computed-stress.ts';
import { localStresses } from '#stress/turns/local-stress.ts';
import { placedLayers } from '#stress/turns/placed-layers.ts';
import { placedWindings, potentialAt, voltageBetweenPlaces, type HowWound } from '#stress/turns/places.ts';
import { waysWound, worstBetween } from '#stress/turns/ways-wound.ts';

import { flyback } from '#test/stress/flyback-bench.ts';

const AS_USUAL: HowWound = { diode: 'plus-lead', rail: 'minus', finishSwitches: new Set() };

function placed(design: Design, how: Partial<HowWound> = {}) {
  const running = runningConverter(design);
  const run = running?.runs[0];
  if (running == null || run === undefined) throw new Error('no converter');
  const all = placedWindings(design, running, run, { ...AS_USUAL, ...how });
  const winding = (id: string) => {
    const found = all.find((one) => one.winding === id);
    if (found === undefined) throw new Error(`no winding ${id}`);
    return found;
  };
  return { run, winding };
}

const locals = (design: Design) => {
  const running = runningConverter(design);
  if (running === null) throw new Error('no converter');
  return localStresses(design, running);
};

const layers = (...all: readonly (readonly [string, number] | number)[]) => ({
  layers: all.map((one) =>
    typeof one === 'number'
      ? { kind: 'tape', material: 'polyester-tape-25', plies: one }
      : { kind: 'winding', winding: one[0], turns: one[1] },
  ),
});

describe('placedWindings', () => {
  it('should run evenly from the switched start to the still finish', () => {
    const primary = placed(flyback()).winding('P');
    expect(potentialAt(primary, 0).levels.off).toBeCloseTo(373.352380466 / 2 + 100, 6);
    expect(potentialAt(primary, 72).levels.off).toBeCloseTo(373.352380466 / 2, 6);
    expect(potentialAt(primary, 18).levels.off).toBeCloseTo(373.352380466 / 2 + 75, 6);
    expect(potentialAt(primary, 36).levels.on).toBeCloseTo(0, 6);
  });

  it('should give the volts of one turn by the turns: 5.185 V on, 1.389 V off (flyback.worked)', () => {
    const { winding } = placed(flyback());
    for (const id of ['P', 'A', 'S']) {
      const [one, next] = [potentialAt(winding(id), 2), potentialAt(winding(id), 3)];
      expect(next.levels.on - one.levels.on).toBeCloseTo(5.1854497287, 6);
      expect(next.levels.off - one.levels.off).toBeCloseTo(-1.38888888889, 6);
    }
  });

  it('should share a primary wound in two windings between them', () => {
    const enamelled = { kind: 'enamelled', conductor: '0.2 mm', grade: 1 };
    const windings = [
      { id: 'P', circuit: 'pri', wire: enamelled },
      { id: 'Q', circuit: 'pri', wire: enamelled },
      { id: 'S', circuit: 'out', wire: enamelled },
    ];
    const split = flyback({ over: { windings, ...layers(['P', 36], 3, ['S', 9], 3, ['Q', 36]) } });
    const { winding } = placed(split);
    expect(winding('P').finish).toEqual(winding('Q').start);
    expect(winding('Q').finish.levels.off).toBeCloseTo(373.352380466 / 2, 6);
  });

  it('should mirror its places when start and finish are swapped', () => {
    const law = fc.property(
      fc.constantFrom('P', 'A', 'S'),
      fc.constantFrom('plus-lead' as const, 'return-lead' as const),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (id, diode, share) => {
        const one = placed(flyback(), { diode }).winding(id);
        const other = placed(flyback(), { diode, finishSwitches: new Set([id]) }).winding(id);
        const [a, b] = [potentialAt(one, share * one.turns), potentialAt(other, (1 - share) * one.turns)];
        expect(a.levels.on).toBeCloseTo(b.levels.on, 9);
        expect(a.levels.off).toBeCloseTo(b.levels.off, 9);
      },
    );
    fc.assert(law, { seed: 6 });
  });

  it('should find the voltage between places, with the mains in it across the barrier only', () => {
    const { run, winding } = placed(flyback());
    const [p, s] = [winding('P'), winding('S')];
    expect(voltageBetweenPlaces(run, p.start, s.finish).peak).toBeCloseTo(533.352380466, 6);
    expect(voltageBetweenPlaces(run, p.start, p.finish).rms).toBeCloseTo(193.223285467, 6);
  });
});

describe('localStresses', () => {
  it('should put the whole primary between the far turns of its two layers', () => {
    const [between] = locals(flyback({ over: layers(['P', 36], ['P', 36], 3, ['A', 11], 3, ['S', 9]) }));
    expect(between).toMatchObject({ layers: [0, 1], windings: ['P', 'P'], plies: 0, exceeds: false });
    expect(between?.peak).toBeCloseTo(373.352380466, 6);
  });

  it('should leave out what lies across the barrier and what lies behind another winding', () => {
    const found = locals(flyback({ over: layers(['P', 36], ['P', 36], 3, ['A', 11], 3, ['S', 9]) }));
    expect(found.map((one) => one.layers)).toEqual([
      [0, 1],
      [1, 3],
    ]);
  });

  it('should put both windings of one band beside what lies under and over them, and beside each other', () => {
    const beside = (winding: string, from: number, turns: number, more: object = {}) => ({
      kind: 'winding',
      winding,
      turns,
      extent: { from: `${from} mm`, to: `${from + 3} mm` },
      ...more,
    });
    const tape = { kind: 'tape', material: 'polyester-tape-25', plies: 2 };
    const over = [
      { kind: 'winding', winding: 'P', turns: 36 },
      tape,
      beside('P', 0, 18),
      beside('A', 5, 11, { beside: true }),
      tape,
      { kind: 'winding', winding: 'P', turns: 18 },
    ];
    const found = locals(flyback({ over: { layers: over } }));
    // 373.4 / 2 V on either side of the middle, 100 and 60 over it; A swings 373.4 x 11/72 about the rail it is tied to
    expect(found.map(({ layers, plies }) => [...layers, plies])).toEqual([
      [0, 2, 2],
      [0, 3, 2],
      [2, 3, 0],
      [2, 5, 2],
      [3, 5, 2],
    ]);
    expect(found[0]?.peak).toBeCloseTo((373.352380466 * 54) / 72, 6);
    expect(found[3]?.peak).toBeCloseTo((373.352380466 * 36) / 72, 6);
  });

  it('should compare with what enamel holds, and remark where it exceeds it with no tape between', () => {
    const thin = { kind: 'enamelled', conductor: '0.02 mm', grade: 1 };
    const windings = ['P', 'A', 'S'].map((id) => ({
      id,
      circuit: { P: 'pri', A: 'aux', S: 'out' }[id],
      wire: thin,
    }));
    const bare = locals(flyback({ over: { windings, ...layers(['P', 72], ['A', 11], 3, ['S', 9]) } }));
    expect(bare[0]?.holds).not.toBeNull();
    expect(bare[0]?.exceeds).toBe((bare[0]?.peak ?? 0) > (bare[0]?.holds ?? 0) * Math.SQRT2);
    expect(bare[0]?.exceeds).toBe(true);
    const taped = locals(flyback({ over: { windings, ...layers(['P', 72], 1, ['A', 11], 3, ['S', 9]) } }));
    expect(taped[0]).toMatchObject({ plies: 1, exceeds: false });
  });
});

const split = flyback({ over: layers(['P', 36], ['P', 36], 3, ['S', 9]) });

function ready(design: Design) {
  const running = runningConverter(design);
  if (running === null) throw new Error('no converter');
  return running;
}

describe('placedLayers', () => {
  it('should follow a winding through its layers: 36 of 72 turns are half of the swing', () => {
    const [one, two] = placedLayers(split, ready(split));
    expect(one).toMatchObject({ layer: 0, winding: 'P', turns: [0, 36] });
    expect(one?.off[0]).toBeCloseTo(373.352380466 / 2 + 100, 6);
    expect(one?.off[1]).toBeCloseTo(373.352380466 / 2 + 50, 6);
    expect(two?.on[0]).toBeCloseTo(0, 6);
    expect(two?.on[1]).toBeCloseTo(373.352380466 / 2, 6);
  });
});

describe('worstBetween', () => {
  it('should find the voltage between two turns of one winding by their distance', () => {
    const ways = waysWound(split, ready(split));
    const found = worstBetween(ways, { layer: 0, turns: [30] }, { layer: 1, turns: [6] });
    // turns 30 and 42 of 72: 12 turns of 5.185 V
    expect(found?.peak).toBeCloseTo(12 * 5.1854497287, 6);
    expect(worstBetween(ways, { layer: 0, turns: [0] }, { layer: 2, turns: [0] })).toBeNull();
  });

  it('should take each of two windings either way round, for the file does not say which end switches', () => {
    const ways = waysWound(split, ready(split));
    const peakFrom = (turn: number) =>
      worstBetween(ways, { layer: turn < 36 ? 0 : 1, turns: [turn % 36] }, { layer: 3, turns: [0] })?.peak;
    expect(peakFrom(0)).toBeCloseTo(533.352380466, 6);
    expect(worstBetween(ways, { layer: 1, turns: ['last'] }, { layer: 3, turns: [0] })?.peak).toBe(
      peakFrom(0),
    );
  });
});
