// The sheet for whoever winds or rewinds the build: numbered steps with boxes to tick and places for figures.

import type { Design } from '#model/design.ts';
import type { Study } from '#judge/study.ts';
import { bookWords, scopeWords } from '#words/text/answer-words.ts';
import { coreWords } from '#words/verdict/pair-words.ts';
import { palette } from '#drawing/scene/palette.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { stressBlocks } from '#words/stress/stress-words.ts';
import { svgOf } from '#drawing/svg/svg.ts';
import { TOOL_VERSION } from '#words/text/tool-version.ts';
import { windingSteps, type WindingStep } from '#words/design/winding-steps.ts';
import { raw, tag, wholeBlock, type Content, type Markup } from '#papers/html/page/markup.ts';
import { PRINTED_WIDTH } from '#papers/html/page/printed-width.ts';
import { sheet } from '#papers/html/page/document.ts';

export interface WinderInput {
  readonly design: Design;
  readonly judgement: Study;
  readonly black?: boolean;
}

export function winderSheet({ design, judgement, black }: WinderInput): string {
  const theme = palette[black === true ? 'print' : 'paper'];
  const { verdict } = judgement;
  const foot = { left: `Layerwright ${TOOL_VERSION}: winding sheet`, right: design.title };
  const scene = sceneOf(design, judgement, 'plain', { elsewhere: 0 });
  const drawing =
    scene === null
      ? null
      : raw(
          svgOf(
            { ...scene, path: null, otherPaths: [], flags: [] },
            { theme: theme.name, caption: false, printed: true, width: PRINTED_WIDTH, numbered: true },
          ),
        );
  const scope = scopeWords(verdict);
  const judged = `As drawn this build ${ANSWERS[verdict.verdict]} ${bookWords(verdict.rules)}${scope === '' ? '' : `, ${scope}`}.${coreWords(verdict)}`;
  const blank = tag('span', { class: 'blank' });
  const head = {
    title: `${design.title}: winding sheet`,
    name: design.title,
    about: 'winding sheet',
    theme,
    foot,
  };
  return sheet(
    head,
    tag('p', {}, judged, ' Lengths are in millimetres.'),
    tag('figure', {}, drawing),
    windingSteps(design, verdict.fit).map((step, k) => stepMarkup(step, k + 1)),
    testBlocks(design, judgement),
    tag('p', { class: 'measure' }, 'Wound by', blank, 'on', blank, 'piece', blank),
  );
}

const ANSWERS = {
  meets: 'meets',
  'falls-short': 'falls short of',
  'not-shown': 'is not shown to meet',
} as const;

function stepMarkup({ title, does, measures }: WindingStep, number: number): Content {
  return tag(
    'section',
    { class: 'step' },
    tag('h2', {}, `${number}  ${title}`),
    does.map((line) => tag('p', {}, line)),
    tag(
      'div',
      { class: 'measures' },
      measures.map((what) =>
        tag('p', { class: 'measure' }, tag('span', { class: 'tick' }), what, tag('span', { class: 'blank' })),
      ),
    ),
  );
}

/** How the finished piece is proven, and the cautions for it. */
const testBlocks = (design: Design, { stress }: Study): readonly (Markup | null)[] =>
  stressBlocks(stress, design)
    .filter(({ title }) => title === 'Test plan' || title === 'Cautions')
    .map(({ title, lines }) =>
      wholeBlock(
        title,
        lines.map((line) => tag('p', {}, line.trim())),
      ),
    );
