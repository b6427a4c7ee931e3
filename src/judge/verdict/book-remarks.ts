// What the rule book says besides: what its verdicts are about, how it is read where its text is thin, and where another
// standard would ask more. Once each, of the pairs that ask for a barrier.

import type { Book, BookRemark } from '#books/book.ts';
import { WORST } from '#judge/assume/assumption.ts';
import { meansOf } from '#judge/grade/means.ts';
import { questionOf } from '#judge/grade/required.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Design } from '#model/design.ts';
import { inMm } from '#units/quantity.ts';
import type { Remark } from './verdict.ts';

export function bookRemarks(book: Book, design: Design, pairs: readonly PairOutcome[]): readonly Remark[] {
  const barriers = pairs.filter(({ needed }) => needed !== null);
  const said = barriers.flatMap(({ stress, transients, needed, between }) =>
    book
      .remarks(questionOf(design, stress, transients, needed, meansOf(design, WORST, between)))
      .map((remark) => remarkOf(book, design, between, remark)),
  );
  const scope: Remark[] =
    book.scope === null || barriers.length === 0
      ? []
      : [{ kind: 'book-scope', says: `By ${book.title} ${book.scope} are judged.` }];
  const once = new Map([...scope, ...said].map((remark) => [remark.says, remark]));
  return [...once.values()];
}

function remarkOf(
  book: Book,
  { circuits }: Design,
  between: readonly [string, string],
  remark: BookRemark,
): Remark {
  const { rule } = remark;
  if (remark.kind === 'reads') return { kind: `book-${rule.id}`, says: `${book.title}: ${rule.says}.` };
  const name = (id: string): string => circuits.find((one) => one.id === id)?.name || id;
  const { metric, own, other, confirmed } = remark;
  const known = confirmed === 'memory' || confirmed === 'secondary' ? ', which is memory' : '';
  const says = `${book.title} is judged with its own ${metric}, ${inMm(own)} mm, between ${between.map(name).join(' and ')}; the rows that it refers to would ask ${inMm(other)} mm${known}.`;
  return { kind: `book-${rule.id}`, says };
}
