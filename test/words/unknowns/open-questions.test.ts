import { describe, expect, it } from 'vitest';
import { openQuestionsOf } from '#words/unknowns/open-questions.ts';
import { greenhouseDesign } from '#test/papers/greenhouse.ts';

describe('openQuestionsOf', () => {
  const design = greenhouseDesign();
  const asks = (pattern: RegExp, more = {}) =>
    openQuestionsOf({ ...design, ...more }).some((text) => pattern.test(text));

  it('should ask of covered wire only where there is some', () => {
    expect(asks(/stripped/)).toBe(false);
    const covered = design.windings.map((winding) => ({
      ...winding,
      wire: { ...winding.wire, kind: 'layer-insulated' as const },
    }));
    expect(asks(/stripped/, { windings: covered })).toBe(true);
  });

  it('should fall silent where the file answers', () => {
    expect(asks(/pins sunk/)).toBe(true);
    const between = ['pri', 'out'] as const;
    const outside = [
      { between, what: 'pin rows', clearance: null, creepage: null, materialGroup: 'IIIb' as const },
    ];
    expect(asks(/pins sunk/, { outside })).toBe(false);
  });

  it('should ask about ageing and marks of a dissected part only', () => {
    expect(asks(/ageing/) && asks(/marks/)).toBe(true);
    expect(asks(/ageing|marks/, { origin: 'proposed' })).toBe(false);
  });
});
