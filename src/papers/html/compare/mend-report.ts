// The report of a mend as one self-contained HTML file: the build as found, then way by way, best first, before and after at one
// scale, what changed, what it did to path, grade and fit, what it costs and how it holds when hands wind it.

import type { Comparison } from '#judge/compare/comparison.ts';
import type { HeldMending } from '#mend/hold/held-mends.ts';
import { palette, type Theme } from '#drawing/scene/palette.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { circuitNames } from '#words/mend/circuit-names.ts';
import { fitLines } from '#words/mend/fit-words.ts';
import { heldWords } from '#words/mend/held-words.ts';
import {
  coreWords,
  costWords,
  leftWords,
  limitWords,
  mendTitle,
  rankWords,
  stillOpenWords,
} from '#words/mend/mend-words.ts';
import { noMendWords } from '#words/mend/no-mend-words.ts';
import { answerWords, bookWords, capitalised } from '#words/text/answer-words.ts';
import { headline } from '#words/verdict/pair-words.ts';
import { sheet } from '#papers/html/page/document.ts';
import { block, tag, wholeBlock, type Content, type Markup } from '#papers/html/page/markup.ts';
import { paperFoot } from '#papers/html/page/paper-foot.ts';
import { verdictBar } from '#papers/html/page/signs.ts';
import { fitSide, type ComparedBuild } from './compared-build.ts';
import { comparedDrawing } from './compared-drawing.ts';
import { comparisonBlocks } from './comparison-blocks.ts';

export interface MendReportInput {
  readonly found: ComparedBuild;
  readonly mending: HeldMending;
  /** To each proposal, as judged, and beside the build as found. */
  readonly ways: readonly Way[];
  /** Black ink on white paper instead of colour. */
  readonly black?: boolean;
}

export interface Way {
  readonly build: ComparedBuild;
  readonly comparison: Comparison;
}

export function mendReport(input: MendReportInput): string {
  const { found, mending, ways } = input;
  const theme = palette[input.black === true ? 'print' : 'paper'];
  const { verdict } = found.judgement;
  const head = {
    title: `${found.doc.title}: how to mend it`,
    name: found.doc.title,
    about: `ways to mend it; judged to ${bookWords(verdict.rules)}`,
    theme,
    foot: paperFoot(verdict.rules),
  };
  return sheet(
    head,
    top(input),
    wholeBlock(
      'Fit and copper, as found',
      tag(
        'ul',
        {},
        fitLines(verdict.fit, fitSide(found).copper).map((line) => tag('li', {}, line)),
      ),
    ),
    ways.map((way, i) => wayBlock(input, way, i, theme)),
    block('Looked at and left out', ...leftOut(mending, found)),
  );
}

function top({ found, mending }: MendReportInput): Content {
  const { verdict } = found.judgement;
  const { none, proposals, judged } = mending;
  const ways = proposals.length === 1 ? 'One way' : `${proposals.length} ways`;
  const says =
    none === null
      ? `${ways} to mend it, the best first, each judged whole with all unknowns at worst; ${judged} builds were tried.`
      : noMendWords(none, found.doc);
  return [
    tag(
      'h2',
      { class: 'answer' },
      tag(
        'span',
        { class: verdict.verdict === 'falls-short' ? 'pencil' : null },
        verdictBar(verdict.verdict, 14),
        ` ${capitalised(answerWords(verdict.verdict))}`,
      ),
    ),
    tag('p', { class: 'headline' }, headline(verdict, circuitLooks(found.design.circuits))),
    tag('p', {}, says),
  ];
}

function wayBlock(
  { found, mending }: MendReportInput,
  { build: way, comparison }: Way,
  i: number,
  theme: Theme,
): Markup | null {
  const proposal = mending.proposals[i];
  if (proposal === undefined) return null;
  const { doc, design } = found;
  const held = mending.held[i];
  const limits = limitWords(proposal.verdict);
  const lines = [
    `${capitalised(rankWords(proposal, mending.proposals))}.`,
    `Costs: ${costWords(proposal.cost)}.`,
    held === undefined ? '' : capitalised(heldWords(held, doc)),
    limits === null ? '' : `Limits next: ${circuitNames(limits.pair, doc)}, ${limits.says}.`,
    stillOpenWords(proposal.verdict, doc),
    coreWords(proposal.verdict),
  ];
  return block(
    `${i + 1} ${mendTitle(proposal)}`,
    comparedDrawing(found, way, { theme, prefix: `way-${i + 1}-` }),
    lines.filter((line) => line !== '').map((line) => tag('p', {}, line)),
    comparisonBlocks(comparison, [found, way], { looks: circuitLooks(design.circuits), theme }),
  );
}

const leftOut = ({ leftOut: left }: HeldMending, { doc }: ComparedBuild): readonly Content[] =>
  left.length === 0
    ? []
    : [
        tag(
          'ul',
          {},
          left.map((one) => tag('li', {}, leftWords(one, doc))),
        ),
      ];
