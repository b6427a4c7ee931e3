// An exercise on paper, and its answer sheet in the same layout so that one can be laid beside the other.
// The exercise shows no path and no figure that is asked for.

import type { Design } from '#model/design.ts';
import type { Study } from '#judge/study.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import type { Exercise, Question } from '#learn/exercise/exercise.ts';
import { palette } from '#drawing/scene/palette.ts';
import { sceneOf } from '#drawing/scene/scene.ts';
import { svgOf } from '#drawing/svg/svg.ts';
import {
  answerForm,
  exerciseTitle,
  questionWords,
  reasonWords,
  rightAnswerWords,
  slipWords,
} from '#words/learn/exercise-words.ts';
import { bookWords } from '#words/text/answer-words.ts';
import { TOOL_VERSION } from '#words/text/tool-version.ts';
import { raw, tag, type Markup } from '#papers/html/page/markup.ts';
import { sheet } from '#papers/html/page/document.ts';

export interface ExercisePaper {
  readonly exercise: Exercise;
  /** The exercise's build, read and judged. */
  readonly design: Design;
  readonly judgement: Study;
  /** The teacher's sheet instead of the pupil's. */
  readonly answers: boolean;
}

export function exerciseSheet({ exercise, design, judgement, answers }: ExercisePaper): string {
  const theme = palette.print;
  const { id, seed, questions } = exercise;
  const points = questions.reduce((sum, question) => sum + question.points, 0);
  const name = answers ? `${exerciseTitle(id)}: answers` : exerciseTitle(id);
  const head = {
    title: `${name}, ${seed}`,
    name,
    about: answers
      ? `for the teacher · judged by the solver, ${bookWords(judgement.verdict.rules)} · sheet ${seed}`
      : `name ______________________ · sheet ${seed}`,
    theme,
    foot: {
      left: `Layerwright ${TOOL_VERSION}: ${id} ${seed}, an invented build`,
      right: `${points} points`,
    },
  };
  return sheet(
    head,
    tag('p', {}, givenWords(exercise)),
    tag('figure', {}, drawing({ exercise, design, judgement, answers })),
    tag(
      'ol',
      { type: 'a' },
      questions.map((question) => (answers ? answered(question, exercise) : asked(question))),
    ),
  );
}

/** What a pupil is told, with every figure that the questions need. */
function givenWords({ verdict, doc }: Exercise): string {
  const stress = verdict.pairs[0]?.stress;
  const voltage = stress === undefined ? '' : `Working voltage ${stress.rms} V rms, ${stress.peak} V peak. `;
  const [primary, output] = [0, 2].map((layer) =>
    String(fieldAt(doc, `layers[${layer}].margins.left.width`)),
  );
  const plies = String(fieldAt(doc, 'layers[1].plies'));
  return `Primary on the mains, Output touched by the hand. ${voltage}Margins of the primary ${primary}, of the output ${output}, alike on both sides; ${plies} plies between them. Pollution degree 2, tracking group of the former IIIb. The section is to scale, lengths in millimetres; each ply of tape is 0.06 mm, blocks are wound margin tape, wires are enamelled, nothing is glued.`;
}

function drawing({ design, judgement, answers }: ExercisePaper): Markup | null {
  const scene = sceneOf(design, judgement, 'plain', { elsewhere: 0 });
  if (scene === null) return null;
  const shown = answers ? scene : { ...scene, path: null, otherPaths: [], flags: [] };
  return raw(svgOf(shown, { theme: 'print', caption: false, width: 900 }));
}

const asked = (question: Question): Markup =>
  tag(
    'li',
    { class: 'whole' },
    tag('p', {}, questionWords(question.kind), ` [${question.points}]`),
    tag('p', { class: 'measure' }, tag('span', { class: 'blank' }), answerForm(question)),
  );

function answered(question: Question, exercise: Exercise): Markup {
  const reason = reasonWords(question.kind, exercise);
  const slips = question.slips.map(({ value, slip }) => `${value.toFixed(2)} mm: ${slipWords(slip)}`);
  return tag(
    'li',
    { class: 'whole' },
    tag('p', {}, questionWords(question.kind), ` [${question.points}]`),
    tag('p', {}, tag('b', {}, rightAnswerWords(question.answer)), reason === '' ? null : `, ${reason}`),
    slips.length === 0
      ? null
      : tag('p', { class: 'small' }, `What a wrong number tells of: ${slips.join('; ')}.`),
  );
}
