// Nothing smaller than what the search finds: against every set of one or two changes out of a list of its own, on small
// invented builds. All 200 with MEND_BUILDS=200, which takes minutes; a few here.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { fileJudge } from '#judge/judging/judge-files.ts';
import { MEND_DEFAULTS, mend, type Mending } from '#mend/search/mend.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { randomOfDraw } from '#units/random.ts';

const lesson = JSON.parse(
  readFileSync(new URL('../lesson-margin.json', import.meta.url), 'utf8'),
) as DesignFile;
const BUILDS = Number(process.env['MEND_BUILDS'] ?? 5);
const judge = fileJudge();

type Edit = readonly [field: string, value: unknown];
const edited = (doc: DesignFile, edits: readonly Edit[]): DesignFile =>
  edits.reduce((file, [field, value]) => editDesign(file, field, value), doc);

const SIDES = ['left', 'right'] as const;
const margins = (layer: number, width: string, filled: boolean): readonly Edit[] =>
  SIDES.flatMap((side): readonly Edit[] => [
    [`layers[${layer}].margins.${side}.width`, width],
    [`layers[${layer}].margins.${side}.filled`, filled],
  ]);

/** Margins, their filling, plies and the width of the tape drawn by lot. */
function smallBuild(number: number): DesignFile {
  const random = randomOfDraw(7, number);
  const filled = random.oneOf([true, true, false]);
  return edited(lesson, [
    ...margins(0, `${random.oneOf([1, 2, 2.5])} mm`, filled),
    ...margins(2, `${random.oneOf([1, 2, 2.5])} mm`, filled),
    ['layers[1].plies', random.whole(1, 3)],
    ['layers[1].inset', { left: random.oneOf(['0 mm', '0.5 mm']), right: '0 mm' }],
  ]);
}

/** What a winder would try, each by itself; none of it comes from the search. */
const CHANGES: readonly (readonly Edit[])[] = [
  ...[0, 2].flatMap((layer) => ['3 mm', '4 mm'].map((width) => margins(layer, width, true))),
  ...[0, 2].map((layer) => SIDES.map((side): Edit => [`layers[${layer}].margins.${side}.filled`, true])),
  [['layers[1].plies', 3]],
  [['layers[1].inset', { left: '0 mm', right: '0 mm' }]],
  [['core.wrap', { material: 'polyester-tape-25', plies: 3 }]],
];

/** How many changes mend it at the least; null where no two do. */
function leastOf(doc: DesignFile): number | null {
  const mends = (edits: readonly Edit[]): boolean => judge.short(edited(doc, edits))?.mended === true;
  if (mends([])) return 0;
  if (CHANGES.some(mends)) return 1;
  const pairs = CHANGES.flatMap((a, i) => CHANGES.slice(i + 1).map((b) => [...a, ...b]));
  return pairs.some(mends) ? 2 : null;
}

function searched(doc: DesignFile): Mending {
  const search = mend(doc, judge, { ...MEND_DEFAULTS, top: 5, budget: 150 });
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}

describe('mend beside brute force', () => {
  it('should leave nothing smaller to be found', () => {
    let mended = 0;
    for (let number = 0; number < BUILDS; number += 1) {
      const doc = smallBuild(number);
      const least = leastOf(doc);
      const found = searched(doc);
      if (least === 0) expect([number, found.none?.why]).toEqual([number, 'meets']);
      if (least === 0 || least === null) continue;
      mended += 1;
      const fewest = Math.min(...found.proposals.map(({ acts }) => acts.length));
      expect([number, least, fewest <= least]).toEqual([number, least, true]);
    }
    expect(mended).toBeGreaterThan(1);
  });
});
