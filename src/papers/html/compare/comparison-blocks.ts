// What parts two builds, on paper: what was changed, and what it did to path, grade and fit.

import type { ComparedPair, Comparison } from '#judge/compare/comparison.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { CircuitLook } from '#words/design/circuit-look.ts';
import { changedWords, consequenceFigure, consequenceName, difference } from '#words/mend/compare-words.ts';
import { fitChanges } from '#words/mend/fit-changes.ts';
import { leadingPath } from '#words/paths/leading-path.ts';
import { pathSentence } from '#words/paths/path-words.ts';
import { limitingFigure } from '#words/verdict/pair-words.ts';
import type { Theme } from '#drawing/scene/palette.ts';
import { table, tag, type Content, type Markup } from '#papers/html/page/markup.ts';
import { gradeSign, pairSign, verdictSign } from '#papers/html/page/signs.ts';
import { fitSide, type ComparedBuild } from './compared-build.ts';

interface Look {
  readonly looks: readonly CircuitLook[];
  readonly theme: Theme;
}

export function comparisonBlocks(
  comparison: Comparison,
  [a, b]: readonly [ComparedBuild, ComparedBuild],
  look: Look,
): readonly Content[] {
  const changed = changedWords(comparison, b.doc).map((words) => tag('li', {}, words));
  return [
    tag('h3', {}, 'What changed'),
    changed.length === 0 ? tag('p', {}, 'Nothing.') : tag('ul', {}, changed),
    tag('h3', {}, 'Pair by pair'),
    table(
      ['Between', a.says, b.says].map((title) => ({ title })),
      comparison.pairs.map((pair) => pairRow(pair, look)),
    ),
    tag('h3', {}, 'What it did'),
    consequences(comparison, [a, b]),
  ];
}

const pairRow = ({ between, a, b }: ComparedPair, { looks, theme }: Look): readonly Content[] => [
  pairSign(between, looks, theme),
  pairCell(a),
  pairCell(b),
];

/** Grade, verdict, the figure that limits and the way that it was measured along. */
function pairCell(pair: PairVerdict | null): Content {
  if (pair === null) return 'no such pair';
  const leading = leadingPath(pair);
  const way = pathSentence(leading?.legs ?? []);
  return [
    gradeSign(pair.achieved),
    ', ',
    verdictSign(pair.verdict),
    tag('br', {}),
    limitingFigure(leading),
    way === '' ? null : tag('span', { class: 'path' }, way),
  ];
}

function consequences({ did }: Comparison, [a, b]: readonly [ComparedBuild, ComparedBuild]): Markup | null {
  const counted = did.filter(({ what }) => what !== 'height');
  const columns = [
    { title: '' },
    { title: a.says, figures: true },
    { title: b.says, figures: true },
    { title: 'difference', figures: true },
  ];
  return table(columns, [
    ...fitChanges(fitSide(a), fitSide(b)).map(({ name, a: was, b: is, by }) => [name, was, is, by]),
    ...counted.map((one) => [
      consequenceName(one),
      consequenceFigure(one, one.a),
      consequenceFigure(one, one.b),
      difference(one),
    ]),
  ]);
}
