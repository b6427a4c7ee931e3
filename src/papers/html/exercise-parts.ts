// What stands on an exercise sheet: what is given, the section, the questions with room to answer or with their answers.
// The pupil's sheet shows no path and no figure that is asked for.

import type { Design } from '#model/design.ts';
import type { Study } from '#judge/study.ts';
import type { Exercise, Question } from '#learn/exercise/exercise.ts';
import { palette } from '#drawing/scene/palette.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { closeUp } from '#drawing/svg/svg-close-up.ts';
import { svgOf } from '#drawing/svg/svg.ts';
import {
  answerForm,
  givenWords,
  questionWords,
  reasonWords,
  rightAnswerWords,
  slipWords,
} from '#words/learn/exercise-words.ts';
import { emptyLadder } from './empty-ladder.ts';
import { raw, tag, type Content, type Markup } from '#papers/html/page/markup.ts';
import { PRINTED_WIDTH } from '#papers/html/page/printed-width.ts';

/** The section on it: smaller than the page, so that all questions find room under it on A4 and on Letter. */
const GIVEN_WIDTH = 560;

export interface ExercisePaper {
  readonly exercise: Exercise;
  /** The exercise's build, read and judged. */
  readonly design: Design;
  readonly judgement: Study;
  /** The teacher's sheet instead of the pupil's. */
  readonly answers: boolean;
}

export function exerciseContent(paper: ExercisePaper): readonly Content[] {
  const { exercise, answers } = paper;
  return [
    tag('p', {}, givenWords(exercise)),
    tag('figure', { class: 'given' }, drawing(paper)),
    tag(
      'ol',
      { type: 'a', class: 'questions' },
      exercise.questions.map((question) => (answers ? answered(question, exercise) : asked(question))),
    ),
    answers ? corner(paper) : null,
  ];
}

function drawing({ exercise, design, judgement, answers }: ExercisePaper): Markup | null {
  const scene = sceneOf(design, judgement, 'plain', { elsewhere: 0 });
  if (scene === null) return null;
  const shown = answers ? scene : { ...scene, path: null, otherPaths: [], flags: [] };
  return raw(
    svgOf(shown, {
      theme: 'print',
      caption: false,
      printed: true,
      width: GIVEN_WIDTH,
      prefix: `${answers ? 'answers' : 'asked'}-${exercise.seed}-`,
    }),
  );
}

const points = ({ points: count }: Question): Markup => tag('span', { class: 'points' }, String(count));

const asked = (question: Question): Markup =>
  tag(
    'li',
    { class: 'whole asked' },
    tag('p', {}, points(question), questionWords(question.kind)),
    tag(
      'p',
      { class: 'measure' },
      question.answer.kind === 'grade' ? raw(emptyLadder(palette.print)) : tag('span', { class: 'blank' }),
      answerForm(question),
    ),
  );

/** The corner with the weakest way, seen close. */
function corner({ exercise, design, judgement }: ExercisePaper): Markup | null {
  const scene = sceneOf(design, judgement, 'plain', { elsewhere: 0 });
  const end = scene?.path?.ends[0];
  if (!scene || end === undefined) return null;
  const drawn = closeUp(scene, end, {
    theme: 'print',
    width: PRINTED_WIDTH,
    height: 130,
    prefix: `close-${exercise.seed}-`,
    label: 'the weakest way, seen close',
  });
  return tag(
    'figure',
    {},
    raw(drawn),
    tag('figcaption', {}, 'The weakest way, seen close; one filled or hollow piece is 1 mm.'),
  );
}

function answered(question: Question, exercise: Exercise): Markup {
  const reason = reasonWords(question.kind, exercise);
  const slips = question.slips.map(({ value, slip }) => `${value.toFixed(2)} mm: ${slipWords(slip)}`);
  return tag(
    'li',
    { class: 'whole' },
    tag('p', {}, points(question), questionWords(question.kind)),
    tag('p', {}, tag('b', {}, rightAnswerWords(question.answer)), reason === '' ? null : `, ${reason}`),
    slips.length === 0
      ? null
      : tag('p', { class: 'small' }, `What a wrong number tells of: ${slips.join('; ')}.`),
  );
}
