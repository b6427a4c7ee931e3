// The table of pairs, and for each pair the weakest path by the number of plies that it punctures.

import type { PairVerdict, PrintedPath } from '#rules/verdict.ts';
import { lengthDown, lengthUp, plies } from '#report/number-words.ts';
import { limitingFigure, nameOf, worstFirst } from '#report/pair-words.ts';
import { pathSentence } from '#report/path-words.ts';
import { block, table, type Content, type Markup } from './markup.ts';
import type { ReportParts } from './report-parts.ts';
import { gradeSign, pairSign, verdictSign } from './signs.ts';

export function pairsBlock(parts: ReportParts): Markup | null {
  const rows = worstFirst(parts.judgement.verdict).map((pair) => pairRow(pair, parts));
  const columns = ['Between', 'Needed', 'Reached', 'Limiting figure', 'Where', 'Verdict'].map((title) => ({
    title,
  }));
  return block('Pairs of circuits', table(columns, [...rows, ...coreRows(parts)]));
}

function pairRow(pair: PairVerdict, { looks, theme }: ReportParts): readonly Content[] {
  const names = pairSign(pair.between, looks, theme);
  if (pair.required === null) return [names, 'nothing is asked', '', '', '', verdictSign(null)];
  const best = pair.achievedAtBest === pair.achieved ? null : [', at best ', pair.achievedAtBest];
  return [
    names,
    gradeSign(pair.needed),
    [gradeSign(pair.achieved), best],
    limitingFigure(pair.limiting),
    pair.limiting?.section ?? '',
    verdictSign(pair.verdict),
  ];
}

function coreRows({ judgement, looks }: ReportParts): readonly (readonly Content[])[] {
  return (judgement.verdict.coreAsPrimary?.pairs ?? []).map((pair) => [
    `${pair.between.map((id) => nameOf(id, looks)).join(' to ')}, core counted as primary`,
    '',
    gradeSign(pair.achieved),
    pair.length === null
      ? ''
      : `${pair.metric ?? ''} ${lengthDown(pair.length)}${pair.required === null ? '' : ` of ${lengthUp(pair.required)}`} mm`,
    '',
    verdictSign(pair.verdict),
  ]);
}

export function pathsBlock(parts: ReportParts): readonly (Markup | null)[] {
  return worstFirst(parts.judgement.verdict).map((pair) => {
    const title = ['Weakest path by plies punctured, ', pairSign(pair.between, parts.looks, parts.theme)];
    return block(title, table(PATH_COLUMNS, pair.paths.map(pathRow)));
  });
}

const PATH_COLUMNS = ['Metric', 'Through', 'Length', 'Way', 'Where', 'Grade'].map((title) => ({
  title,
  tight: title === 'Length' || title === 'Through',
}));

function pathRow(path: PrintedPath): readonly Content[] {
  const through = path.plies === 0 ? 'no ply' : `at most ${plies(path.plies)}`;
  if (path.length === null) return [path.metric, through, 'no path', '', '', ''];
  const asked = path.required === null ? '' : ` of ${lengthUp(path.required.reinforced)}`;
  const straight =
    path.length === 0 && path.legs.length > 0 && path.legs.every(({ kind }) => kind === 'through');
  const over = path.over.length === 0 ? '' : ` (over ${path.over.join(', ')})`;
  return [
    path.metric,
    through,
    straight ? 'straight through' : `${lengthDown(path.length)}${asked} mm`,
    pathSentence(path.legs) + over,
    path.section ?? '',
    path.grade === null ? '' : gradeSign(path.grade),
  ];
}
