// The whole report as one self-contained HTML file: drawing, figures with their clauses, what is unknown, what to test,
// and the design file itself. Complete without the tool; the same input gives the same bytes.

import { notJudgedWords } from '#words/unknowns/not-judged-words.ts';
import { remarkSays } from '#words/verdict/remark-words.ts';
import { leadingPath } from '#words/paths/leading-path.ts';
import type { Design } from '#model/design.ts';
import type { FieldPicture } from '#judge/field/field-picture.ts';
import type { Study } from '#judge/study.ts';
import { bookWords, capitalised, answerWords, scopeWords } from '#words/text/answer-words.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { headline, worstFirst } from '#words/verdict/pair-words.ts';
import { palette } from '#drawing/scene/palette.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { svgOf } from '#drawing/svg/svg.ts';
import { attached } from '#papers/html/evidence/attached.ts';
import { build } from './build.ts';
import { derivations, foundBlock } from './derivations.ts';
import { evidence } from '#papers/html/evidence/evidence.ts';
import { raw, tag, wholeBlock, type Content, type Markup } from '#papers/html/page/markup.ts';
import { PRINTED_WIDTH } from '#papers/html/page/printed-width.ts';
import { pairsBlock, pathsBlock } from './pairs.ts';
import { asked } from './asked.ts';
import { verdictBar } from '#papers/html/page/signs.ts';
import { spots } from './spots.ts';
import { spotActs } from './spot-acts.ts';
import { field } from './field.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';
import { sheet } from '#papers/html/page/document.ts';
import { paperFoot } from '#papers/html/page/paper-foot.ts';
import { stress } from './stress.ts';
import { openQuestions, unknowns } from './unknowns.ts';

export interface ReportInput {
  readonly design: Design;
  readonly judgement: Study;
  /** The design file as it was read, to be attached. */
  readonly designText: string;
  /** Black ink on white paper instead of colour. */
  readonly black?: boolean;
  /** The field, for a page of its own. */
  readonly field?: FieldPicture | null;
}

export function reportHtml(input: ReportInput): string {
  const theme = palette[input.black === true ? 'print' : 'paper'];
  const parts: ReportParts = {
    ...input,
    field: input.field ?? null,
    looks: circuitLooks(input.design.circuits),
    theme,
  };
  const foot = paperFoot(parts.judgement.verdict.rules);
  const { design, judgement } = parts;
  const about = `${ORIGIN[design.origin]}; judged to ${bookWords(judgement.verdict.rules)}`;
  const head = { title: `${design.title}: report`, name: design.title, about, theme, foot };
  return sheet(head, ...content(parts, input.designText));
}

/** What says it all comes first; what it was derived from follows on pages of its own. */
const content = (parts: ReportParts, designText: string): readonly Content[] => [
  top(parts),
  drawing(parts),
  pairsBlock(parts),
  spotActs(parts, designText),
  unknowns(parts),
  remarks(parts),
  tag('p', { class: 'annex' }, 'Annex: what this was judged from'),
  foundBlock(parts),
  pathsBlock(parts),
  spots(parts),
  asked(parts),
  stress(parts),
  field(parts),
  openQuestions(parts),
  build(parts),
  evidence(parts),
  attached(designText),
  derivations(parts),
];

const ORIGIN = { proposed: 'proposed', dissected: 'taken apart', lesson: 'a lesson' } as const;

function top({ design, judgement: { verdict }, looks }: ReportParts): Content {
  const answer = capitalised(answerWords(verdict.verdict));
  const pencil = verdict.verdict === 'falls-short' ? 'pencil' : null;
  const scope = scopeWords(verdict);
  const left =
    scope === '' ? '' : `${scope}; not judged: ${verdict.notJudged.map(notJudgedWords).join(', ')}`;
  return [
    tag(
      'h2',
      { class: 'answer' },
      tag('span', { class: pencil }, verdictBar(verdict.verdict, 14), ` ${answer}`),
    ),
    left === '' ? null : tag('p', { class: 'scope' }, left),
    tag('p', { class: 'headline' }, headline(verdict, looks)),
    verdict.restsOn === 'memory'
      ? tag(
          'p',
          { class: 'note' },
          'This verdict rests on a table figure marked memory: not checked against its source.',
        )
      : null,
    design.notes === '' ? null : tag('p', { class: 'note' }, design.notes),
  ];
}

/** The section on which the worst pair is decided. */
function drawing({ design, judgement, theme }: ReportParts): Content {
  const [worst] = worstFirst(judgement.verdict);
  const limiting = (worst && leadingPath(worst))?.section ?? 'plain';
  // a distance outside the window lies on no section
  const scene = sceneOf(design, judgement, limiting) ?? sceneOf(design, judgement, 'plain');
  if (scene === null) return null;
  const svg = svgOf(scene, {
    numbered: true,
    theme: theme.name,
    prefix: 'main-',
    caption: false,
    heading: design.title,
    printed: true,
    width: PRINTED_WIDTH,
  });
  const caption = `${scene.title}, ${scene.says}. Same scale both ways; filled and hollow pieces of rulers and path are 1 mm each. Hollow flags stand on other sections.`;
  return tag('figure', {}, raw(svg), tag('figcaption', {}, caption));
}

function remarks({ judgement }: ReportParts): Markup | null {
  const items = judgement.verdict.remarks.map((remark) => tag('li', {}, remarkSays(remark)));
  return items.length === 0 ? null : wholeBlock('Remarks', tag('ul', {}, items));
}
