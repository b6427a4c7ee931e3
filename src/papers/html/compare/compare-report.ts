// Two builds compared, as one self-contained HTML file. The same input gives the same bytes.

import type { Comparison } from '#judge/compare/comparison.ts';
import { palette } from '#drawing/scene/palette.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { comparisonHeadline } from '#words/mend/compare-words.ts';
import { bookWords } from '#words/text/answer-words.ts';
import { sheet } from '#papers/html/page/document.ts';
import { tag } from '#papers/html/page/markup.ts';
import { paperFoot } from '#papers/html/page/paper-foot.ts';
import type { ComparedBuild } from './compared-build.ts';
import { comparedDrawing } from './compared-drawing.ts';
import { comparisonBlocks } from './comparison-blocks.ts';

export function compareReport(
  [a, b]: readonly [ComparedBuild, ComparedBuild],
  comparison: Comparison,
  black = false,
): string {
  const theme = palette[black ? 'print' : 'paper'];
  const { rules } = b.judgement.verdict;
  const head = {
    title: `${a.says} and ${b.says}: compared`,
    name: `${a.says} and ${b.says}`,
    about: `compared; judged to ${bookWords(rules)}`,
    theme,
    foot: paperFoot(rules),
  };
  return sheet(
    head,
    tag('h2', { class: 'answer' }, comparisonHeadline(comparison)),
    comparedDrawing(a, b, { theme, prefix: 'compare-' }),
    comparisonBlocks(comparison, [a, b], { looks: circuitLooks(b.design.circuits), theme }),
  );
}
