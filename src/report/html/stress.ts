// Stress, touch current, tests and heat as the command line tells them, with the cautions in a box of their own.

import { stressSheet } from '#report/stress-sheet.ts';
import { stressBlocks } from '#report/stress-words.ts';
import { block, tag, type Content, type Markup } from './markup.ts';
import type { ReportParts } from './report-parts.ts';

export function stress({ design, judgement, looks }: ReportParts): Content {
  // the first block repeats the title and the verdict
  const [, ...blocks] = stressBlocks(stressSheet(design, judgement.verdict), looks);
  return blocks.flatMap(({ title, lines }) => {
    if (lines.length === 0) return [];
    if (title !== CAUTIONS) return [block(title, linesOf(lines))];
    return [
      tag(
        'div',
        { class: 'box' },
        tag('h2', {}, 'Before you touch it'),
        lines.map((line) => tag('p', {}, line)),
      ),
    ];
  });
}

const CAUTIONS = 'Cautions';

/** A line that is set in belongs to the one above it. */
const linesOf = (lines: readonly string[]): readonly Markup[] =>
  lines.map((line) => tag('p', { class: line.startsWith(' ') ? 'inset' : null }, line.trim()));
