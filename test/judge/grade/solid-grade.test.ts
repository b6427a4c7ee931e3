// What solids in a piece are worth: every combination that the rules name. Strengths and test levels are peak volts.

import { describe, expect, it } from 'vitest';
import { because } from '#standards/because.ts';
import { ruleBook } from '#books/shelf.ts';
import { BASIC_AND_SUPPLEMENTARY, BASIC_ONLY, FUNCTIONAL, REINFORCED } from '#books/questions/insulation.ts';
import { inSeries } from '#judge/grade/grade.ts';
import { solidInsulations as judgedInsulations, solidRules } from '#judge/grade/solid-rules.ts';
import type { Solid } from '#books/questions/solid.ts';
import { nm, voltsPeak } from '#units/quantity.ts';

const RULES = solidRules(ruleBook('iec-62368-1')!);
const ORDINARY = { basic: voltsPeak(2500), reinforced: voltsPeak(4000) };
const LEVELS = { ...ORDINARY, ordinary: ORDINARY };

const stuff = (
  kind: Solid['kind'],
  strength: number | 'whatever' | null,
  more: Partial<Solid> = {},
): Solid => ({
  kind,
  alike: 'one tape',
  group: 'IIIa' as const,
  strength: typeof strength === 'number' ? voltsPeak(strength) : strength,
  stated: true,
  perMm: 10_200,
  material: null,
  thickness: nm(60_000),
  solid: nm(25_000),
  bonded: null,
  layers: null,
  because: because('margin-block', { field: '' }),
  ...more,
});

const solidInsulations = (...asked: Parameters<typeof judgedInsulations>) =>
  judgedInsulations(...asked).map(({ value }) => value);

/** Insulations of a piece through these solids, each with how often it is punctured. */
const through = (...solids: readonly (readonly [Solid, count: number])[]) =>
  solidInsulations(
    solids.map(([, count], stuff) => ({ stuff, count })),
    new Map(solids.map(([one], i) => [i, one])),
    () => LEVELS,
    RULES,
  );

const tape = (strength: number | 'whatever' | null, more: Partial<Solid> = {}) =>
  stuff('sheet', strength, more);
const other = (strength: number | null) => tape(strength, { alike: 'another tape' });

