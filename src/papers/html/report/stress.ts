// Stress, touch current, tests and heat as the command line tells them, with the cautions in a box of their own.

import { stressBlocks, type StressBlock } from '#words/stress/stress-words.ts';
import { tag, wholeBlock, type Content, type Markup } from '#papers/html/page/markup.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';

export function stress({ design, judgement }: ReportParts): Content {
  // the first block repeats the title and the verdict
  const [, ...blocks] = stressBlocks(judgement.stress, design);
  const before = blocks.findIndex(({ title }) => title === 'Test plan');
  const told = (some: readonly StressBlock[]): readonly Content[] =>
    some
      .filter(({ title }) => title !== CAUTIONS && title !== 'Test plan')
      .map(({ title, lines }) => wholeBlock(title, linesOf(lines)));
  return [told(blocks.slice(0, before)), tests(blocks), told(blocks.slice(before))];
}

const CAUTIONS = 'Cautions';

/** How the finished piece is tested, and beside it what that takes care of. */
function tests(blocks: readonly StressBlock[]): Content {
  const linesFor = (wanted: string): readonly string[] =>
    blocks.find(({ title }) => title === wanted)?.lines ?? [];
  const plan = wholeBlock('Test plan', linesOf(linesFor('Test plan')));
  const box = tag(
    'div',
    { class: 'box' },
    tag('h2', {}, 'Before you touch it'),
    linesFor(CAUTIONS).map((line) => tag('p', {}, line)),
  );
  return plan === null ? box : tag('div', { class: 'two whole' }, plan, box);
}

/** A line that is set in belongs to the one above it. */
const linesOf = (lines: readonly string[]): readonly Markup[] =>
  lines.map((line) => tag('p', { class: line.startsWith(' ') ? 'inset' : null }, line.trim()));
