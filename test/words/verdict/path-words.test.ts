import { describe, expect, it } from 'vitest';
import { pathParts, pathSentence } from '#words/verdict/path-words.ts';
import type { PathLeg } from '#judge/verdict/verdict.ts';

const leg = (kind: PathLeg['kind'], length: number, says = '', plies = 0): PathLeg => ({
  kind,
  from: [0, 0],
  to: [length, 0],
  length,
  plies,
  says,
});

describe('pathParts', () => {
  it('should tell neighbouring legs that say the same together', () => {
    const parts = pathParts([leg('surface', 1, 'up'), leg('surface', 0.5, 'up'), leg('surface', 2, 'back')]);
    expect(parts).toEqual([
      { text: '1.50 up', legs: [0, 1] },
      { text: '2.00 back', legs: [2] },
    ]);
  });

  it('should count plies instead of length where it goes through', () => {
    expect(pathSentence([leg('through', 0, '', 1), leg('air', 0.3)])).toBe(
      'through one ply, 0.30 through air',
    );
  });

  it('should count plies that the judgement told one by one', () => {
    const ply = leg('through', 0, 'through one ply', 1);
    expect(pathSentence([ply, ply, ply])).toBe('through 3 plies');
    expect(pathSentence([leg('through', 0, 'through the sleeve', 1), ply])).toBe(
      'through the sleeve, through one ply',
    );
  });

  it('should tell what is only grazed without a length', () => {
    const grazed = [
      leg('surface', 0.000_001, 'along the margin'),
      leg('air', 0.53),
      leg('surface', 0.000_001),
    ];
    expect(pathSentence(grazed)).toBe('past the margin, 0.53 through air, past a surface');
  });

  it('should tell a contact without a length', () => {
    expect(pathSentence([leg('surface', 0, 'in contact')])).toBe('in contact');
  });

  it('should add the plies of neighbouring punctures', () => {
    expect(pathSentence([leg('through', 0, '', 1), leg('through', 0, '', 2)])).toBe('through 3 plies');
  });

  it('should name what it runs over', () => {
    expect(pathSentence([leg('over', 0, 'over the core')])).toBe('over the core');
  });
});
