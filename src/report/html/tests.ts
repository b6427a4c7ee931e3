// The withstand test of each pair as steps, what a pass would and would not prove, and the cautions.

import { CAUTION } from '#report/answer-words.ts';
import { kilovoltsUp } from '#report/number-words.ts';
import { nameOf, pairNames, worstFirst } from '#report/pair-words.ts';
import { block, tag, type Content, type Markup } from './markup.ts';
import type { ReportParts } from './report-parts.ts';

export function tests(parts: ReportParts): Markup {
  const box = tag('div', { class: 'box' }, tag('h2', {}, 'Before you touch it'), tag('p', {}, CAUTION));
  return tag('div', { class: 'two' }, tag('div', {}, block('Test plan', plan(parts))), box);
}

function plan({ design, judgement, looks }: ReportParts): Content {
  const { bridges, core } = design;
  const asked = worstFirst(judgement.verdict).flatMap((pair) =>
    pair.required === null ? [] : [{ pair, test: pair.required.test }],
  );
  if (asked.length === 0) return tag('p', {}, 'No pair asks for a test.');
  const off = bridges.map(({ id }) => id).join(', ');
  const steps = [
    off === '' ? null : `Take off what bridges the circuits: ${off}.`,
    `Join all ends of each circuit${core.bond === 'floating' ? '; leave the core free' : ''}.`,
    ...asked.map(
      ({ pair, test }) =>
        `${pairNames(pair.between, looks)}: ${kilovoltsUp(test.dc)} dc or ${kilovoltsUp(test.rms)} rms for ${test.seconds} s.`,
    ),
    coreStep(bondedTo(core.bond, looks)),
    'A pass shows that nothing is broken today. It shows no distance, no ply and no grade.',
  ];
  return tag(
    'ol',
    {},
    steps.filter((step) => step !== null).map((step) => tag('li', {}, step)),
  );
}

const bondedTo = (bond: unknown, looks: ReportParts['looks']): string | null =>
  typeof bond === 'string' && bond !== 'floating' ? nameOf(bond, looks) : null;

const coreStep = (bonded: string | null): string =>
  bonded === null
    ? 'The same once more with the core joined to the mains side.'
    : `The core stays joined to ${bonded}.`;
