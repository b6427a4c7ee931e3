// `judge FILE --rules A --rules B`: one build by several rule books, side by side, in words or as JSON.

import { toldSideBySide } from '#words/books/told-side-by-side.ts';
import { sideBySide } from '#judge/study/side-by-side.ts';
import { sideBySideText } from '#words/books/side-by-side-text.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { refused, type Outcome } from '#cli/line/outcome.ts';

/** Exit 0 where the build meets by every one of them. */
export function judgeBooks(file: string, ids: readonly string[], json: boolean): Outcome {
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const found = sideBySide(loaded.design, ids);
  const code = found.books.every(({ verdict }) => verdict === 'meets') ? 0 : 1;
  const text = json
    ? `${JSON.stringify(toldSideBySide(found), null, 2)}\n`
    : sideBySideText(loaded.design, found);
  return { code, out: [text], err: '' };
}
