// The share of wound pieces that meet: against a closed form for margins, the same for the same seed, never above the truth.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { fileJudge } from '#judge/judging/judge-files.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { coordinatesOf } from '#spread/coordinates.ts';
import { EXACT, PLACEMENT, type Placement } from '#spread/placement.ts';
import { spread, spreadOf, spreadPart, type Spread, type SpreadOptions } from '#spread/spread.ts';
import { EMPTY, joined } from '#spread/spread-part.ts';
import { wilson } from '#spread/wilson.ts';
import { randomOfDraw } from '#units/random.ts';

const margins = JSON.parse(
  readFileSync(new URL('../lesson-margin.json', import.meta.url), 'utf8'),
) as DesignFile;

const withMargins = (width: string): DesignFile =>
  [0, 2].reduce(
    (doc, layer) =>
      (['left', 'right'] as const).reduce(
        (file, side) => editDesign(file, `layers[${layer}].margins.${side}.width`, width),
        doc,
      ),
    margins,
  );

const judge = fileJudge();

function whole(doc: DesignFile, draws: number, placement: Placement, seed = 1, measured = 0): Spread {
  const search = spread(doc, judge, { seed, draws, placement, measured });
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}

const MARGINS_ONLY: Placement = { ...EXACT, margin: 0.2 };

describe('spread', () => {
  it('should equal the judgement where nothing varies', () => {
    expect(whole(withMargins('2.41 mm'), 5, EXACT)).toMatchObject({
      share: 1,
      worstCase: { verdict: 'meets' },
    });
    expect(whole(withMargins('2.4 mm'), 5, EXACT)).toMatchObject({
      share: 0,
      worstCase: { verdict: 'falls-short' },
    });
  });

  it('should agree with the closed form for two margins on each of two sides', () => {
    // each side meets where its two margins and 0.18 of tape make 5.0: the sum of two even spreads of 0.4 about 4.82 is
    // above 4.82 in half of all cases, both sides in a quarter; 19 times in 20 within the interval
    const { share, interval } = whole(withMargins('2.41 mm'), 80, MARGINS_ONLY);
    expect(interval[0]).toBeLessThan(0.25);
    expect(interval[1]).toBeGreaterThan(0.25);
    expect(share).toBeGreaterThan(0.1);
  });

  it('should tell of every piece what judging it alone does', () => {
    const doc = withMargins('2.45 mm');
    const coordinates = coordinatesOf(doc, PLACEMENT);
    const alone = Array.from({ length: 30 }, (_, i) => {
      const random = randomOfDraw(3, i);
      return judge.whole(coordinates.reduce((file, { apply, draw }) => apply(file, draw(random)), doc));
    });
    const meets = alone.filter((verdict) => verdict?.verdict === 'meets').length;
    expect(whole(doc, 30, PLACEMENT, 3).share).toBe(meets / 30);
  });

  it('should be the same for the same seed, worked on in one, two or four parts', () => {
    const doc = withMargins('2.9 mm');
    const options: SpreadOptions = { seed: 1, draws: 200, measured: 30, placement: PLACEMENT };
    const inParts = (parts: number): Spread => {
      const size = options.draws / parts;
      const all = Array.from({ length: parts }, (_, i) => {
        const search = spreadPart(doc, fileJudge(), options, [i * size, (i + 1) * size]);
        let step = search.next();
        while (step.done !== true) step = search.next();
        return step.value;
      });
      return spreadOf(doc, judge, options, all.reduce(joined, EMPTY));
    };
    const one = inParts(1);
    expect(inParts(2)).toEqual(one);
    expect(inParts(4)).toEqual(one);
    expect(one.distances[0]?.lengths.length).toBe(30);
    expect(one.deciding.reduce((sum, { weight }) => sum + weight, 0)).toBeLessThanOrEqual(1.2);
  });

  it('should judge far fewer pieces than it draws', () => {
    let judged = 0;
    const counting = {
      ...judge,
      reach: (doc: DesignFile) => {
        judged += 1;
        return judge.reach(doc);
      },
    };
    const search = spreadPart(
      withMargins('2.9 mm'),
      counting,
      { seed: 1, draws: 300, measured: 0, placement: PLACEMENT },
      [0, 300],
    );
    for (let step = search.next(); step.done !== true; step = search.next());
    expect(judged).toBeGreaterThan(0);
    expect(judged).toBeLessThan(100);
  });

  it('should give the interval of a share as published', () => {
    // 8 of 10 at 95 %: 0.490 to 0.943, Newcombe, "Two-sided confidence intervals for the single proportion",
    // Statistics in Medicine 17 (1998), the score method
    const [low, high] = wilson(8, 10);
    expect(low).toBeCloseTo(0.4902, 3);
    expect(high).toBeCloseTo(0.9433, 3);
    expect(wilson(0, 0)).toEqual([0, 1]);
  });
});
