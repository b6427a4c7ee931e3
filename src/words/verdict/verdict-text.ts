// A whole verdict as lines of plain text, as the command line prints it.

import type { Design } from '#model/design.ts';
import { leadingPath } from '#words/paths/leading-path.ts';
import type { Assumption, JudgedTouchCurrent, Verdict } from '#judge/verdict/verdict.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import {
  CAUTION,
  answerWords,
  bookWords,
  capitalised,
  scopeWords,
  spotWords,
} from '#words/text/answer-words.ts';
import { countedWords } from './assumption-words.ts';
import { circuitLooks, type CircuitLook } from '#words/design/circuit-look.ts';
import {
  beyondWords,
  headline,
  limitingFigure,
  pairLine,
  pairNames,
  spotFigure,
  worstFirst,
} from './pair-words.ts';
import { notJudgedWords } from '#words/unknowns/not-judged-words.ts';
import { pathSentence } from '#words/paths/path-words.ts';
import { remarkSays } from './remark-words.ts';
import { spotMend, spotSays } from '#words/spots/spot-says.ts';
import { turningWords } from '#words/unknowns/turning-words.ts';
import { printable } from '#words/text/printable.ts';

export function verdictText(design: Design, verdict: Verdict): string {
  const looks = circuitLooks(design.circuits);
  const blocks = [
    top(verdict, looks),
    section(
      'Pairs',
      worstFirst(verdict).flatMap((pair) => pairBlock(pair, looks)),
    ),
    core(verdict, looks),
    touch(verdict),
    section(
      'Weak spots, worst first',
      verdict.weakSpots.map((spot, k) => spotLine(spot, k + 1, looks)),
    ),
    section(
      'Unknown and assumed',
      verdict.assumptions.map((assumption) => assumptionLine(assumption, looks)),
    ),
    section('Remarks', verdict.remarks.map(remarkSays)),
    section('Not judged', verdict.notJudged.map(notJudgedWords)),
    ground(verdict),
    [`Caution: ${CAUTION}`],
  ];
  return `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.map(printable).join('\n'))
    .join('\n\n')}\n`;
}

/** One line for one of many files: verdict, file, title, and why. */
export function verdictLine(file: string, design: Design, verdict: Verdict): string {
  const looks = circuitLooks(design.circuits);
  const [worst] = worstFirst(verdict);
  const why =
    worst === undefined
      ? ''
      : `; ${[pairLine(worst, looks), limitingFigure(leadingPath(worst))].filter(Boolean).join(', ')}`;
  return printable(`${answerWords(verdict.verdict).padEnd(11)}  ${file}  ${verdict.title}${why}`);
}

function top(verdict: Verdict, looks: readonly CircuitLook[]): readonly string[] {
  const scope = scopeWords(verdict);
  const answer = `${capitalised(answerWords(verdict.verdict))}, ${bookWords(verdict.rules)}`;
  return [verdict.title, scope === '' ? answer : `${answer}; ${scope}`, headline(verdict, looks)];
}

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [title, ...lines.map((line) => `  ${line}`)];

function pairBlock(pair: PairVerdict, looks: readonly CircuitLook[]): readonly string[] {
  const line = pairLine(pair, looks);
  const leading = leadingPath(pair);
  if (pair.required === null) return [line];
  if (pair.beyond.length > 0 && pair.verdict === 'not-shown') return [line, `  ${beyondWords(pair)}`];
  if (leading === null) return [line];
  const { section: where, legs } = leading;
  const figure = [limitingFigure(leading), where ?? ''].filter((part) => part !== '').join(', ');
  return [line, `  ${figure}`, ...(legs.length === 0 ? [] : [`  ${pathSentence(legs)}`])];
}

/** Where the capacitance of the windings is from, that the current was worked out with. */
function windingsWords(windings: JudgedTouchCurrent['windings']): string {
  if (windings === null) return '';
  return windings === 'field'
    ? '; the windings computed from the field'
    : '; the windings estimated as parallel layers';
}

function touch({ touchCurrent }: Verdict): readonly string[] {
  if (touchCurrent === null) return [];
  const { rms, limit, verdict, windings, missing } = touchCurrent;
  const least = missing.length === 0 ? '' : ` at the least, for ${missing.join(', ')} without a value`;
  return section('Touch current', [
    `${rms} mA rms${least}, limit ${limit} mA: ${answerWords(verdict)}${windingsWords(windings)}`,
  ]);
}

function core(verdict: Verdict, looks: readonly CircuitLook[]): readonly string[] {
  const { coreAsPrimary } = verdict;
  if (coreAsPrimary === null) return [];
  const lines = coreAsPrimary.pairs.map(
    (pair) => `${pairNames(pair.between, looks)}: ${answerWords(pair.verdict)}, ${pair.achieved}`,
  );
  return section(`Core counted as primary: ${answerWords(coreAsPrimary.verdict)}`, lines);
}

function spotLine(spot: WeakSpot, number: number, looks: readonly CircuitLook[]): string {
  const where = [spot.between === null ? '' : pairNames(spot.between, looks), spot.section, spotFigure(spot)];
  const head = `${number} ${spotWords(spot.kind)} (${where.filter((part) => part !== '').join('; ')})`;
  return [`${head}: ${spotSays(spot)}`, spotMend(spot)].filter((part) => part !== '').join(' ');
}

function assumptionLine(assumption: Assumption, looks: readonly CircuitLook[]): string {
  const { field, between, decides, atBest, kind } = assumption;
  const figure = turningWords(assumption);
  const sign = kind === 'unknown' ? '? ' : '';
  const pair = between === null ? '' : ` (${pairNames(between, looks)})`;
  const effect = decides
    ? `; decides a pair${figure === null ? '' : ` (${figure}: meets)`}${wholeAtBest(atBest)}`
    : '';
  return `${sign}${field}${pair}: ${countedWords(assumption)}${effect}`;
}

const wholeAtBest = (atBest: Assumption['atBest']): string =>
  atBest === null ? '' : `, the whole at its best: ${answerWords(atBest)}`;

function ground(verdict: Verdict): readonly string[] {
  return verdict.restsOn === 'memory'
    ? ['This verdict rests on a table figure marked memory: not checked against its source.']
    : [];
}
