// Several rule books side by side as they are handed out: with the words of remarks and of the rule of plies filled in.

import type { AskedFigures, BookColumn, BookPair, SideBySide } from '#judge/study/side-by-side.ts';
import { toldRemark, type ToldRemark } from '#words/told.ts';
import { plyWords } from '#words/verdict/ply-words.ts';

type ToldAsked = Omit<AskedFigures, 'plies'> & { readonly plies: string };
type ToldPair = Omit<BookPair, 'asked'> & { readonly asked: ToldAsked | null };
type ToldColumn = Omit<BookColumn, 'pairs' | 'remarks'> & {
  readonly pairs: readonly ToldPair[];
  readonly remarks: readonly ToldRemark[];
};

export const toldSideBySide = (
  found: SideBySide,
): Omit<SideBySide, 'books'> & { readonly books: readonly ToldColumn[] } => ({
  ...found,
  books: found.books.map((column) => ({
    ...column,
    pairs: column.pairs.map((pair) => ({
      ...pair,
      asked: pair.asked && { ...pair.asked, plies: plyWords(pair.asked.plies) },
    })),
    remarks: column.remarks.map(toldRemark),
  })),
});
