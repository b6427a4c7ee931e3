// Solids crossed one after another, put to a book without a build: each with a strength in volts peak and what differs.

import type { Book } from '#books/questions/book.ts';
import type { Insulation } from '#books/questions/insulation.ts';
import type { LevelsOf, Solid } from '#books/questions/solid.ts';
import { because } from '#standards/because.ts';
import { mm, nm, voltsPeak } from '#units/quantity.ts';

export interface PlainSolid {
  readonly kind: Solid['kind'];
  readonly strength: number | null;
  readonly count?: number;
  readonly layers?: 1 | 2 | 3;
  readonly bonded?: number;
  /** Millimetres of film in it. */
  readonly film?: number;
}

export const levels = (basic: number | null, reinforced: number | null, supplementary?: number): LevelsOf => {
  const volts = (value: number | null) => (value === null ? null : voltsPeak(value));
  const own = { basic: volts(basic), reinforced: volts(reinforced) };
  return () => ({
    ...own,
    ...(supplementary === undefined ? {} : { supplementary: voltsPeak(supplementary) }),
    ordinary: own,
  });
};

export const wordsOf = (
  book: Book,
  solids: readonly PlainSolid[],
  levelsOf: LevelsOf,
): readonly Insulation[] =>
  book
    .solids(
      solids.map(({ kind, strength, count = 1, layers = null, bonded = null, film = 0 }, i) => ({
        count,
        solid: {
          kind,
          alike: `solid ${i}`,
          group: 'IIIb',
          strength: strength === null ? null : voltsPeak(strength),
          stated: false,
          perMm: 0,
          material: null,
          thickness: nm(0),
          solid: mm(film),
          bonded,
          layers,
          because: because('no-strength', { material: null }),
        },
      })),
      levelsOf,
    )
    .map(({ value }) => value);
