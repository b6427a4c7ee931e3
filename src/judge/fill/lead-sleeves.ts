// The sleeves that a lead may have, where nobody knows which.

import type { Book } from '#books/questions/book.ts';
import type { Filling } from '#judge/assume/fill-context.ts';
import type { Sleeve } from '#model/design/winding.ts';
import type { Unknown } from '#model/quantity/reading.ts';
import type { BuildSleeve, Lay } from '#solver/section/build.ts';
import { type FilledSleeve, fillSleeve } from '#judge/fill/solids/fill-sleeve.ts';

/** All that the sleeve may be, of which the worse counts. */
export function sleevesOf(
  filling: Filling,
  sleeve: Sleeve | null | Unknown,
  field: string,
  book: Book,
): readonly FilledSleeve[] {
  return sleeve === null ? [null] : fillSleeve(filling, sleeve, field, book);
}

/** One lay for each sleeve that there may be; those of one lead share its group. */
export const inSleeves = (
  sleeves: readonly FilledSleeve[],
  name: string,
  make: (sleeve: BuildSleeve | null, name: string) => Lay,
): readonly Lay[] =>
  sleeves.flatMap((sleeve) => {
    if (sleeve === 'strong') return [];
    return [make(sleeve, sleeves.length > 1 ? `${name} ${sleeveName(sleeve, sleeves)}` : name)];
  });

/** What tells it from the others that it may be. */
export function sleeveName(sleeve: BuildSleeve | null, among: readonly FilledSleeve[]): string {
  if (sleeve === null) return 'bare';
  const others = among.filter((other) => other !== null && other !== 'strong');
  if (others.every(({ wall }) => wall === sleeve.wall) && others.length > 1)
    return sleeve.into === 0 ? 'in a short sleeve' : 'in a long sleeve';
  const isThinner = others.some(({ wall }) => wall > sleeve.wall);
  return isThinner ? 'in a thin sleeve' : 'in a thick sleeve';
}
