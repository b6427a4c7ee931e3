import { describe, expect, it } from 'vitest';
import { sectionLabel } from '#words/design/section-label.ts';

describe('the name of a section', () => {
  it.each([
    ['plain', 'plain'],
    ['lead S finish', 'lead S finish'],
    ['slumped right', 'slumped to the right'],
    ['lead P start left, slumped left', 'lead P start at the left, slumped to the left'],
    ['lead P start bare, slumped', 'lead P start bare, slumped'],
  ])('should tell %s as %s', (name, label) => {
    expect(sectionLabel(name)).toBe(label);
  });
});
