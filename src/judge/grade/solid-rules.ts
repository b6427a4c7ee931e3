// The rule book's answer on solids, for a build whose solids go by numbers.

import type { Book, SheetRule } from '#books/questions/book.ts';
import type { Insulation } from '#books/questions/insulation.ts';
import type { LevelsOf } from '#books/questions/solid.ts';
import type { SolidsById } from '#judge/assume/stuff.ts';
import type { Punctured } from '#solver/network/pieces.ts';
import type { Judged } from '#standards/because.ts';
import type { Nm } from '#units/quantity.ts';

export interface SolidRules {
  readonly leastThickness: Nm;
  readonly sheets: SheetRule;
  /** A proven closed joint is shown up to this many times the ordinary test. */
  readonly proofFactor: number;
  readonly worth: Book['solids'];
}

export function solidRules(book: Book): SolidRules {
  return {
    leastThickness: book.leastThickness().value,
    sheets: book.sheets().value,
    proofFactor: book.proofFactor.value,
    worth: book.solids,
  };
}

/** One insulation for every kind of solid punctured. Solids that had to share a class count as the weakest. */
export const solidInsulations = (
  punctured: readonly Punctured[],
  stuffs: SolidsById,
  levelsOf: LevelsOf,
  { worth }: SolidRules,
): readonly Judged<Insulation>[] =>
  worth(
    punctured.flatMap(({ stuff, count }) => {
      const solid = stuffs.get(stuff);
      return solid === undefined ? [] : [{ solid, count }];
    }),
    levelsOf,
  );
