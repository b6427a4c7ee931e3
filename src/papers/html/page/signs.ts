// The signs of the report: verdict bar, grade bars, unknown, how well known, a circuit's mark beside its letter.

import type { Answer } from '#judge/verdict/answer.ts';
import type { Grade } from '#units/terms.ts';
import type { Confirmed } from '#standards/because.ts';
import { answerWords } from '#words/text/answer-words.ts';
import type { CircuitLook } from '#words/design/circuit-look.ts';
import { gradeHeight } from '#words/verdict/grade-height.ts';
import { confirmedWords } from '#words/text/confirmed-words.ts';
import type { Theme } from '#drawing/scene/palette.ts';
import { signMark } from '#drawing/marks/turn-marks.ts';
import { element } from '#drawing/svg/svg-element.ts';
import { svgMarks } from '#drawing/svg/svg-marks.ts';
import { raw, tag, type Content, type Markup } from './markup.ts';

const svg = (width: number, height: number, content: string): Markup =>
  raw(
    element(
      'svg',
      { width, height, viewBox: `0 0 ${width} ${height}`, 'aria-hidden': 'true', class: 'sign' },
      content,
    ),
  );

/** Full: meets. Filled to 58 % and cut: falls short. Broken rim: not shown. Null, a bare line: nothing is asked. */
export function verdictBar(answer: Answer | null, height = 10): Markup {
  const width = height * 2.6;
  const rim = (dash: string | null): string =>
    element('rect', {
      x: 0.75,
      y: 0.75,
      width: width - 1.5,
      height: height - 1.5,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': 1.3,
      'stroke-dasharray': dash,
    });
  const filled = (part: number): string =>
    element('rect', { width: width * part, height, fill: 'currentColor' });
  switch (answer) {
    case 'meets':
      return svg(width, height, filled(1));
    case 'falls-short':
      return svg(width, height, rim(null) + filled(0.58));
    case 'not-shown':
      return svg(width, height, rim('3 2') + filled(0.4));
    case null:
      return svg(width, height, element('path', { d: `M0 ${height / 2}H${width}`, stroke: 'currentColor' }));
  }
}

/** The bar and the words; falling short is written in pencil. */
export function verdictSign(answer: Answer | null): Markup {
  const words = answer === null ? 'nothing is asked' : answerWords(answer);
  return tag(
    'span',
    { class: answer === 'falls-short' ? 'verdict pencil' : 'verdict' },
    verdictBar(answer),
    ` ${words}`,
  );
}

/** Four small bars filled to the grade, and the word. */
export function gradeSign(grade: Grade): Markup {
  const bars = [0, 1, 2, 3].map((k) =>
    element('rect', {
      x: k * 6 + 0.5,
      y: 0.5,
      width: 4,
      height: 9,
      fill: k < gradeHeight(grade) ? 'currentColor' : 'none',
      stroke: 'currentColor',
    }),
  );
  return tag('span', { class: 'grade' }, svg(24, 10, bars.join('')), ` ${grade}`);
}

export function unknownSign(): Markup {
  const ring = element('circle', {
    cx: 7,
    cy: 7,
    r: 6,
    fill: 'none',
    stroke: 'currentColor',
    'stroke-dasharray': '2.5 1.5',
  });
  const mark = element(
    'text',
    { x: 7, y: 10.8, 'text-anchor': 'middle', 'font-size': 10.8, 'font-weight': 700, fill: 'currentColor' },
    '?',
  );
  return svg(14, 14, ring + mark);
}

/** Two dots, one dot, a dash, a dotted ring; always with the word. Null prints nothing. */
export function knownSign(confirmed: Confirmed | null): Markup | null {
  if (confirmed === null) return null;
  return tag(
    'span',
    { class: confirmed === 'memory' ? 'known memory' : 'known' },
    svg(16, 10, KNOWN[confirmed]),
    tag('span', {}, confirmedWords(confirmed)),
  );
}

const dot = (cx: number): string => element('circle', { cx, cy: 5, r: 3.2, fill: 'currentColor' });
const dash = element('path', { d: 'M4 8H12', stroke: 'currentColor' });
const KNOWN: Readonly<Record<Confirmed, string>> = {
  'two-sources': dot(4) + dot(12),
  published: dot(8),
  secondary: element('circle', { cx: 8, cy: 5, r: 3.2, fill: 'none', stroke: 'currentColor' }),
  derived: dash,
  stated: dash,
  user: element('path', { d: 'M3 5L7 9L13 1', fill: 'none', stroke: 'currentColor', 'stroke-width': 1.6 }),
  'house-rule': element('path', { d: 'M4 8V4l4-3 4 3v4Z', fill: 'none', stroke: 'currentColor' }),
  memory: element('circle', {
    cx: 8,
    cy: 5,
    r: 3.4,
    fill: 'none',
    stroke: 'currentColor',
    'stroke-dasharray': '1.3 1.3',
  }),
};

/** A turn with its mark, the letter and the name. */
export function circuitSign(id: string, looks: readonly CircuitLook[], theme: Theme): Content {
  const look = looks.find(({ circuit }) => circuit === id);
  if (look === undefined) return id;
  const hue = theme.circuits[look.hue];
  const turn =
    element('circle', { r: 6.4, fill: hue.fill, stroke: hue.ring, 'stroke-width': 1.2 }) +
    svgMarks([signMark(look.mark, hue, 6.4, 'sign')], '');
  const sign = svg(15, 15, element('g', { transform: 'translate(7.5 7.5)' }, turn));
  return tag(
    'span',
    { class: `circuit ${look.hue}` },
    sign,
    ' ',
    tag('b', {}, look.letter),
    ` ${shortened(look.name)}`,
  );
}

/** A name keeps its line; a very long one must not push the table off the paper. */
const shortened = (name: string): string =>
  [...name].length > MOST_NAME ? `${[...name].slice(0, MOST_NAME).join('')}…` : name;
const MOST_NAME = 32;

export const pairSign = (
  between: readonly [string, string],
  looks: readonly CircuitLook[],
  theme: Theme,
): Content => [
  circuitSign(between[0], looks, theme),
  tag('span', { class: 'to' }, ' to '),
  circuitSign(between[1], looks, theme),
];
