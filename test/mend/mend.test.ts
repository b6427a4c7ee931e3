// Mends found by search: they reach what is asked, break when any act is taken out, and none is invented where none is.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { fileJudge } from '#judge/judging/judge-files.ts';
import { applyActs } from '#mend/acts/act.ts';
import { isMended } from '#mend/search/is-mended.ts';
import { MEND_DEFAULTS, mend, type Mending } from '#mend/search/mend.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';

const read = (path: string): DesignFile =>
  JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8')) as DesignFile;
const demo = (name: string): DesignFile => read(`../../static/demos/${name}.json`);
const margins = read('../lesson-margin.json');

const judge = fileJudge();

function mended(doc: DesignFile, top = 2): Mending {
  const search = mend(doc, judge, { ...MEND_DEFAULTS, top, budget: 120 });
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}

const holds = (doc: DesignFile): boolean => {
  const verdict = judge.whole(doc);
  return verdict !== null && isMended(verdict);
};

const short = [0, 2].reduce(
  (doc, layer) =>
    (['left', 'right'] as const).reduce(
      (file, side) => editDesign(file, `layers[${layer}].margins.${side}.width`, '2 mm'),
      doc,
    ),
  margins,
);

const BUILDS = [
  ['margins of 2 mm', short],
  ['one ply', demo('model-railway-controller')],
  ['an empty margin', editDesign(margins, 'layers[2].margins.right.filled', false)],
] as const;

describe('mend', () => {
  it.each(BUILDS)('should reach what is asked with nothing to spare: %s', (_, doc) => {
    const { proposals, none } = mended(doc);
    expect(none).toBeNull();
    expect(proposals.length).toBeGreaterThan(0);
    for (const { acts, design } of proposals) {
      expect(holds(design)).toBe(true);
      for (const act of acts) {
        const without = acts.filter((each) => each !== act);
        expect(without.length > 0 && holds(applyActs(doc, without))).toBe(false);
      }
    }
  });

  it('should find the least margin on one winding', () => {
    // 2.00 + 0.18 + x >= 5.0: 2.82, in steps of the hand 2.85
    const all = mended(short, 4).proposals.flatMap(({ changes }) => changes);
    expect(all.some(({ field, to }) => /margins/.test(field) && to === '2.85 mm')).toBe(true);
  });

  it('should say that nothing needs mending', () => {
    expect(mended(margins)).toMatchObject({ proposals: [], none: { why: 'meets' } });
  });

  it('should say what stays where no act of the trade reaches it', () => {
    const tooHot = editDesign(margins, 'surroundings.hottestInsulation', '300 degC');
    expect(mended(tooHot).none).toMatchObject({ why: 'no-act', spots: [{ kind: 'hot' }] });
  });
});
