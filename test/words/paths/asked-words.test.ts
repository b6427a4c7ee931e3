import { describe, expect, it } from 'vitest';
import { askedWords } from '#words/paths/asked-words.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import { greenhouseVerdict as verdict } from '#test/papers/greenhouse.ts';

const [worst] = verdict.pairs as [PairVerdict];

describe('askedWords', () => {
  it('should say which voltage and which group a creepage stands on', () => {
    expect(askedWords(worst, 'creepage')).toEqual({
      figure: '272 V rms',
      rest: 'as measured, surface of group IIIb',
    });
  });

  it('should say of a clearance the peak and the surge that decide it', () => {
    expect(askedWords(worst, 'clearance')).toEqual({
      figure: '560 V peak',
      rest: 'as measured, surges of 2500 V',
    });
  });

  it('should say that the least the mains allows was counted where nobody gave a voltage', () => {
    const floor = { ...worst, stress: { ...worst.stress, rms: 240, basis: 'floor' } } as const;
    expect(askedWords(floor, 'creepage').rest).toContain('that the mains alone puts there');
  });
});
