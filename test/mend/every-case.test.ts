// Every failing demo and known answer: mended to the grade that it needs, with nothing to spare, or told why not and what would
// have to be known. A sixth of them here; MEND_PART=1/1 takes all (about two minutes, and three more for the demo of which
// nothing is known), MEND_PART=3/6 the third sixth.

import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { fileJudge } from '#judge/judging/judge-files.ts';
import { applyActs } from '#mend/acts/act.ts';
import { isMended } from '#mend/search/is-mended.ts';
import { MEND_DEFAULTS, mend, type Mending } from '#mend/search/mend.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { noMendWords } from '#words/mend/no-mend-words.ts';
import { cases } from '#test/cases/read-cases.ts';

const FOLDER = new URL('../../static/demos/', import.meta.url);
const demos = readdirSync(FOLDER).map((name) => ({
  id: name,
  doc: JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8')) as DesignFile,
}));
const [part = 1, parts = 6] = (process.env['MEND_PART'] ?? '1/6').split('/').map(Number);
/** Each of its judgements takes seconds. */
const SLOW = 'flea-market-drill.json';

const judge = fileJudge();
const failing = [...demos, ...cases.map(({ id, design }) => ({ id, doc: design as DesignFile }))]
  .filter(({ id }, i) => (parts === 1 || id !== SLOW) && i % parts === part - 1)
  .filter(({ doc }) => judge.reach(doc)?.mended === false);

function searched(doc: DesignFile): Mending {
  const search = mend(doc, judge, { ...MEND_DEFAULTS, top: 2 });
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}

describe('mend of every failing build', () => {
  it('should have some to look at', () => {
    expect(failing.length).toBeGreaterThan(8);
  });

  it.each(failing)('should mend $id with nothing to spare, or say why not', ({ doc }) => {
    const { proposals, none } = searched(doc);
    for (const { acts, design } of proposals) {
      const verdict = fileJudge().whole(design);
      expect(verdict !== null && isMended(verdict)).toBe(true);
      for (const act of acts) {
        const without = acts.filter((each) => each !== act);
        expect(without.length > 0 && judge.reach(applyActs(doc, without))?.mended === true).toBe(false);
      }
    }
    expect(proposals.length > 0).toBe(none === null);
    if (none === null) return;
    // never for want of time, and never without a figure or a fact that is missing
    expect(['unknown', 'no-act']).toContain(none.why);
    if (none.why === 'unknown') expect(none.fields.length).toBeGreaterThan(0);
    if (none.why === 'no-act') expect(none.spots.length).toBeGreaterThan(0);
    expect(noMendWords(none, doc)).toMatch(/have to be known|\d|Say how|Name what/);
  });
});
