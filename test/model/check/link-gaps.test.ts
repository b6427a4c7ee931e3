import { describe, expect, it } from 'vitest';
import { linkGaps } from '#model/check/link-gaps.ts';

const wound = (winding: string, chamber = 0) => ({ kind: 'winding', winding, chamber });
const tape = (chamber = 0) => ({ kind: 'tape', chamber });

describe('linkGaps', () => {
  it('should find none in a single run of layers', () => {
    expect(linkGaps([wound('P'), wound('P'), tape(), wound('S')], 'P')).toEqual([]);
  });

  it('should find one wherever anything lies between two layers of the winding', () => {
    const layers = [wound('P'), tape(), wound('S'), tape(), wound('P'), tape(), wound('P'), tape()];
    expect(linkGaps(layers, 'P')).toEqual([
      { chamber: 0, inner: 0, outer: 4 },
      { chamber: 0, inner: 4, outer: 6 },
    ]);
  });

  it('should look at each chamber by itself', () => {
    expect(linkGaps([wound('P', 0), tape(1), wound('P', 1)], 'P')).toEqual([]);
    expect(linkGaps([wound('P', 0), tape(1), wound('P', 0)], 'P')).toEqual([]);
  });
});
