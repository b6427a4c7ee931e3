// Any two of so many plies: what is chosen of a heap of like plies is what would be chosen of all of them.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standInTwos, together } from '#books/shared/sheets.ts';
import { stands, type LevelsOf, type Solid } from '#books/questions/solid.ts';
import type { VoltsPeak } from '#units/quantity.ts';

const LEVEL = 4000 as VoltsPeak;
const levelsOf = (() => ({ basic: LEVEL, supplementary: LEVEL, reinforced: LEVEL })) as unknown as LevelsOf;

const ply = (alike: string, strength: number | null): Solid =>
  ({ kind: 'sheet', alike, strength, material: null }) as unknown as Solid;

const anyPly = fc.record({
  alike: fc.constantFrom('thin film', 'thick film', 'paper'),
  strength: fc.constantFrom(null, 1500, 2000, 3999, 4000, 5000),
});

/** By looking at every choice. */
function chosenOfAll(plies: readonly Solid[], wanted: number): boolean {
  const choices = plies.reduce<readonly (readonly Solid[])[]>(
    (sets, one) => [...sets, ...sets.map((set) => [...set, one])],
    [[]],
  );
  const isPair = (a: Solid, b: Solid) => stands(together(a, b), LEVEL);
  return choices.some(
    (set) => set.length === wanted && set.every((a, i) => set.slice(i + 1).every((b) => isPair(a, b))),
  );
}

describe('any two of so many plies', () => {
  it('should be chosen as if every choice were looked at', () => {
    let both = 0;
    fc.assert(
      fc.property(fc.array(anyPly, { maxLength: 9 }), fc.integer({ min: 2, max: 4 }), (plies, wanted) => {
        const all = plies.map(({ alike, strength }) => ply(alike, strength));
        const found = standInTwos(all, levelsOf, 'reinforced', wanted);
        if (found) both++;
        expect(found).toBe(chosenOfAll(all, wanted));
      }),
      { seed: 20261130, numRuns: 400 },
    );
    expect(both).toBeGreaterThan(50);
    expect(both).toBeLessThan(350);
  });

  it('should come to an end over a wound block of ten thousand plies', () => {
    const block = Array.from({ length: 10_000 }, () => ply('thin film', 1900));
    expect(standInTwos(block, levelsOf, 'reinforced', 3)).toBe(false);
    expect(standInTwos([...block, ply('thick film', 4000)], levelsOf, 'reinforced', 3)).toBe(false);
    expect(
      standInTwos([...block, ply('thin film', 2100), ply('thin film', 2100)], levelsOf, 'reinforced', 3),
    ).toBe(true);
  });
});
