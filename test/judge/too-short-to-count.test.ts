// A piece of a path that is shorter than X at a floating core adds nothing; every face that lists the pieces says so, or
// what is listed would not add up to the length that is told.

import { describe, expect, it } from 'vitest';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { study } from '#judge/study.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { explainText } from '#words/derivation/explain-text.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { leadingPath } from '#words/paths/leading-path.ts';
import { verdictText } from '#words/verdict/verdict-text.ts';
import { designWith, pairOf } from './margin-build.ts';

// the outer winding's top lies at 0.96 mm, the core at 1.3 + 0.5: 0.84 mm, less than the 1 mm of pollution degree 2
const design = designWith({ 'former.height': '1.3 mm' });
const judged = study(design);
const pair = pairOf(judged.verdict);
const leading = leadingPath(pair)!;

describe('a piece that is too short to count', () => {
  it('should be left out of the length and told as nothing in the data', () => {
    // the other one: 3 mm of margin, 1.07 up the flange, 0.5 over the rim to the core
    expect(leading).toMatchObject({ length: 4.57, over: ['core'], grade: 'basic' });
    const path = pair.paths.find(({ over }) => over.length > 0)!;
    expect(path.pieces.map(({ length, counted }) => [length, counted])).toEqual([
      [4.57, 4.57],
      [0.84, 0],
    ]);
    const sum = leading.legs.reduce((all, leg) => all + (leg.counts === false ? 0 : leg.length), 0);
    expect(sum).toBeCloseTo(4.57, 4);
  });

  it('should be told as nothing in the text, the report and the worked sheet', () => {
    const told = '0.84 through air (too short, counts nothing)';
    expect(verdictText(design, judged.verdict)).toContain(told);
    expect(reportHtml({ design, judgement: judged, designText: '{}' })).toContain(told);
    expect(explainText(pair, circuitLooks(design.circuits))).toMatch(
      /piece +0\.84 mm, less than X +counts nothing/,
    );
  });

  it('should be drawn as a way that counts no length', () => {
    const path = sceneOf(design, judged, leading.section!, { pair: pair.between })!.path!;
    const drawn = path.pieces.reduce(
      (sum, { from, to }) => sum + Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]),
      0,
    );
    expect(drawn).toBeCloseTo(4.57, 4);
  });

  it('should count where it is as long as X', () => {
    const longer = pairOf(study(designWith({ 'former.height': '1.46 mm' })).verdict);
    expect(longer.paths.flatMap(({ legs }) => legs).filter(({ counts }) => counts === false)).toEqual([]);
  });
});
