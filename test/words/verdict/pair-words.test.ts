import { describe, expect, it } from 'vitest';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { headline, limitingFigure, pairLine, pairSentence, worstFirst } from '#words/verdict/pair-words.ts';
import type { PathLeg } from '#judge/verdict/path.ts';
import type { Limiting, PairVerdict } from '#judge/verdict/pair.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { greenhouseDesign, greenhouseVerdict as verdict } from '#test/papers/greenhouse.ts';

const looks = circuitLooks(greenhouseDesign().circuits);
const [worst, free] = verdict.pairs as [PairVerdict, PairVerdict];
const limiting = worst.limiting as Limiting;

const through = (plies: number): PathLeg => ({
  kind: 'through',
  from: [0, 0],
  to: [0, 0.06],
  length: 0,
  plies,
  course: { by: 'through', what: 'plies' },
});

describe('pairSentence', () => {
  it('should say what is asked, reached, measured and needed', () => {
    expect(pairSentence(worst, looks)).toBe(
      'Between Primary and Output reinforced insulation is asked, basic is reached: ' +
        'the shortest way along surfaces is 4.83 mm where 5.6 mm is needed.',
    );
  });

  it('should say both ends of what is not shown', () => {
    const open = { ...worst, verdict: 'not-shown', achievedAtBest: 'reinforced' } as const;
    expect(pairSentence(open, looks)).toMatch(
      /no more than basic is shown.*at its best it would be reinforced\.$/,
    );
  });

  it('should say that what is reached holds for the floor of the voltage only', () => {
    const stress = { ...worst.stress, rms: 240, basis: 'floor' } as const;
    const open = { ...worst, verdict: 'not-shown', achieved: 'reinforced', stress } as const;
    const words = pairSentence(open, looks);
    expect(words).toContain('asked and reinforced is reached');
    expect(words).toMatch(/holds for 240 V rms.*the working voltage is not known\.$/);
    expect(pairSentence({ ...open, achieved: 'basic' }, looks)).toContain('no more than basic is shown');
  });

  it('should say that nothing is asked', () => {
    expect(pairSentence(free, looks)).toBe('Between Primary and Auxiliary nothing is asked.');
  });

  it('should tell plies and what the path runs over', () => {
    const over = { ...worst, limiting: { ...limiting, legs: [through(1)], plies: 1, over: ['core'] } };
    expect(pairSentence(over, looks)).toContain(', through one ply, over the core.');
  });

  it('should call a solid that is crossed by its name', () => {
    const legs = [
      { ...through(1), course: { by: 'through', what: 'block' } as const },
      through(1),
      through(1),
    ];
    const crossed = { ...worst, limiting: { ...limiting, legs, plies: 3 } };
    expect(pairSentence(crossed, looks)).toContain(', through 2 plies and the margin block.');
  });

  it('should not call what counts for nothing a shortest way', () => {
    const with0 = (over: Partial<Limiting>) =>
      pairSentence({ ...worst, limiting: { ...limiting, length: 0, ...over } }, looks);
    expect(with0({ legs: [through(1)] })).toMatch(/: only one ply lies between them\.$/);
    expect(with0({ legs: [through(2)] })).toMatch(/: only 2 plies lie between them\.$/);
    expect(with0({ legs: [{ ...through(1), kind: 'closed-joint' }] })).toMatch(
      /: only a short closed joint lies between them\.$/,
    );
    expect(with0({ legs: [] })).toMatch(/: they touch, and enamel is no barrier\.$/);
    expect(with0({ legs: [], grade: 'none' })).toMatch(/: their bare metal touches\.$/);
    expect(with0({ over: ['core'] })).toMatch(/too short to count where 5\.6 mm is needed, over the core\.$/);
  });

  it('should call a distance outside the window by the name that the file gives it', () => {
    const pins = { ...worst, limiting: { ...limiting, legs: [], outside: ['pins'] } };
    expect(pairSentence(pins, looks)).toContain('the creepage outside the window (pins) is 4.83 mm');
  });

  it('should say that nothing of a circuit is drawn', () => {
    const none = {
      ...worst,
      verdict: 'not-shown',
      achieved: 'none',
      undrawn: ['out'],
      limiting: null,
    } as const;
    const words = 'No winding of Output is drawn: there is nothing to judge between Primary and Output.';
    expect(pairSentence(none, looks)).toBe(words);
    expect(pairLine(none, looks)).toBe('Primary to Output: not judged, for nothing of it is drawn');
  });
});

