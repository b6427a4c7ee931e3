import { describe, expect, it, vi } from 'vitest';
import { Examination } from '#state/begin/examination.svelte.ts';
import { keepAnswers, keptAnswers } from '#state/session/session-answers.ts';
import { stubSession } from '#test/state/session-storage.ts';

describe('kept answers of an examination', () => {
  const held = stubSession();

  it('should be there again after a reload', () => {
    const before = new Examination(keptAnswers());
    before.choose('former', 'known');
    before.type('width', '14 mm');
    keepAnswers(before);
    const after = new Examination(keptAnswers());
    expect([after.given('former'), after.figure('width')]).toEqual(['known', '14 mm']);
    after.clear();
    expect([after.answered, after.figure('width')]).toEqual([0, null]);
  });

  it('should be none where what is kept cannot be read', () => {
    for (const text of ['{', 'null', '[]', '{"chosen":{"former":7},"typed":"x"}']) {
      held.set('layerwright-examination', text);
      const { answered } = new Examination(keptAnswers());
      expect(answered, text).toBe(0);
    }
    vi.stubGlobal('sessionStorage', undefined);
    expect(keptAnswers()).toEqual({ chosen: {}, typed: {} });
    expect(() => keepAnswers({ chosen: {}, typed: {} })).not.toThrow();
  });
});
