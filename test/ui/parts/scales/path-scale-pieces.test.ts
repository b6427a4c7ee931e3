import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { staffPieces } from '#ui/parts/scales/path-scale-pieces.ts';

describe('staffPieces', () => {
  it('should fill one millimetre and leave the next hollow, the last as long as is left', () => {
    const { pieces, missing, asked } = staffPieces(4.83, 5.6);
    expect(pieces.map(({ filled }) => filled)).toEqual([true, false, true, false, true]);
    const last = pieces.at(-1);
    const first = pieces[0];
    if (last === undefined || first === undefined) throw new Error('no pieces');
    expect((last.to - last.from) / (first.to - first.from)).toBeCloseTo(0.83);
    expect(missing?.to).toBe(asked);
  });

  it('should miss nothing where what is asked is there', () => {
    expect(staffPieces(5.6, 5.6).missing).toBeNull();
    expect(staffPieces(3, null)).toMatchObject({ missing: null, asked: null });
  });

  it('should cut a staff that is far longer than asked, and lay nothing for no length', () => {
    expect(staffPieces(40, 3).cut).toBe(true);
    expect(staffPieces(0, 5).pieces).toEqual([]);
  });

  it('should stay within its width and leave no gap, whatever the figures', () => {
    const figure = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(figure, fc.option(figure), (length, required) => {
        const { pieces, width } = staffPieces(length, required);
        expect(width).toBeLessThanOrEqual(180);
        pieces.slice(1).forEach((piece, i) => expect(piece.from).toBeCloseTo(pieces[i]?.to ?? Number.NaN));
      }),
      { seed: 2611 },
    );
  });
});