describe('limitingFigure', () => {
  it('should round what is there down and what is needed up', () => {
    expect(limitingFigure({ ...limiting, length: 4.8399, required: 5.601 })).toBe('creepage 4.83 of 5.61 mm');
  });

  it('should say that a distance lies outside', () => {
    const outside = { ...limiting, outside: ['pin rows'] };
    expect(limitingFigure(outside)).toBe('creepage 4.83 of 5.6 mm, outside the window');
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
    expect(headline({ ...verdict, weakSpots: [] }, looks)).toBe(
      'The output winding begins 1.65 mm from the left flange; it would have to begin at 2.42. ' +
        'Basic insulation stands there; reinforced is asked.',
    );
  });

  it('should tell once what mends the other spots of the pair, where that is not the same', () => {
    const [narrow] = verdict.weakSpots;
    const wanders = { ...narrow!, kind: 'drifting-tape' } as const;
    expect(headline({ ...verdict, weakSpots: [narrow!, narrow!] }, looks)).not.toContain('alone');
    expect(headline({ ...verdict, weakSpots: [narrow!, wanders, wanders] }, looks)).toMatch(
      / That alone will not do: take tape as wide as the chamber\.$/,
    );
  });

  it('should tell of mends that differ by their figure alone the one that does for all: 5.6 - 1.8 = 3.8', () => {
    const [narrow] = verdict.weakSpots;
    const over = (length: number) => ({ ...narrow!, kind: 'core-bridge', length, required: 5.6 }) as const;
    const told = headline({ ...verdict, weakSpots: [narrow!, over(3), over(1.8), over(2.5)] }, looks);
    expect(told).toMatch(
      / That alone will not do: 3\.80 mm more from the core, on one side or both, would do\.$/,
    );
    const known = headline({ ...verdict, weakSpots: [over(1.8), over(3)] }, looks);
    expect(known).not.toContain('alone');
  });

  it('should be the sentence of the worst pair where no margin is at fault', () => {
    const crossed = { ...worst, limiting: { ...worst.limiting!, plies: 1 } };
    expect(headline({ ...verdict, pairs: [crossed], weakSpots: [] }, looks)).toBe(
      pairSentence(crossed, looks),
    );
  });

  it('should tell a cause that belongs to no pair where every pair meets', () => {
    const meets = { ...worst, verdict: 'meets' } as const;
    const cause = { of: 'turn', layer: 2 } as const;
    const full = { ...verdict.weakSpots[0]!, kind: 'overfull', between: null, cause } as const;
    expect(headline({ ...verdict, pairs: [meets], weakSpots: [full] }, looks)).toMatch(
      /^One turn of layer 3 /,
    );
  });

  it('should say beside a good verdict what the core counted as primary would make of it', () => {
    const meets = { ...worst, verdict: 'meets' } as const;
    const whole = { ...verdict, verdict: 'meets', pairs: [meets] } as const;
    const core = (answer: Answer) =>
      headline({ ...whole, coreAsPrimary: { verdict: answer, pairs: [] } }, looks);
    expect(core('meets')).toBe(pairSentence(meets, looks));
    expect(core('falls-short')).toMatch(/With the core counted as primary it falls short\.$/);
    expect(core('not-shown')).toMatch(/With the core counted as primary it is not shown\.$/);
  });

  it('should say so where no pair asks for a barrier', () => {
    expect(headline({ ...verdict, pairs: [free], verdict: 'meets' }, looks)).toBe(
      'No pair of circuits asks for a barrier, so nothing is judged: are the roles of the circuits right?',
    );
  });
});