describe('plies that can be parted', () => {
  it.each([
    ['one that stands the reinforced test', [[tape(5000), 1]], BASIC_ONLY],
    ['one that stands the basic test exactly', [[tape(2500), 1]], BASIC_ONLY],
    ['one within the slack of 0.1 %', [[tape(2497.5), 1]], BASIC_ONLY],
    ['one just below it', [[tape(2497.4), 1]], FUNCTIONAL],
    ['one of which nothing is shown', [[tape(null), 1]], FUNCTIONAL],
    ['two that each stand the basic test', [[tape(2500), 2]], BASIC_AND_SUPPLEMENTARY],
    ['two that each stand the reinforced test', [[tape(4000), 2]], REINFORCED],
    ['two that only together stand the reinforced test', [[tape(3999 / 2), 2]], FUNCTIONAL],
    [
      'two of which one stands the reinforced test',
      [
        [tape(4000), 1],
        [other(2500), 1],
      ],
      BASIC_AND_SUPPLEMENTARY,
    ],
    ['three of which any two stand the reinforced test', [[tape(2000), 3]], REINFORCED],
    ['three of which any two stand the basic test only', [[tape(1250), 3]], BASIC_AND_SUPPLEMENTARY],
    ['three that stand nothing even together', [[tape(1200), 3]], FUNCTIONAL],
    ['three and more of nothing shown', [[tape(null), 4]], FUNCTIONAL],
    [
      'two unlike, each standing the reinforced test',
      [
        [tape(4000), 1],
        [other(4100), 1],
      ],
      REINFORCED,
    ],
    [
      'three unlike: twice the weaker stands',
      [
        [tape(3500), 2],
        [other(2000), 1],
      ],
      REINFORCED,
    ],
    [
      'three unlike: twice the weaker does not stand',
      [
        [tape(3500), 2],
        [other(1900), 1],
      ],
      BASIC_AND_SUPPLEMENTARY,
    ],
    [
      'three alike of two strengths: each sum stands',
      [
        [tape(2500), 2],
        [tape(1500), 1],
      ],
      REINFORCED,
    ],
    [
      'three alike of two strengths: one sum does not',
      [
        [tape(2500), 1],
        [tape(1500), 2],
      ],
      BASIC_AND_SUPPLEMENTARY,
    ],
    [
      'three of which one stands nothing',
      [
        [tape(2500), 2],
        [tape(null), 1],
      ],
      BASIC_AND_SUPPLEMENTARY,
    ],
    [
      'four of which three do',
      [
        [tape(2000), 3],
        [tape(null), 1],
      ],
      REINFORCED,
    ],
    ['two taken to stand whatever is asked', [[tape('whatever'), 2]], REINFORCED],
    [
      'three of which one is taken to stand whatever is asked',
      [
        [tape('whatever'), 1],
        [other(2000), 2],
      ],
      REINFORCED,
    ],
    ['one taken to stand whatever is asked', [[tape('whatever'), 1]], BASIC_ONLY],
  ] as const)('should grade %s', (_, solids, insulation) => {
    expect(through(...solids)).toEqual([insulation]);
  });

  it('should grade the table figure of polyester film: 3.6 kV x 60 % x sqrt 2 = 3.05 kV, any two 6.1 kV', () => {
    const film = tape(3600 * 0.6 * Math.SQRT2);
    expect(through([film, 1])).toEqual([BASIC_ONLY]);
    expect(through([film, 2])).toEqual([BASIC_AND_SUPPLEMENTARY]);
    expect(through([film, 3])).toEqual([REINFORCED]);
  });

  it('should reach nothing where the book has no test level', () => {
    const none = { basic: null, reinforced: null };
    const levels = () => ({ ...none, ordinary: none });
    expect(solidInsulations([{ stuff: 0, count: 3 }], new Map([[0, tape(9000)]]), levels, RULES)).toEqual([
      FUNCTIONAL,
    ]);
  });
});

describe('plies that cannot be parted', () => {
  const bonded = (strength: number | null, count: number) => through([tape(strength, { bonded: 1 }), count]);

  it('should ask twice the test of two: 8 kV from 2 x 4 kV', () => {
    expect(bonded(4000, 2)).toEqual([REINFORCED]);
    expect(bonded(3990, 2)).toEqual([BASIC_AND_SUPPLEMENTARY]);
    expect(bonded(2490, 2)).toEqual([FUNCTIONAL]);
  });

  it('should ask one and a half times the test of three, for reinforced 5 kV rms over the mandrel at the least', () => {
    expect(bonded(2357, 3)).toEqual([REINFORCED]);
    // 6 kV peak is one and a half times the test, but not 7.07 kV peak
    expect(bonded(2000, 3)).toEqual([BASIC_AND_SUPPLEMENTARY]);
    expect(bonded(1240, 3)).toEqual([FUNCTIONAL]);
    expect(bonded(null, 3)).toEqual([FUNCTIONAL]);
  });

  it('should take one ply of the stack as any ply', () => {
    expect(bonded(4000, 1)).toEqual([BASIC_ONLY]);
  });
});

describe('wire covers', () => {
  // as their type test shows: half of 3 and of 6 kV rms over two covers
  const cover = (layers: 1 | 2 | 3, alike = 'P') =>
    stuff('cover', (layers === 3 ? 3000 : 1500) * Math.SQRT2, { alike, layers, stated: false });

  it('should take one certified layer as basic, two as basic and supplementary', () => {
    expect(through([cover(1), 1])).toEqual([BASIC_ONLY]);
    expect(through([cover(2), 2])).toEqual([BASIC_AND_SUPPLEMENTARY]);
  });

  it('should take three as reinforced', () => {
    expect(through([cover(3), 3])).toEqual([REINFORCED]);
  });

  it('should make a double of two layers and one, and of two layers crossed twice', () => {
    expect(inSeries(through([cover(2), 2], [cover(1, 'S'), 1]))).toBe('double');
    expect(inSeries(through([cover(2), 4]))).toBe('double');
  });

  it('should stay basic with two covers of one layer: neither is supplementary', () => {
    expect(inSeries(through([cover(1), 1], [cover(1, 'S'), 1]))).toBe('basic');
  });

  it('should take a cover and a ply in series', () => {
    expect(inSeries(through([cover(2), 2], [tape(2500), 1]))).toBe('double');
    expect(inSeries(through([cover(1), 1], [tape(2500), 1]))).toBe('basic');
    expect(inSeries(through([cover(1), 1], [tape(2500), 2]))).toBe('double');
  });

  it('should never take fully insulated wire as more than one ply', () => {
    expect(through([stuff('full-cover', 9000), 1])).toEqual([BASIC_ONLY]);
    expect(through([stuff('full-cover', 9000), 3])).toEqual([BASIC_ONLY]);
    expect(through([stuff('full-cover', 2400), 1])).toEqual([FUNCTIONAL]);
    expect(inSeries(through([stuff('full-cover', 9000), 1], [tape(5000), 1]))).toBe('basic');
  });
});

