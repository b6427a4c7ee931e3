import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { finished } from '#field/solve/finished.ts';
import { COARSE, fieldOf } from '#judge/field/field-of.ts';
import { fieldPicture } from '#judge/field/field-picture.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { study } from '#judge/study.ts';
import { readDesign } from '#model/read/read-design.ts';
import { reportHtml } from '#papers/html/report/report.ts';

describe('the field in the report', () => {
  it('should stand on a page of its own where it was solved, and be left out where not', () => {
    const designText = readFileSync('test/lesson-margin.json', 'utf8');
    const read = readDesign(JSON.parse(designText), knownIds);
    if (read.kind === 'bad') throw new Error('bad lesson');
    const { design } = read;
    const judgement = study(design);
    const picture = fieldPicture(finished(fieldOf(design, judgement, COARSE)));
    const withField = reportHtml({ design, judgement, designText, field: picture });
    expect(withField).toContain('The field of the section');
    expect(withField).toContain('own-page');
    expect(withField).toContain('a first look on a coarse mesh');
    expect(withField).toMatch(/Where discharge would start/);
    expect(withField).not.toMatch(/NaN|Infinity/);
    expect(reportHtml({ design, judgement, designText })).not.toContain('The field of the section');
  });
});
