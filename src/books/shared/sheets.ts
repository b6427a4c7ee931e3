// Sheets that can be parted: how many of them stand a test by themselves, and whether so many can be chosen of which any
// two together do. Alike sheets add up, others count twice the weaker.

import { type LevelsOf, type Solid, stands, type Strength } from '#books/questions/solid.ts';
import type { Column } from '#units/terms.ts';
import type { VoltsPeak } from '#units/quantity.ts';

export const standingAlone = (plies: readonly Solid[], levelsOf: LevelsOf, column: Column): number =>
  plies.filter((ply) => stands(ply.strength, levelsOf(ply.material)[column])).length;

export function standInTwos(
  plies: readonly Solid[],
  levelsOf: LevelsOf,
  column: Column,
  wanted: number,
): boolean {
  const standBoth = (a: Solid, b: Solid): boolean =>
    [a, b].every(({ material }) => stands(together(a, b), levelsOf(material)[column]));
  const canChoose = (from: readonly Solid[], chosen: readonly Solid[]): boolean =>
    chosen.length === wanted ||
    from.some(
      (ply, i) =>
        chosen.every((other) => standBoth(ply, other)) && canChoose(from.slice(i + 1), [...chosen, ply]),
    );
  return canChoose(atMostOfEach(plies, wanted), []);
}

/** A wound block may be a thousand plies across: of those that are the same in all, more than are wanted add nothing. */
function atMostOfEach(plies: readonly Solid[], most: number): readonly Solid[] {
  const kept: Solid[] = [];
  for (const ply of plies) {
    const isSame = ({ strength, alike, material }: Solid): boolean =>
      strength === ply.strength && alike === ply.alike && material === ply.material;
    if (kept.filter(isSame).length < most) kept.push(ply);
  }
  return kept;
}

export function together(a: Solid, b: Solid): Strength {
  if (a.strength === null || b.strength === null) return null;
  if (a.strength === 'whatever' || b.strength === 'whatever') return 'whatever';
  const weaker = Math.min(a.strength, b.strength);
  return (a.alike === b.alike ? a.strength + b.strength : 2 * weaker) as VoltsPeak;
}
