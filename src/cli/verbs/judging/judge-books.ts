// `judge FILE --rules A --rules B`: one build by several rule books, side by side in words, one verdict a book as JSON.

import { told } from '#words/told.ts';
import { verdictsBy } from '#cli/many/judge-item.ts';
import { sideBySide } from '#judge/study/side-by-side.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { sideBySideText } from '#words/books/side-by-side-text.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { refused, type Outcome } from '#cli/line/outcome.ts';

/** Exit 0 where the build meets by every one of them. */
export function judgeBooks(file: string, ids: readonly string[], json: boolean): Outcome {
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  if (json) {
    const verdicts = verdictsBy(loaded.design, ids);
    const text = `${JSON.stringify(
      verdicts.map((verdict) => told(verdict)),
      null,
      2,
    )}\n`;
    return { code: codeOf(verdicts), out: [text], err: '' };
  }
  const found = sideBySide(loaded.design, ids);
  return { code: codeOf(found.books), out: [sideBySideText(loaded.design, found)], err: '' };
}

const codeOf = (all: readonly { readonly verdict: Answer }[]): 0 | 1 =>
  all.every(({ verdict }) => verdict === 'meets') ? 0 : 1;
