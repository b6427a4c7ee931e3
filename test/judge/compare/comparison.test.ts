// Two builds compared: what is alike, what changed, what it did to each pair.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { compared } from '#judge/compare/comparison.ts';
import { fileJudge } from '#judge/judging/judge-files.ts';
import { alignLayers } from '#model/edit/align-layers.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import { insertAt } from '#model/edit/edit-list.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { comparisonHeadline, comparisonLines } from '#words/mend/compare-words.ts';

const lesson = JSON.parse(
  readFileSync(new URL('../../lesson-margin.json', import.meta.url), 'utf8'),
) as DesignFile;
const judge = fileJudge();
const judged = (doc: DesignFile) => ({ doc, verdict: judge.whole(doc)! });

describe('comparison', () => {
  it('should find a build like itself', () => {
    const same = compared(judged(lesson), judged(lesson));
    expect(same.changed).toEqual([]);
    expect(same.layers.every((layer) => layer.same)).toBe(true);
    expect(comparisonHeadline(same)).toBe('The two are alike.');
  });

  it('should tell one field that changed, its layer, and the pair that turned', () => {
    const narrow = editDesign(lesson, 'layers[2].margins.left.width', '1 mm');
    const found = compared(judged(lesson), judged(narrow));
    expect(found.changed).toEqual([{ field: 'layers[2].margins.left.width', from: '3 mm', to: '1 mm' }]);
    expect(found.layers.filter((layer) => !layer.same)).toEqual([{ a: 2, b: 2, same: false }]);
    expect(found.verdicts).toEqual(['meets', 'falls-short']);
    const [pair] = found.pairs.filter(({ a, b }) => a?.verdict !== b?.verdict);
    // one margin 2 mm narrower: the path round the tape edges at the flange loses 2.00
    expect(pair!.a!.limiting!.length! - pair!.b!.limiting!.length!).toBeCloseTo(2, 6);
    expect(comparisonLines(found, [], [lesson, narrow]).join('\n')).toMatch(
      /One|1 layer changed, 1 answer turned: meets -> falls short/,
    );
  });

  it('should align layers round one that was put in, and take it out again the other way', () => {
    const tape = { kind: 'tape', material: 'polyester-tape-25', plies: 1 } as const;
    const more = insertAt(lesson, 'layers', 1, tape);
    const aligned = alignLayers(lesson.layers, more.layers);
    expect(aligned.filter(({ a }) => a === null)).toHaveLength(1);
    expect(aligned.filter(({ b }) => b === null)).toHaveLength(0);
    const back = alignLayers(more.layers, lesson.layers);
    expect(back.map(({ a, b }) => [b, a])).toEqual(aligned.map(({ a, b }) => [a, b]));
  });
});
