// Many builds in one table, worst first, each opening its report; a column's head sorts by it.

import type { Design } from '#model/design.ts';
import type { Answer, Verdict } from '#judge/verdict/verdict.ts';
import { bookWords, scopeWords } from '#words/verdict/answer-words.ts';
import { buildRank, compareRanks } from '#words/verdict/build-rank.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { lengthDown, lengthTaken } from '#words/text/number-words.ts';
import { limitingFigure, pairNames, worstFirst } from '#words/verdict/pair-words.ts';
import { palette } from '#drawing/scene/palette.ts';
import { TOOL_VERSION } from '#words/text/tool-version.ts';
import { tag, type Content, type Markup } from './markup.ts';
import { gradeSign, verdictSign } from './signs.ts';
import { sheet } from './sheet.ts';

export interface JudgedBuild {
  readonly kind: 'judged';
  readonly file: string;
  /** Address of its report beside the overview. */
  readonly report: string;
  readonly design: Design;
  readonly verdict: Verdict;
}

export interface BadBuild {
  readonly kind: 'bad';
  readonly file: string;
  readonly says: string;
}

export function overviewHtml(builds: readonly (JudgedBuild | BadBuild)[]): string {
  const judged = worstBuilds(builds);
  const bad = builds.flatMap((build) => (build.kind === 'bad' ? [build] : []));
  const foot = {
    left: `Layerwright ${TOOL_VERSION}: overview`,
    right: 'a test laboratory and local codes decide',
  };
  const head = {
    title: 'Overview of builds',
    name: `${builds.length} builds`,
    about: countsWords(judged, bad.length),
    theme: palette.paper,
    foot,
    wide: true,
    script: SORTING,
  };
  return sheet(
    head,
    judged.length === 0 ? null : table(judged),
    bad.length === 0 ? null : [tag('h2', {}, 'Bad input'), bad.map(({ says }) => tag('p', {}, says))],
  );
}

function worstBuilds(builds: readonly (JudgedBuild | BadBuild)[]): readonly JudgedBuild[] {
  const judged = builds.flatMap((build) => (build.kind === 'judged' ? [build] : []));
  return judged.sort((a, b) => compareRanks(buildRank(a.verdict), buildRank(b.verdict)));
}

function countsWords(judged: readonly JudgedBuild[], bad: number): string {
  const count = (answer: Answer): number => judged.filter(({ verdict }) => verdict.verdict === answer).length;
  return `${count('meets')} meet, ${count('falls-short')} fall short, ${count('not-shown')} not shown, ${bad} bad input`;
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
  return tag('table', {}, tag('thead', {}, tag('tr', {}, head)), tag('tbody', {}, builds.map(row)));
}

function row(build: JudgedBuild): Markup {
  const { verdict, design } = build;
  const rank = buildRank(verdict);
  const [worst] = worstFirst(verdict);
  const asked = worst?.required != null;
  const { used, available } = verdict.fit.height;
  const scope = scopeWords(verdict);
  const cells: readonly (readonly [string, Content])[] = [
    [
      design.title,
      [tag('a', { href: build.report }, design.title), tag('div', { class: 'small' }, build.file)],
    ],
    [
      String(rank.answer),
      [verdictSign(verdict.verdict), scope === '' ? null : tag('div', { class: 'small' }, scope)],
    ],
    ['', worst === undefined ? '' : pairNames(worst.between, circuitLooks(design.circuits))],
    ['', asked ? gradeSign(worst.needed) : 'nothing'],
    ['', worst === undefined ? '' : gradeSign(worst.achieved)],
    [String(-rank.missing), worst === undefined ? '' : limitingFigure(worst.limiting)],
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
