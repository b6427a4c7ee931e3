// The first way to mend: a mend to the edge is told as one on paper.

import { describe, expect, it } from 'vitest';
import type { Held } from '#mend/hold/slack.ts';
import type { Proposal } from '#mend/search/mend.ts';
import { firstWayWords } from '#words/mend/mend-words.ts';
import { percent } from '#words/mend/spread-words.ts';
import { plainFile } from '#test/model/sample-files.ts';

const doc = plainFile();
const proposal = { changes: [{ field: 'layers[1].plies', from: 1, to: 3 }] } as unknown as Proposal;
const held = (share: number, change: Partial<Held> = {}): Held => ({
  ...{ share, drawn: 200, isCut: false, slack: null, isSlackCut: false },
  ...change,
});

describe('the first way to mend', () => {
  it('should be one on paper while nobody has wound it', () => {
    expect(firstWayWords(proposal, null, doc)).toMatch(/^Mended on paper by .*1 -> 3\.$/);
  });

  it('should say how few pieces meet', () => {
    expect(firstWayWords(proposal, held(0.025), doc)).toMatch(
      /^Mended on paper by .*; wound by hand 2\.5 % of pieces meet\.$/,
    );
  });

  it('should be one where nearly all do, not where time was too short to draw them', () => {
    expect(firstWayWords(proposal, held(0.995), doc)).toMatch(/^Mended by .*1 -> 3\.$/);
    expect(firstWayWords(proposal, held(1, { drawn: 3, isCut: true }), doc)).toContain('on paper');
    expect(firstWayWords(proposal, held(0, { drawn: 0 }), doc)).toContain('on paper');
  });
});

describe('a share', () => {
  it('should never be all where one piece does not meet', () => {
    expect([1, 0.9999, 0.995, 0].map(percent)).toEqual(['100.0 %', '99.9 %', '99.5 %', '0.0 %']);
  });
});
