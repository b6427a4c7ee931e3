// The build in words, outermost layer on top as in the drawing.

import { layerWords } from '#words/design/layer-words.ts';
import { lengthDown } from '#words/text/number-words.ts';
import { table, tag, wholeBlock, type Markup } from '#papers/html/page/markup.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';

export function build({ design, judgement }: ReportParts): Markup | null {
  const { fit } = judgement.verdict;
  const rows = design.layers.map((_, k) => {
    const { name, says } = layerWords(design, k, fit);
    return [String(k + 1), name, says];
  });
  const columns = [{ title: '', figures: true }, { title: 'Layer' }, { title: 'What it is' }];
  const { used, available } = fit.height;
  const height = tag(
    'p',
    { class: 'note' },
    `${lengthDown(used)} of ${lengthDown(available)} mm high, outermost on top.`,
  );
  return wholeBlock('The build', height, table(columns, rows.toReversed()));
}
