import { describe, expect, it } from 'vitest';
import { materialWords } from '#words/design/material-words.ts';

describe('names of materials in a sentence', () => {
  it.each([
    ['polyester-tape-25', 'polyester tape, 25 µm film'],
    ['phenolic', 'phenolic'],
    ['pbt', 'PBT, glass filled'],
    ['ptfe', 'PTFE'],
    ['silicone-glass', 'silicone rubber on glass braid'],
  ])('should call %s %s', (id, words) => {
    expect(materialWords(id)).toBe(words);
  });

  it('should leave what is in no table as it stands', () => {
    expect(materialWords('of our own')).toBe('of our own');
  });
});
