// The rule of sheets of a book in one phrase: `2 plies that each withstand the test, or 3 of which any two together do`.

import { lengthPlain } from '#words/text/number-words.ts';
import { lengthUnit } from '#words/text/length-unit.ts';
import type { SheetRule } from '#books/questions/book.ts';
import { inMm } from '#units/quantity.ts';

export function plyWords({ alone, anyTwo, film }: SheetRule): string {
  const each =
    alone === null
      ? []
      : [alone === 1 ? '1 ply that withstands the test' : `${alone} plies that each withstand the test`];
  const thick =
    film === undefined
      ? []
      : [`${film.plies} plies of together ${lengthPlain(inMm(film.together))} ${lengthUnit()} of film`];
  const twos = anyTwo === null ? [] : [`${anyTwo} of which any two together do`];
  return [...each, ...thick, ...twos].join(', or ');
}
