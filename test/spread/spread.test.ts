// The share of wound pieces that meet: against a closed form for margins, the same for the same seed, never above the truth.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { knownIds } from '#judge/fill/known-ids.ts';
import { judge } from '#judge/judge.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { coordinatesOf } from '#spread/coordinates.ts';
import { EXACT, PLACEMENT, type Placement } from '#spread/placement.ts';
import { spread, type JudgeFile, type Spread } from '#spread/spread.ts';
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

const judgeFile: JudgeFile = (doc) => {
  const read = readDesign(doc, knownIds);
  return read.kind === 'bad' ? null : judge(read.design).verdict;
};

function whole(doc: DesignFile, draws: number, placement: Placement, seed = 1): Spread {
  const search = spread(doc, judgeFile, { seed, draws, placement });
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}

const MARGINS_ONLY: Placement = { ...EXACT, margin: 0.2 };

describe('spread', () => {
  it('should equal the judgement where nothing varies', () => {
    expect(whole(withMargins('2.41 mm'), 5, EXACT)).toMatchObject({ share: 1, worstCase: 'meets' });
    expect(whole(withMargins('2.4 mm'), 5, EXACT)).toMatchObject({ share: 0, worstCase: 'falls-short' });
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
      return judgeFile(coordinates.reduce((file, { apply, draw }) => apply(file, draw(random)), doc));
    });
    const meets = alone.filter((verdict) => verdict?.verdict === 'meets').length;
    expect(whole(doc, 30, PLACEMENT, 3).share).toBe(meets / 30);
  });

  it('should be the same for the same seed and judge far fewer pieces than it draws', () => {
    const found = whole(withMargins('2.9 mm'), 300, PLACEMENT);
    expect(whole(withMargins('2.9 mm'), 300, PLACEMENT)).toEqual(found);
    expect(found.judged).toBeLessThan(100);
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
