// The table of pairs, and for each pair the weakest path by the number of plies that it punctures.

import { leadingPath } from '#words/paths/leading-path.ts';
import type { PrintedPath } from '#judge/verdict/path.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import { lengthDown, lengthUp, plies } from '#words/text/number-words.ts';
import { limitingFigure, nameOf, worstFirst } from '#words/verdict/pair-words.ts';
import { pathSentence } from '#words/paths/path-words.ts';
import { table, wholeBlock, type Content, type Markup } from '#papers/html/page/markup.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';
import { gradeSign, pairSign, verdictSign } from '#papers/html/page/signs.ts';

export function pairsBlock(parts: ReportParts): Markup | null {
  const rows = worstFirst(parts.judgement.verdict).map((pair) => pairRow(pair, parts));
  const columns = ['Between', 'Needed', 'Reached', 'Limiting figure', 'Where', 'Verdict'].map((title) => ({
    title,
    tight: title === 'Limiting figure',
  }));
  return wholeBlock('Pairs of circuits', table(columns, [...rows, ...coreRows(parts)]));
}

function pairRow(pair: PairVerdict, { looks, theme }: ReportParts): readonly Content[] {
  const names = pairSign(pair.between, looks, theme);
  if (pair.required === null) return [names, '', '', '', '', verdictSign(null)];
  const best = pair.achievedAtBest === pair.achieved ? null : [', at best ', pair.achievedAtBest];
  return [
    names,
    gradeSign(pair.needed),
    [gradeSign(pair.achieved), best],
    limitingFigure(leadingPath(pair)),
    leadingPath(pair)?.section ?? '',
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
    return wholeBlock(title, table(PATH_COLUMNS, alike(pair.paths).map(pathRow)));
  });
}

const PATH_COLUMNS = ['Metric', 'Through', 'Length', 'Way', 'Where', 'Grade'].map((title) => ({
  title,
  tight: title === 'Length' || title === 'Through',
}));

/** One way by the fewest and the most plies that it stays the weakest for. */
interface PathRow {
  readonly path: PrintedPath;
  readonly most: number;
}

/** Where more plies make no way weaker, one row says it. */
function alike(paths: readonly PrintedPath[]): readonly PathRow[] {
  return paths.reduce<readonly PathRow[]>((rows, path) => {
    const last = rows.at(-1);
    if (last === undefined || !isAlike(last.path, path)) return [...rows, { path, most: path.plies }];
    return [...rows.slice(0, -1), { ...last, most: path.plies }];
  }, []);
}

const isAlike = (a: PrintedPath, b: PrintedPath): boolean =>
  a.metric === b.metric &&
  a.length === b.length &&
  a.section === b.section &&
  a.grade === b.grade &&
  a.over.join() === b.over.join() &&
  a.required?.reinforced === b.required?.reinforced &&
  pathSentence(a.legs) === pathSentence(b.legs);

function throughWords(fewest: number, most: number): string {
  if (fewest === most) return fewest === 0 ? 'no ply' : `at most ${plies(fewest)}`;
  return `${fewest === 0 ? 'no ply' : `at most ${fewest}`} to ${plies(most)}`;
}

function pathRow({ path, most }: PathRow): readonly Content[] {
  const through = throughWords(path.plies, most);
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
