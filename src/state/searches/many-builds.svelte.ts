// Many design files judged one after another: one row each, the verdict itself let go so that a thousand fit in memory.
// A bad file stays among them with its reason. Judging goes on beside the page, and one may stop.

import { inMillimetres } from '#words/text/length-unit.ts';
import { leadingPath } from '#words/paths/leading-path.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { Design } from '#model/design.ts';
import { buildRank, compareRanks, type BuildRank } from '#words/verdict/build-rank.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { limitingFigure, pairNames, worstFirst } from '#words/verdict/pair-words.ts';
import { bookWords, scopeWords } from '#words/text/answer-words.ts';
import { studyOf } from '#judge/study.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { designText, fileName, readFile, saveFile } from '#state/storage/files.ts';
import type { JudgeErrand } from '#state/judging/judge-errand.ts';
import type { Answer, Grade, Verdict } from '#state/judging/judged.ts';

export interface JudgedRow {
  readonly kind: 'judged';
  readonly file: File;
  readonly path: string;
  readonly title: string;
  readonly answer: Answer;
  /** How far the verdict reaches, where it leaves something out. */
  readonly scope: string;
  readonly pair: string;
  /** Null where nothing is asked. */
  readonly needed: Grade | null;
  readonly achieved: Grade | null;
  readonly figure: string;
  /** Height used and there, mm. */
  readonly used: number;
  readonly available: number;
  readonly book: string;
  readonly rank: BuildRank;
}

export interface BadRow {
  readonly kind: 'bad';
  readonly file: File;
  readonly path: string;
  readonly says: string;
}

export const COLUMNS = ['build', 'verdict', 'pair', 'needed', 'reached', 'figure', 'height'] as const;
export type Column = (typeof COLUMNS)[number];

const MOST_FILES = 2000;

export class ManyBuilds {
  rows: readonly (JudgedRow | BadRow)[] = $state.raw([]);
  /** Files of the last choice, and how many were no design files by their name. */
  total = $state(0);
  passedOver = $state(0);
  isRunning = $state(false);
  column: Column = $state('verdict');
  isDown = $state(false);
  #turn = 0;
  readonly #judge: JudgeErrand;

  constructor(judge: JudgeErrand) {
    this.#judge = judge;
  }

  readonly judged: readonly JudgedRow[] = $derived.by(() => {
    const judged = this.rows.filter((row) => row.kind === 'judged');
    const sorted = judged.sort(BY[this.column]);
    return this.isDown ? sorted.toReversed() : sorted;
  });

  readonly bad: readonly BadRow[] = $derived.by(() => this.rows.filter((row) => row.kind === 'bad'));

  count(answer: Answer): number {
    return this.judged.filter((row) => row.answer === answer).length;
  }

  /** The other way round when it is the same again. */
  sortBy(column: Column): void {
    this.isDown = this.column === column && !this.isDown;
    this.column = column;
  }

  async take(files: readonly File[]): Promise<void> {
    const designs = files.filter(({ name }) => /\.json$/i.test(name)).slice(0, MOST_FILES);
    const turn = ++this.#turn;
    this.rows = [];
    this.total = designs.length;
    this.passedOver = files.length - designs.length;
    this.isRunning = true;
    for (const file of designs.toSorted((a, b) =>
      pathOf(a).localeCompare(pathOf(b), 'en', { numeric: true }),
    )) {
      const row = await rowOf(file, this.#judge);
      if (turn !== this.#turn) return;
      this.rows = [...this.rows, row];
    }
    this.isRunning = false;
  }

  stop(): void {
    this.#turn++;
    this.isRunning = false;
  }

  /** Null where it was saved; else why not. */
  async saveReport(file: File): Promise<string | null> {
    const found = await readBuild(file);
    if (found.kind === 'bad') return found.says;
    const { reportHtml } = await import('#papers/html/report/report.ts');
    const { design, text } = found;
    const judged = await this.#judge(design);
    if (judged.kind === 'broke') return brokeWords(judged.says);
    const judgement = studyOf(design, judged.judgement);
    const html = inMillimetres(() => reportHtml({ design, judgement, designText: text }));
    saveFile(html, fileName(design.title, 'html'), 'text/html');
    return null;
  }
}

const BY: Readonly<Record<Column, (a: JudgedRow, b: JudgedRow) => number>> = {
  build: (a, b) => a.title.localeCompare(b.title, 'en', { numeric: true }),
  verdict: (a, b) => compareRanks(a.rank, b.rank),
  pair: (a, b) => a.pair.localeCompare(b.pair, 'en'),
  needed: (a, b) => GRADES.indexOf(b.needed ?? 'none') - GRADES.indexOf(a.needed ?? 'none'),
  reached: (a, b) => GRADES.indexOf(a.achieved ?? 'none') - GRADES.indexOf(b.achieved ?? 'none'),
  figure: (a, b) => b.rank.missing - a.rank.missing,
  height: (a, b) => b.used / b.available - a.used / a.available,
};

const GRADES: readonly Grade[] = ['none', 'functional', 'basic', 'supplementary', 'double', 'reinforced'];

/** With its folders where a whole folder was chosen. */
const pathOf = ({ webkitRelativePath, name }: File): string =>
  webkitRelativePath === '' ? name : webkitRelativePath;

type ReadBuild =
  | { readonly kind: 'design'; readonly design: Design; readonly text: string }
  | { readonly kind: 'bad'; readonly says: string };

async function readBuild(file: File): Promise<ReadBuild> {
  const found = await readFile(file);
  if (found.kind !== 'build')
    return { kind: 'bad', says: found.kind === 'refused' ? found.says : (found.faults[0]?.says ?? '') };
  const read = readDesign(found.doc, knownIds);
  if (read.kind === 'bad') return { kind: 'bad', says: read.faults[0]?.says ?? 'cannot be read' };
  return { kind: 'design', design: read.design, text: designText(found.doc) };
}

async function rowOf(file: File, judge: JudgeErrand): Promise<JudgedRow | BadRow> {
  const path = pathOf(file);
  const found = await readBuild(file);
  if (found.kind === 'bad') return { kind: 'bad', file, path, says: found.says };
  const judged = await judge(found.design);
  if (judged.kind === 'broke') return { kind: 'bad', file, path, says: brokeWords(judged.says) };
  return judgedRow(file, path, found.design, judged.judgement.verdict);
}

const brokeWords = (says: string): string => `not judged, for a fault of the program: ${says}`;

function judgedRow(file: File, path: string, design: Design, verdict: Verdict): JudgedRow {
  const [worst] = worstFirst(verdict);
  const asked = worst?.required != null;
  return {
    kind: 'judged',
    file,
    path,
    title: design.title === '' ? path : design.title,
    answer: verdict.verdict,
    scope: scopeWords(verdict),
    pair: worst === undefined ? '' : pairNames(worst.between, circuitLooks(design.circuits)),
    needed: worst !== undefined && asked ? worst.needed : null,
    achieved: worst?.achieved ?? null,
    figure: worst === undefined ? '' : limitingFigure(leadingPath(worst)),
    used: verdict.fit.height.used,
    available: verdict.fit.height.available,
    book: bookWords(verdict.rules),
    rank: buildRank(verdict),
  };
}
