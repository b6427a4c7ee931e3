// Places that one act would mend are one spot with all of its places; what another act mends is another spot.

import { describe, expect, it } from 'vitest';
import type { Changes } from '#test/designs.ts';
import { MARGINS, PLIES, verdictWith } from '#test/judge/margin-build.ts';

const spotsOf = (changes: Changes) =>
  verdictWith(changes).weakSpots.map(({ kind, layers, at, also }) => ({ kind, layers, at, also }));

const margins = (left: string, right: string) => ({
  left: { width: left, filled: true },
  right: { width: right, filled: true },
});
const bare = (side: string, way = 'riser') => ({ at: side, exit: side, way, sleeve: null, bareFrom: '9 mm' });

describe('places that one act mends', () => {
  it('should be one spot where both ends of a layer are alike short', () => {
    // 2 + 0.18 + 2 = 4.18 of 5 at either flange, told at the left one
    const short = {
      'layers[0].margins': margins('2 mm', '2 mm'),
      'layers[2].margins': margins('2 mm', '2 mm'),
    };
    const [spot, ...more] = spotsOf(short);
    expect(spot).toMatchObject({ kind: 'narrow-margin', at: [0, expect.any(Number)] });
    expect(spot?.also).toEqual([[12, expect.any(Number)]]);
    expect(more).toEqual([]);
  });

  it('should be two where the ends differ: each margin is widened by itself', () => {
    const short = {
      'layers[0].margins': margins('2 mm', '1.8 mm'),
      'layers[2].margins': margins('2 mm', '2 mm'),
    };
    expect(spotsOf(short).map(({ kind, at }) => [kind, at[0]])).toEqual([
      ['narrow-margin', 12],
      ['narrow-margin', 0],
    ]);
  });

  it('should be one for both leads of a winding, which one kind of sleeve mends', () => {
    const leads = { start: bare('left'), finish: bare('right') };
    const spots = spotsOf({ 'windings[0].leads': leads });
    expect(spots.map(({ kind, layers }) => [kind, layers])).toEqual([['lead-in-margin', [0, 2]]]);
  });

  it('should be one for plies too few on the whole width, and another for a margin', () => {
    const weak = { 'layers[1]': { ...PLIES, plies: 1 }, 'layers[2].margins': margins('1 mm', '3 mm') };
    const kinds = spotsOf({ ...weak, 'layers[0].margins': MARGINS }).map(({ kind }) => kind);
    expect(kinds.toSorted()).toEqual(['few-plies', 'narrow-margin']);
  });

  it('should be told once of a part that is no safety part, whatever else is not known', () => {
    const part = {
      id: 'C1',
      kind: 'capacitor',
      between: ['pri', 'out'],
      capacitance: '1 nF',
      safetyClass: 'X1',
    };
    for (const ends of [{}, { clearance: '8 mm', creepage: '8 mm', rated: '400 V' }])
      expect(spotsOf({ bridges: [{ ...part, ...ends }] }).map(({ kind }) => kind)).toEqual(['unsafe-bridge']);
  });
});
