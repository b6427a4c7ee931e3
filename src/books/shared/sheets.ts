// Sheets that can be parted: how many of them stand a test by themselves, and whether so many can be chosen of which any
// two together do. Alike sheets add up, others count twice the weaker.

import { type LevelsOf, type Solid, stands, type Strength } from '#books/questions/solid.ts';
import type { Column } from '#units/terms.ts';
import type { VoltsPeak } from '#units/quantity.ts';

export const standingAlone = (plies: readonly Solid[], levelsOf: LevelsOf, column: Column): number =>
  plies.filter((ply) => stands(ply.strength, levelsOf(ply.material)[column])).length;

/** `chosen` are those already picked. */
export function standInTwos(
  plies: readonly Solid[],
  levelsOf: LevelsOf,
  column: Column,
  wanted: number,
  chosen: readonly Solid[] = [],
): boolean {
  if (chosen.length === wanted) return true;
  return plies.some(
    (ply, i) =>
      chosen.every((other) =>
        [ply, other].every(({ material }) => stands(together(ply, other), levelsOf(material)[column])),
      ) && standInTwos(plies.slice(i + 1), levelsOf, column, wanted, [...chosen, ply]),
  );
}

export function together(a: Solid, b: Solid): Strength {
  if (a.strength === null || b.strength === null) return null;
  if (a.strength === 'whatever' || b.strength === 'whatever') return 'whatever';
  const weaker = Math.min(a.strength, b.strength);
  return (a.alike === b.alike ? a.strength + b.strength : 2 * weaker) as VoltsPeak;
}
