// Exercises on paper: the pupil's sheet tells no answer, the teacher's all of them, and a class gets one list at the end.

import { describe, expect, it } from 'vitest';

import { knownIds } from '#judge/conductors/known-ids.ts';
import { study } from '#judge/study.ts';
import { makeExercise } from '#learn/exercise/make-exercise.ts';
import { templateOf } from '#learn/exercise/templates.ts';
import { readDesign } from '#model/read/read-design.ts';
import { exerciseAndAnswers, exerciseClass, exerciseSheet } from '#papers/html/exercise-sheet.ts';
import { rightAnswerWords } from '#words/learn/exercise-words.ts';

function paperOf(seed: number) {
  const exercise = makeExercise(templateOf('margins')!, seed);
  if (exercise === null) throw new Error(`no build for ${seed}`);
  const read = readDesign(exercise.doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
  return { exercise, design: read.design, judgement: study(read.design) };
}

const lengthsOf = (paper: ReturnType<typeof paperOf>): readonly string[] =>
  paper.exercise.questions.flatMap(({ answer, kind }) =>
    answer.kind === 'length' && kind !== 'least-margin' ? [rightAnswerWords(answer)] : [],
  );

describe('exercises on paper', () => {
  const papers = [paperOf(3), paperOf(4)] as const;

  it('should tell the pupil no length that is asked for, and the teacher each', () => {
    const [paper] = papers;
    const [pupil, teacher] = [false, true].map((answers) => exerciseSheet({ ...paper, answers }));
    for (const length of lengthsOf(paper)) {
      expect(pupil).not.toContain(length);
      expect(teacher).toContain(length);
    }
  });

  it('should lay both sheets on pages of their own, no mark of one drawing meant by another', () => {
    const html = exerciseAndAnswers(papers[0]);
    expect(html.match(/class="exercise"/g)).toHaveLength(2);
    const ids = [...html.matchAll(/\bid="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('should list the answers of a class once, at the end, a row for each sheet', () => {
    const html = exerciseClass(papers);
    const list = html.slice(html.indexOf('Answers:'));
    expect(html.match(/class="exercise"/g)).toHaveLength(3);
    for (const paper of papers)
      for (const length of lengthsOf(paper)) {
        expect(list).toContain(length);
        expect(html.slice(0, html.indexOf('Answers:'))).not.toContain(length);
      }
  });
});
