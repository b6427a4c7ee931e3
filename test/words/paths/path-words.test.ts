import { describe, expect, it } from 'vitest';
import { pathParts, pathSentence } from '#words/paths/path-words.ts';
import type { PathLeg } from '#judge/verdict/path.ts';

const leg = (
  kind: PathLeg['kind'],
  length: number,
  course: PathLeg['course'] = null,
  plies = 0,
): PathLeg => ({
  kind,
  from: [0, 0],
  to: [length, 0],
  length,
  plies,
  course,
});

const UP = { by: 'up', what: 'flange' } as const;
const BACK = { by: 'along', what: 'margin', back: true } as const;

describe('pathParts', () => {
  it('should tell neighbouring legs that say the same together', () => {
    const parts = pathParts([leg('surface', 1, UP), leg('surface', 0.5, UP), leg('surface', 2, BACK)]);
    expect(parts).toEqual([
      { text: '1.50 up the flange', legs: [0, 1] },
      { text: '2.00 back along the margin', legs: [2] },
    ]);
  });

  it('should count plies instead of length where it goes through', () => {
    expect(pathSentence([leg('through', 0, null, 1), leg('air', 0.3)])).toBe(
      'through one ply, 0.30 through air',
    );
  });

  it('should count plies that the judgement told one by one', () => {
    const ply = leg('through', 0, { by: 'through', what: 'plies' }, 1);
    expect(pathSentence([ply, ply, ply])).toBe('through 3 plies');
    expect(pathSentence([leg('through', 0, { by: 'through', what: 'sleeve' }, 1), ply])).toBe(
      'through the sleeve, through one ply',
    );
  });

  it('should tell what is only grazed without a length', () => {
    const grazed = [
      leg('surface', 0.000_001, { ...BACK, back: false }),
      leg('air', 0.53),
      leg('surface', 0.000_001),
    ];
    expect(pathSentence(grazed)).toBe('past the margin, 0.53 through air, past a surface');
  });

  it('should tell a contact without a length', () => {
    expect(pathSentence([leg('surface', 0, { by: 'contact' })])).toBe('in contact');
  });

  it('should add the plies of neighbouring punctures', () => {
    expect(pathSentence([leg('through', 0, null, 1), leg('through', 0, null, 2)])).toBe('through 3 plies');
  });

  it('should name what it runs over', () => {
    expect(pathSentence([leg('over', 0, { by: 'over', conductor: 'core' })])).toBe('over the core');
  });
});
