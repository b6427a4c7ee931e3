// A mend whose own fields are no lengths, of a build at the edge: what lifts its share is looked for in the whole build.

import { describe, expect, it } from 'vitest';
import type { FileJudge } from '#judge/judging/judge-files.ts';
import { heldOf } from '#mend/hold/slack.ts';
import { lengthAt } from '#mend/acts/file-lengths.ts';
import { finished } from '#field/solve/finished.ts';
import { heldWords } from '#words/mend/held-words.ts';
import type { DesignFile } from '#model/schema/schema.ts';

const INTO = 'windings[0].leads.start.sleeve.into';
const build = {
  layers: [],
  windings: [{ leads: { start: { sleeve: { into: '3 mm' } }, finish: {} } }],
} as unknown as DesignFile;

/** Meets where the sleeve reaches 3 mm in: half a millimetre too short is drawn evenly. */
const judge = {
  reach: (doc: DesignFile) => {
    const meets = lengthAt(doc, INTO)! >= 3;
    return { meets, mended: meets };
  },
} as unknown as FileJudge;

describe('heldOf', () => {
  it('should lengthen the sleeves of the build where the mend has no length of its own', () => {
    const { share, slack } = finished(
      heldOf(build, [{ field: 'bridges[0].safetyClass' }] as never, { judge }),
    );
    expect(share).toBeLessThan(0.1);
    // 0.5 mm would do for certain; steps double from 0.1 mm: 0.8
    expect(slack).toMatchObject({ field: INTO, of: 'sleeves', by: 0.8, to: 3.8, share: 1 });
  });

  it('should say what it has where the time is over, and that it was cut', () => {
    let asked = 0;
    const isShareOver = (): boolean => (asked += 1) > 12;
    const cut = finished(
      heldOf(build, [{ field: INTO }] as never, { judge, isShareOver, isSlackOver: () => true }),
    );
    expect(cut).toMatchObject({ isCut: true, slack: null, isSlackCut: true });
    expect(cut.drawn).toBeGreaterThan(0);
    expect(cut.drawn).toBeLessThan(200);
    expect(heldWords(cut, build)).toMatch(/of the \d+ pieces that time was left for.*cut short/);
  });

  it('should take the least step that holds where the mend changes the length itself', () => {
    const { slack } = finished(heldOf(build, [{ field: INTO }] as never, { judge }));
    expect(slack!.of).toBe('mend');
    expect(slack!.by).toBeGreaterThanOrEqual(0.45);
    expect(slack!.by).toBeLessThanOrEqual(0.5);
  });
});
