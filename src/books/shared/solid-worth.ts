// What one solid is worth by itself, by what it is shown to stand, with the step that says so.

import {
  BASIC_AND_SUPPLEMENTARY,
  BASIC_ONLY,
  FUNCTIONAL,
  type Insulation,
  REINFORCED,
  worthOf,
} from '#books/questions/insulation.ts';
import { type Crossed, type Solid, stands, type Strength, type TestLevels } from '#books/questions/solid.ts';
import { because, type Because, judgedLater, type Judged } from '#standards/because.ts';

export const solidWorth = (
  solid: Solid,
  value: Insulation,
  { basic, reinforced }: TestLevels,
  more: readonly Because[] = [],
): Judged<Insulation> =>
  judgedLater(value, () =>
    because(
      'solid-worth',
      { kind: solid.kind, shown: shownOf(solid.strength), basic, reinforced, worth: worthOf(value) },
      [],
      [solid.because, ...more],
    ),
  );

/** Null where it is taken to stand whatever is asked. */
export const shownOf = (strength: Strength): number | null =>
  strength === 'whatever' ? null : (strength ?? 0);

/** As much as it shows: reinforced, else basic, else nothing. `more`: basic and supplementary where it shows basic. */
export function asShown(
  { strength }: Pick<Solid, 'strength'>,
  { basic, reinforced }: TestLevels,
  more = false,
): Insulation {
  if (stands(strength, reinforced)) return REINFORCED;
  return stands(strength, basic) ? (more ? BASIC_AND_SUPPLEMENTARY : BASIC_ONLY) : FUNCTIONAL;
}

/** Basic at the most. */
export const basicAtMost = ({ strength }: Pick<Solid, 'strength'>, { basic }: TestLevels): Insulation =>
  stands(strength, basic) ? BASIC_ONLY : FUNCTIONAL;

/** Sheets one by one; those of a layer that cannot be parted are one. */
export const sheetsOf = (crossed: readonly Crossed[]): readonly Solid[] =>
  crossed.flatMap(({ solid, count }) =>
    solid.kind === 'sheet' ? Array.from({ length: solid.bonded === null ? count : 1 }, () => solid) : [],
  );
