// What the rule book says besides: what its verdicts are about, how it is read where its text is thin, and where another
// standard would ask more. Once each, of the pairs that ask for a barrier.

import type { Book, BookRemark } from '#books/questions/book.ts';
import { WORST } from '#judge/assume/assumption.ts';
import { marketRemarks } from './market-remarks.ts';
import { meansOf } from '#judge/grade/means.ts';
import { questionOf } from '#judge/grade/required.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Design } from '#model/design.ts';
import { inMm } from '#units/quantity.ts';
import type { Remark } from '#judge/verdict/remark.ts';

export function bookRemarks(book: Book, design: Design, pairs: readonly PairOutcome[]): readonly Remark[] {
  const barriers = pairs.filter(({ needed }) => needed !== null);
  const said = barriers.flatMap(({ stress, transients, needed, between }) =>
    book
      .remarks(questionOf(book, design, stress, transients, needed, meansOf(design, WORST, between)))
      .map((remark) => remarkOf(book, design, between, remark)),
  );
  const scope: Remark[] =
    book.scope === null || barriers.length === 0
      ? []
      : [{ kind: 'book-scope', book: book.title, note: { as: 'scope', scope: book.scope } }];
  const once = new Map(
    [...scope, ...marketRemarks(book, design), ...said].map((remark) => [JSON.stringify(remark), remark]),
  );
  return [...once.values()];
}

function remarkOf(
  book: Book,
  { circuits }: Design,
  between: readonly [string, string],
  remark: BookRemark,
): Remark {
  const { rule } = remark;
  if (remark.kind === 'reads')
    return { kind: `book-${rule.id}`, book: book.title, note: { as: 'reads', rule: rule.says } };
  const name = (id: string): string => circuits.find((one) => one.id === id)?.name || id;
  const { metric, own, other, confirmed } = remark;
  return {
    kind: `book-${rule.id}`,
    book: book.title,
    note: {
      as: 'other-rows',
      metric,
      own: inMm(own),
      other: inMm(other),
      names: [name(between[0]), name(between[1])],
      fromMemory: confirmed === 'memory' || confirmed === 'secondary',
    },
  };
}
