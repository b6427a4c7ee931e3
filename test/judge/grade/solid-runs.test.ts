// From how long a run on a solid counts as strong, and what a run in between is worth.

import { describe, expect, it } from 'vitest';
import { ruleBook } from '#books/shelf.ts';
import { StuffNumbers } from '#judge/assume/stuff.ts';
import type { PairQuestion } from '#judge/grade/path-requirement.ts';
import { solidRules } from '#judge/grade/solid-rules.ts';
import { solidRuns, withRuns } from '#judge/grade/solid-runs.ts';
import type { Solid } from '#books/questions/solid.ts';
import { mm, voltsPeak } from '#units/quantity.ts';
import { ASKED, plyOf } from '#test/judge/made-chain.ts';

const BOOK = ruleBook('iec-62368-1')!;
const RULES = solidRules(BOOK);

const question = (basic: number, reinforced: number): PairQuestion => {
  const both = { basic: voltsPeak(basic), reinforced: voltsPeak(reinforced) };
  const asked = { ...ASKED, levels: () => ({ ...both, ordinary: both }) };
  return {
    between: ['a', 'b'],
    needed: 'reinforced',
    required: {} as PairQuestion['required'],
    asked: { creepage: asked, clearance: asked },
    places: { outside: [], bridges: [] },
  };
};

/** Sixty per cent of 17 kV peak a millimetre. */
const PHENOLIC = BOOK.shownPerMm('phenolic').value;

const wall: Solid = { ...plyOf(0), kind: 'wall', strength: null, stated: false, perMm: PHENOLIC };

/** The first so many are given away. */
function numbersFrom(count: number): StuffNumbers {
  const numbers = new StuffNumbers();
  for (let i = 0; i < count; i++) numbers.of(`${i}`);
  return numbers;
}

/** Ends of the steps in micrometres, with the strength of each. */
const stepsOf = (one: Solid, ...levels: readonly (readonly [number, number])[]) => {
  const questions = levels.map(([basic, reinforced]) => question(basic, reinforced));
  const { runs, added } = solidRuns(questions, new Map([[0, one]]), RULES, numbersFrom(1));
  const stuffs = withRuns(new Map([[0, one]]), added);
  return runs[0]!.map(({ below, as }) => [Math.ceil(below / 1000), stuffs.get(as)!.strength]);
};

describe('compound with proof', () => {
  const compound: Solid = { ...plyOf(0), kind: 'closed-joint', strength: null };
  const stepsAt = (level: number, ordinary: number) => {
    const both = (volts: number) => ({ basic: voltsPeak(volts), reinforced: voltsPeak(volts) });
    const asked = { ...ASKED, levels: () => ({ ...both(level), ordinary: both(ordinary) }) };
    const one = { ...question(level, level), asked: { creepage: asked, clearance: asked } };
    return solidRuns([one], new Map([[0, compound]]), RULES, numbersFrom(1)).runs[0]!.map(
      ({ below }) => below,
    );
  };

  it('should be strong from the least thickness up to 1.6 times the ordinary test, and never beyond', () => {
    expect(stepsAt(6400, 4000)).toEqual([mm(0.4)]);
    expect(stepsAt(6401, 4000)).toEqual([Infinity]);
  });
});

describe('a moulding', () => {
  it('should be strong from the least thickness, which shows 4.08 kV', () => {
    expect(PHENOLIC).toBeCloseTo(10_200, 6);
    expect(stepsOf(wall, [2500, 4000])).toEqual([[400, null]]);
  });

  it('should be strong from the thickness on that shows a higher test, and show the lower one before', () => {
    // 4 and 6 kV less 0.1 % over 10.2 kV a millimetre
    expect(stepsOf(wall, [4000, 6000])).toEqual([
      [400, null],
      [588, 4000],
    ]);
  });

  it('should show between two pairs what the lower one asks', () => {
    expect(stepsOf(wall, [2500, 4000], [6000, 8000])).toEqual([
      [400, null],
      [588, 4000],
      [784, 6000],
    ]);
  });

  it('should count as the phenolic row where it has none, and by its own where it has', () => {
    expect(BOOK.shownPerMm('pet').value).toBe(PHENOLIC);
    expect(BOOK.shownPerMm(null).value).toBe(PHENOLIC);
    expect(BOOK.shownPerMm('ptfe').value).toBeCloseTo(0.6 * 27_000, 6);
  });

  it('should be strong from the least thickness at its best, whatever is asked', () => {
    expect(stepsOf({ ...wall, perMm: Infinity }, [6000, 8000])).toEqual([[400, null]]);
  });
});

describe('a sheet', () => {
  const film = (thickness: number, solid: number): Solid => ({
    ...wall,
    kind: 'sheet',
    thickness: mm(thickness),
    solid: mm(solid),
  });

  it('should be strong across where its film alone has the least thickness', () => {
    expect(stepsOf(film(0.45, 0.4), [2500, 4000])).toEqual([[400, null]]);
  });

  it('should count as one ply across where the film is a micrometre thinner, and lengthwise from more than that', () => {
    expect(stepsOf(film(0.45, 0.399), [2500, 4000])).toEqual([[451, null]]);
    expect(stepsOf(film(0.06, 0.025), [2500, 4000])).toEqual([[400, null]]);
  });

  it('should be strong by a stated withstand alone where it is woven', () => {
    const woven = { ...film(0.45, 0.45), perMm: 0 };
    expect(stepsOf(woven, [2500, 4000])).toEqual([[Infinity, null]]);
    const stated = { ...woven, stated: true, strength: voltsPeak(4000) };
    expect(stepsOf(stated, [2500, 4000])).toEqual([[400, 4000]]);
    expect(stepsOf(stated, [2500, 4100])).toEqual([[Infinity, 4000]]);
  });
});

describe('a certified cover of three layers', () => {
  it('should be strong at any thickness up to what it shows, and one ply of that above', () => {
    const cover: Solid = { ...wall, kind: 'cover', layers: 3, strength: BOOK.coverShown(3).value };
    expect(stepsOf(cover, [2500, 4000])).toEqual([]);
    expect(stepsOf(cover, [4000, 6000])).toEqual([[Infinity, 3000 * Math.SQRT2]]);
  });
});
