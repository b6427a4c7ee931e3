// Many builds in one table, worst first, each opening its report; a column's head sorts by it.

import { leadingPath } from '#words/paths/leading-path.ts';
import type { Design } from '#model/design.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { bookWords, scopeWords } from '#words/text/answer-words.ts';
import { buildRank, compareRanks, type BuildRank } from '#words/verdict/build-rank.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { lengthDown, lengthTaken } from '#words/text/number-words.ts';
import { limitingFigure, pairNames, worstFirst } from '#words/verdict/pair-words.ts';
import { palette } from '#drawing/scene/palette.ts';
import { TOOL_VERSION } from '#words/text/tool-version.ts';
import { tag, type Content, type Markup } from '#papers/html/page/markup.ts';
import { gradeSign, verdictSign } from '#papers/html/page/signs.ts';
import { sheet } from '#papers/html/page/document.ts';

/** One build as its row: plain data, and so small that a thousand of them fit in memory. */
export interface JudgedBuild {
  readonly kind: 'judged';
  readonly answer: Answer;
  readonly rank: BuildRank;
  readonly row: Markup;
}

/** `fault`: one of the program, not of the file. */
export interface BadBuild {
  readonly kind: 'bad' | 'fault';
  readonly file: string;
  readonly says: string;
}

export function overviewHtml(builds: readonly (JudgedBuild | BadBuild)[]): string {
  const judged = worstBuilds(builds);
  const saying = (kind: BadBuild['kind'], title: string): Content => {
    const some = builds.flatMap((build) => (build.kind === kind ? [tag('p', {}, build.says)] : []));
    return some.length === 0 ? null : [tag('h2', {}, title), some];
  };
  const foot = {
    left: `Layerwright ${TOOL_VERSION}: overview`,
    right: 'a test laboratory and local codes decide',
  };
  const head = {
    title: 'Overview of builds',
    name: `${builds.length} builds`,
    about: countsWords(builds),
    theme: palette.paper,
    foot,
    wide: true,
    script: SORTING,
  };
  return sheet(
    head,
    judged.length === 0 ? null : table(judged),
    saying('bad', 'Bad input'),
    saying('fault', 'Not judged for a fault of the program'),
  );
}

function worstBuilds(builds: readonly (JudgedBuild | BadBuild)[]): readonly JudgedBuild[] {
  const judged = builds.flatMap((build) => (build.kind === 'judged' ? [build] : []));
  return judged.sort((a, b) => compareRanks(a.rank, b.rank));
}

function countsWords(builds: readonly (JudgedBuild | BadBuild)[]): string {
  const count = (wanted: Answer | BadBuild['kind']): number =>
    builds.filter((build) => (build.kind === 'judged' ? build.answer : build.kind) === wanted).length;
  const broken = count('fault');
  const faults = broken === 0 ? '' : `, ${broken} not judged for a fault of the program`;
  return `${count('meets')} meet, ${count('falls-short')} fall short, ${count('not-shown')} not shown, ${count('bad')} bad input${faults}`;
}

const HEADS = [
  'Build',
  'Verdict',
  'Worst pair',
  'Needed',
  'Reached',
  'Limiting figure',
  'Height',
  'Rule book',
];

function table(builds: readonly JudgedBuild[]): Markup {
  const head = HEADS.map((title) => tag('th', { scope: 'col' }, tag('button', { type: 'button' }, title)));
  return tag(
    'table',
    {},
    tag('thead', {}, tag('tr', {}, head)),
    tag(
      'tbody',
      {},
      builds.map(({ row }) => row),
    ),
  );
}

/** `report`: address of its report beside the overview. */
export function judgedBuild(file: string, report: string, design: Design, verdict: Verdict): JudgedBuild {
  const rank = buildRank(verdict);
  return { kind: 'judged', answer: verdict.verdict, rank, row: row(file, report, design, verdict, rank) };
}

function row(file: string, report: string, design: Design, verdict: Verdict, rank: BuildRank): Markup {
  const [worst] = worstFirst(verdict);
  const asked = worst?.required != null;
  const { used, available } = verdict.fit.height;
  const scope = scopeWords(verdict);
  const cells: readonly (readonly [string, Content])[] = [
    [design.title, [tag('a', { href: report }, design.title), tag('div', { class: 'small' }, file)]],
    [
      String(rank.answer),
      [verdictSign(verdict.verdict), scope === '' ? null : tag('div', { class: 'small' }, scope)],
    ],
    ['', worst === undefined ? '' : pairNames(worst.between, circuitLooks(design.circuits))],
    ['', asked ? gradeSign(worst.needed) : 'nothing'],
    ['', worst === undefined ? '' : gradeSign(worst.achieved)],
    [String(-rank.missing), worst === undefined ? '' : limitingFigure(leadingPath(worst))],
    [String(used / available), `${lengthTaken(used)} of ${lengthDown(available)}`],
    ['', bookWords(verdict.rules)],
  ];
  return tag(
    'tr',
    {},
    cells.map(([key, content]) => tag('td', { 'data-key': key === '' ? null : key }, content)),
  );
}

/** Sorts the rows by the cells under the head that was pressed, the other way round when it is pressed again. */
const SORTING = `
for (const [column, button] of [...document.querySelectorAll('th button')].entries()) button.onclick = () => {
  const body = document.querySelector('tbody');
  const down = button.parentElement.getAttribute('aria-sort') === 'ascending';
  for (const head of document.querySelectorAll('th')) head.removeAttribute('aria-sort');
  button.parentElement.setAttribute('aria-sort', down ? 'descending' : 'ascending');
  const key = (row) => row.cells[column].dataset.key ?? row.cells[column].textContent;
  const rows = [...body.rows].sort((a, b) => key(a).localeCompare(key(b), 'en', { numeric: true }) || 0);
  const byNumber = rows.every((row) => key(row) !== '' && Number.isFinite(Number(key(row))));
  if (byNumber) rows.sort((a, b) => Number(key(a)) - Number(key(b)));
  body.append(...(down ? rows.reverse() : rows));
};`;
