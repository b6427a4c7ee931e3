// The sheet for whoever winds or rewinds the build: numbered steps with boxes to tick and places for figures.

import type { Design } from '#model/design.ts';
import type { Judgement } from '#rules/judge.ts';
import { bookWords, scopeWords } from '#report/answer-words.ts';
import { palette } from '#report/palette.ts';
import { sceneOf } from '#report/scene.ts';
import { stressSheet } from '#report/stress-sheet.ts';
import { circuitLooks } from '#report/circuit-look.ts';
import { stressBlocks } from '#report/stress-words.ts';
import { svgOf } from '#report/svg.ts';
import { TOOL_VERSION } from '#report/tool-version.ts';
import { windingSteps, type WindingStep } from '#report/winding-steps.ts';
import { block, raw, tag, type Content, type Markup } from './markup.ts';
import { style } from './style.ts';

export interface WinderInput {
  readonly design: Design;
  readonly judgement: Judgement;
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
            { theme: theme.name, caption: false, width: 900 },
          ),
        );
  const scope = scopeWords(verdict);
  const judged = `As drawn this build ${ANSWERS[verdict.verdict]} ${bookWords(verdict.rules)}${scope === '' ? '' : `, ${scope}`}.`;
  const body = tag(
    'body',
    {},
    tag('header', {}, tag('b', {}, design.title), tag('span', { class: 'to' }, 'winding sheet')),
    tag('p', {}, judged),
    tag('figure', {}, drawing),
    windingSteps(design, verdict.fit).map((step, k) => stepMarkup(step, k + 1)),
    testBlocks(design, judgement),
    tag(
      'p',
      { class: 'measure' },
      'Wound by',
      tag('span', { class: 'blank' }),
      'on',
      tag('span', { class: 'blank' }),
      'piece',
      tag('span', { class: 'blank' }),
    ),
  );
  const head = [
    tag('meta', { charset: 'utf-8' }),
    tag('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    tag('title', {}, `${design.title}: winding sheet`),
    tag('style', {}, raw(style(theme, foot))),
  ];
  return `<!doctype html>\n${tag('html', { lang: 'en' }, tag('head', {}, head), body).markup}\n`;
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
    measures.map((what) =>
      tag('p', { class: 'measure' }, tag('span', { class: 'tick' }), what, tag('span', { class: 'blank' })),
    ),
  );
}

/** How the finished piece is proven, and the cautions for it. */
const testBlocks = (design: Design, judgement: Judgement): readonly (Markup | null)[] =>
  stressBlocks(stressSheet(design, judgement.verdict), circuitLooks(design.circuits))
    .filter(({ title }) => title === 'Test plan' || title === 'Cautions')
    .map(({ title, lines }) =>
      block(
        title,
        lines.map((line) => tag('p', {}, line.trim())),
      ),
    );
