// Tables of variants: cells land in their fields, and what is wrong is said with its line.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { fieldAt } from '#model/edit/edit-design.ts';
import { readVariants } from '#model/read/read-variants.ts';
import type { DesignFile } from '#model/schema/schema.ts';

const lesson = JSON.parse(
  readFileSync(new URL('../../lesson-margin.json', import.meta.url), 'utf8'),
) as DesignFile;
const LEFT = 'layers[0].margins.left.width';

describe('a table of variants', () => {
  it('should set each cell in its field and leave out the empty ones', () => {
    const found = readVariants(lesson, `name,${LEFT},layers[1].plies\r\na,2 mm,4\r\n"b, wide",,\n`);
    if (found.kind === 'bad') throw new Error(found.says);
    const [a, b] = found.variants;
    expect(found.fields).toEqual([LEFT, 'layers[1].plies']);
    expect([fieldAt(a!.doc, LEFT), fieldAt(a!.doc, 'layers[1].plies')]).toEqual(['2 mm', 4]);
    expect(b).toMatchObject({ name: 'b, wide', doc: lesson });
  });

  it.each([
    ['no line of figures', LEFT, /at least one line/],
    ['an open quote', `${LEFT}\n"2 mm`, /quoted cell/],
    ['no path', `layers[\n2`, /line 1: found "layers\["/],
    ['too many cells', `${LEFT}\n2 mm,3 mm`, /line 2: found 2 cells, expected 1/],
    ['a layer that is not there', `layers[99].plies\n2`, /line 2: layers\[99\].plies/],
    ['a hostile path', `__proto__.x\n2`, /line 2/],
  ])('should say what is wrong: %s', (_, table, says) => {
    const found = readVariants(lesson, table);
    expect(found.kind === 'bad' && found.says).toMatch(says);
  });
});