describe('what a certificate shows of a cover', () => {
  const graded = (layers: 1 | 2 | 3, basic: number, reinforced: number, ordinary = basic, stated = false) => {
    const shown = (layers === 3 ? 3000 : 1500) * Math.SQRT2;
    const levels = {
      basic: voltsPeak(basic),
      reinforced: voltsPeak(reinforced),
      ordinary: { basic: voltsPeak(ordinary), reinforced: voltsPeak(reinforced) },
    };
    const one = stuff('cover', shown, { layers, stated });
    return solidInsulations([{ stuff: 0, count: layers }], new Map([[0, one]]), () => levels, RULES);
  };

  it.each([
    ['three layers up to 4.24 kV peak', graded(3, 2500, 4242), REINFORCED],
    ['three layers above it for basic, up to half of it', graded(3, 2121, 4300), BASIC_ONLY],
    ['three layers above both for nothing', graded(3, 2200, 4300), FUNCTIONAL],
    ['one layer at the ordinary level', graded(1, 2500, 4000), BASIC_ONLY],
    ['one layer above what two twisted wires stand for nothing', graded(1, 4300, 6000), FUNCTIONAL],
    [
      'one layer at a high-frequency level that half a twisted pair stands',
      graded(1, 2100, 4000, 1500),
      BASIC_ONLY,
    ],
    ['one layer at a higher one for nothing', graded(2, 2200, 4000, 1500), FUNCTIONAL],
    ['a stated strength for as much as it is', graded(3, 2500, 4300, 2500, true), BASIC_ONLY],
  ])('should be worth %s', (_, found, expected) => {
    expect(found).toEqual([expected]);
  });
});

describe('plies at high frequency', () => {
  it('should stand the larger level of their own material', () => {
    const levels = (material: string | null) => {
      const both = { basic: voltsPeak(2500), reinforced: voltsPeak(material === null ? 5000 : 4000) };
      return { ...both, ordinary: ORDINARY };
    };
    const grade = (material: string | null) =>
      solidInsulations([{ stuff: 0, count: 2 }], new Map([[0, tape(4500, { material })]]), levels, RULES);
    expect(grade('ptfe')).toEqual([REINFORCED]);
    expect(grade(null)).toEqual([BASIC_AND_SUPPLEMENTARY]);
  });
});

describe('thin blocks, sleeves, walls and closed joints', () => {
  it.each(['block', 'sleeve', 'wall', 'closed-joint'] as const)(
    'should take a thin %s as basic at most, and only with a strength shown',
    (kind) => {
      expect(through([stuff(kind, 9000), 1])).toEqual([BASIC_ONLY]);
      expect(through([stuff(kind, 9000), 3])).toEqual([BASIC_ONLY]);
      expect(through([stuff(kind, 2400), 1])).toEqual([FUNCTIONAL]);
      expect(through([stuff(kind, null), 1])).toEqual([FUNCTIONAL]);
    },
  );

  it('should not add them to the plies of tape', () => {
    expect(inSeries(through([stuff('sleeve', 9000), 1], [tape(5000), 1]))).toBe('basic');
    expect(inSeries(through([stuff('sleeve', 9000), 1], [tape(2500), 2]))).toBe('double');
  });
});
