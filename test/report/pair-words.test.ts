import { describe, expect, it } from 'vitest';
import { circuitLooks } from '#report/circuit-look.ts';
import { headline, limitingFigure, pairSentence, worstFirst } from '#report/pair-words.ts';
import type { Limiting, PairVerdict } from '#rules/verdict.ts';
import { greenhouseDesign, greenhouseVerdict as verdict } from './greenhouse.ts';

const looks = circuitLooks(greenhouseDesign().circuits);
const [worst, free] = verdict.pairs as [PairVerdict, PairVerdict];
const limiting = worst.limiting as Limiting;

describe('pairSentence', () => {
  it('should say what is asked, reached, measured and needed', () => {
    expect(pairSentence(worst, looks)).toBe(
      'Between Primary and Output reinforced insulation is asked, basic is reached: ' +
        'the shortest way along surfaces is 4.83 mm where 5.6 mm is needed.',
    );
  });

  it('should say both ends of what is not shown', () => {
    const open = { ...worst, verdict: 'not-shown', achievedAtBest: 'reinforced' } as const;
    expect(pairSentence(open, looks)).toMatch(/known is only basic.*at its best it would be reinforced\.$/);
  });

  it('should say that what is reached holds for the floor of the voltage only', () => {
    const stress = { ...worst.stress, rms: 240, basis: 'floor' } as const;
    const open = { ...worst, verdict: 'not-shown', achieved: 'reinforced', stress } as const;
    const words = pairSentence(open, looks);
    expect(words).toContain('asked and reinforced is reached');
    expect(words).toMatch(/holds for 240 V rms.*the working voltage is not known\.$/);
    expect(pairSentence({ ...open, achieved: 'basic' }, looks)).toContain('known is only basic');
  });

  it('should say that nothing is asked', () => {
    expect(pairSentence(free, looks)).toBe('Between Primary and Auxiliary nothing is asked.');
  });

  it('should tell plies and what the path runs over', () => {
    const over = { ...worst, limiting: { ...limiting, plies: 1, over: ['core'] } };
    expect(pairSentence(over, looks)).toContain(', through one ply, over core.');
  });
});

describe('limitingFigure', () => {
  it('should round what is there down and what is needed up', () => {
    expect(limitingFigure({ ...limiting, length: 4.8399, required: 5.601 })).toBe('creepage 4.83 of 5.61 mm');
  });

  it('should name what has no length', () => {
    expect(limitingFigure({ ...limiting, length: null })).toBe('creepage, solid insulation alone');
    expect(limitingFigure({ ...limiting, metric: 'bridge', bridge: 'CY1', length: null })).toBe(
      'bridging part CY1',
    );
  });
});

describe('worstFirst', () => {
  it('should order by answer and put what asks nothing last', () => {
    const meets = { ...worst, verdict: 'meets' } as const;
    const open = { ...worst, verdict: 'not-shown' } as const;
    const ordered = worstFirst({ ...verdict, pairs: [free, meets, open, worst] });
    expect(ordered).toEqual([worst, open, meets, free]);
  });
});

describe('headline', () => {
  it('should name the winding that begins too near its flange: 1.65 + (5.6 - 4.83) = 2.42', () => {
    expect(headline(verdict, looks)).toBe(
      'The output winding begins 1.65 mm from the left flange; it would have to begin at 2.42. ' +
        'Basic insulation stands there; reinforced is asked.',
    );
  });

  it('should be the sentence of the worst pair where no margin is at fault', () => {
    const through = { ...worst, limiting: { ...worst.limiting!, plies: 1 } };
    expect(headline({ ...verdict, pairs: [through] }, looks)).toBe(pairSentence(through, looks));
  });

  it('should tell a cause that belongs to no pair where every pair meets', () => {
    const meets = { ...worst, verdict: 'meets' } as const;
    const hot = { ...verdict.weakSpots[0]!, kind: 'hot', between: null, says: 'It is too hot.' } as const;
    expect(headline({ ...verdict, pairs: [meets], weakSpots: [hot] }, looks)).toBe('It is too hot.');
  });

  it('should say so where no pair asks for a barrier', () => {
    expect(headline({ ...verdict, pairs: [free], verdict: 'meets' }, looks)).toBe(
      'No pair of circuits asks for a barrier.',
    );
  });
});
