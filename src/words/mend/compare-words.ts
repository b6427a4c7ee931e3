// Two builds compared, in words: one sentence, layer by layer, pair by pair, what was changed and what it did.

import { lengthNear } from '#words/text/number-words.ts';
import { lengthUnit } from '#words/text/length-unit.ts';
import type { ComparedLayer, ComparedPair, Comparison, Consequence } from '#judge/compare/comparison.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { answerWords } from '#words/text/answer-words.ts';
import { limitingFigure } from '#words/verdict/pair-words.ts';
import { fitChangeWords, type FitChange } from './fit-changes.ts';
import { changesWords } from './mend-words.ts';

/** `Two layers changed, one answer turned: falls short -> meets.` */
export function comparisonHeadline({ layers, pairs, changed, verdicts, otherRules }: Comparison): string {
  if (changed.length === 0) return 'The two are alike.';
  const touched = layers.filter(({ same }) => !same).length;
  const turned = pairs.filter(({ a, b }) => a?.verdict !== b?.verdict).length;
  const [a, b] = verdicts.map(answerWords);
  const books = otherRules ? ' They are judged by different rule books.' : '';
  const whole = a === b ? `${a}, as before` : `${a} -> ${b}`;
  return `${counted(touched, 'layer')} changed, ${counted(turned, 'answer')} turned: ${whole}.${books}`;
}

const counted = (count: number, what: string): string =>
  `${count === 0 ? 'No' : count} ${what}${count === 1 ? '' : 's'}`;

export const changedWords = ({ changed }: Comparison, doc: DesignFile): readonly string[] =>
  changesWords(changed, doc);

/** What a layer is in either build: `Tape, 3 plies`. */
export function layerTitle({ a, b }: ComparedLayer, docs: readonly [DesignFile, DesignFile]): string {
  const layer = b === null ? docs[0].layers[a ?? 0] : docs[1].layers[b];
  if (layer === undefined) return '';
  if (layer.kind === 'winding') return `winding ${layer.winding}`;
  return layer.kind === 'tape' ? 'tape' : 'screen';
}

/** What became of it. */
export function layerFate({ a, b, same }: ComparedLayer): string {
  if (a === null) return 'only in B';
  if (b === null) return 'only in A';
  return same ? 'alike' : 'changed';
}

export function pairWords({ between, a, b }: ComparedPair): string {
  return `${between.join(' to ')}: ${sideWords(a)} -> ${sideWords(b)}`;
}

export const sideWords = (pair: PairVerdict | null): string =>
  pair === null
    ? 'no such pair'
    : [pair.achieved, answerWords(pair.verdict), limitingFigure(pair.limiting)]
        .filter((part) => part !== '')
        .join(', ');

const NAMES: Readonly<Record<Consequence['what'], string>> = {
  height: 'stack',
  plies: 'plies',
  'weak-spots': 'weak spots',
  unknowns: 'unknowns that decide',
};

export const consequenceName = ({ what }: Consequence): string => NAMES[what];

export const consequenceFigure = ({ what }: Consequence, value: number): string =>
  what === 'height' ? `${lengthNear(value)} ${lengthUnit()}` : String(value);

export function difference({ what, a, b }: Consequence): string {
  const by = b - a;
  if (Math.abs(by) < 1e-6) return '–';
  const size = what === 'height' ? lengthNear(Math.abs(by)) : String(Math.abs(by));
  return `${by > 0 ? '+' : '−'}${size}`;
}

export function comparisonLines(
  comparison: Comparison,
  fit: readonly FitChange[],
  docs: readonly [DesignFile, DesignFile],
): readonly string[] {
  const { layers, pairs, did } = comparison;
  const shown = layers.filter(({ same }) => !same);
  return [
    comparisonHeadline(comparison),
    ...(shown.length === 0 ? [] : ['Layers:']),
    ...shown.map((layer) => `  ${placeWords(layer)} ${layerTitle(layer, docs)}: ${layerFate(layer)}`),
    ...(comparison.changed.length === 0 ? [] : ['What changed:']),
    ...changedWords(comparison, docs[1]).map((words) => `  ${words}`),
    'Pair by pair:',
    ...pairs.map((pair) => `  ${pairWords(pair)}`),
    'What it did:',
    ...fit.map((one) => `  ${fitChangeWords(one)}`),
    ...did
      .filter(({ what }) => what !== 'height')
      .map(
        (one) =>
          `  ${consequenceName(one)}: ${consequenceFigure(one, one.a)} -> ${consequenceFigure(one, one.b)} (${difference(one)})`,
      ),
  ];
}

const placeWords = ({ a, b }: ComparedLayer): string =>
  `${a === null ? '-' : a + 1} | ${b === null ? '-' : b + 1}`;
