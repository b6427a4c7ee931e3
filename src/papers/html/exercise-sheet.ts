// An exercise on paper, and its answer sheet in the same layout so that one can be laid beside the other; or a whole class,
// every pupil with other numbers and the answers as one list at the end.

import type { Exercise } from '#learn/exercise/exercise.ts';
import { palette } from '#drawing/scene/palette.ts';
import { exerciseTitle, rightAnswerWords } from '#words/learn/exercise-words.ts';
import { bookWords } from '#words/text/answer-words.ts';
import { TOOL_VERSION } from '#words/text/tool-version.ts';
import { exerciseContent, type ExercisePaper } from './exercise-parts.ts';
import { tag, type Markup } from '#papers/html/page/markup.ts';
import { sheet, type SheetHead } from '#papers/html/page/document.ts';

export function exerciseSheet(paper: ExercisePaper): string {
  const { id, seed } = paper.exercise;
  const head = {
    title: `${nameOf(paper)}, ${seed}`,
    name: nameOf(paper),
    about: aboutOf(paper),
    theme: palette.print,
    foot: footOf(id, String(seed), `${pointsOf(paper.exercise)} points`),
  };
  return sheet(head, exerciseContent(paper));
}

/** The exercise and its answers, each on a page of its own. */
export function exerciseAndAnswers(paper: Omit<ExercisePaper, 'answers'>): string {
  const { id, seed } = paper.exercise;
  return sheet(
    manyHead(
      exerciseTitle(id),
      `sheet ${seed}, and its answers on the next page`,
      footOf(id, String(seed), ''),
    ),
    tag(
      'div',
      { class: 'beside' },
      onPage({ ...paper, answers: false }),
      onPage({ ...paper, answers: true }),
    ),
  );
}

/** A sheet for each pupil, every one with other numbers; all answers as one list at the end. */
export function exerciseClass(papers: readonly Omit<ExercisePaper, 'answers'>[]): string {
  const [first] = papers;
  const id = first?.exercise.id ?? '';
  return sheet(
    manyHead(exerciseTitle(id), `${papers.length} sheets, answers at the end`, footOf(id, '', '')),
    papers.map((paper) => onPage({ ...paper, answers: false })),
    tag(
      'section',
      { class: 'exercise' },
      tag('h2', {}, `Answers: ${exerciseTitle(id)}`),
      answerTable(papers),
    ),
  );
}

const manyHead = (name: string, about: string, foot: SheetHead['foot']): SheetHead => ({
  title: name,
  name,
  about,
  theme: palette.print,
  foot,
  wide: true,
});

const footOf = (id: string, seed: string, right: string): SheetHead['foot'] => ({
  left: `Layerwright ${TOOL_VERSION}: ${`${id} ${seed}`.trim()}, an invented build`,
  right,
});

const pointsOf = ({ questions }: Exercise): number => questions.reduce((sum, { points }) => sum + points, 0);

const nameOf = ({ exercise, answers }: ExercisePaper): string =>
  answers ? `${exerciseTitle(exercise.id)}: answers` : exerciseTitle(exercise.id);

const aboutOf = ({ exercise, judgement, answers }: ExercisePaper): string =>
  answers
    ? `for the teacher · judged by the solver, ${bookWords(judgement.verdict.rules)} · sheet ${exercise.seed}`
    : `name ______________________ · sheet ${exercise.seed}`;

const onPage = (paper: ExercisePaper): Markup =>
  tag(
    'section',
    { class: 'exercise' },
    tag('header', {}, tag('h1', {}, nameOf(paper)), tag('span', { class: 'to' }, aboutOf(paper))),
    exerciseContent(paper),
  );

/** One row a sheet, one column a question. */
function answerTable(papers: readonly Omit<ExercisePaper, 'answers'>[]): Markup {
  const questions = papers[0]?.exercise.questions ?? [];
  const cells = (exercise: Exercise) =>
    exercise.questions.map(({ answer }) => tag('td', { class: 'tight' }, rightAnswerWords(answer)));
  return tag(
    'table',
    {},
    tag(
      'thead',
      {},
      tag(
        'tr',
        {},
        tag('th', {}, 'sheet'),
        questions.map((_, i) => tag('th', {}, LETTERS[i] ?? '')),
      ),
    ),
    tag(
      'tbody',
      {},
      papers.map(({ exercise }) => tag('tr', {}, tag('td', {}, String(exercise.seed)), cells(exercise))),
    ),
  );
}

const LETTERS = 'abcdefgh';
