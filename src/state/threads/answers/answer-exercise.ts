// Makes one exercise for a seed, and marks one answer file; both ask the judge many times, so both are done beside the page.

import { knownIds } from '#judge/conductors/known-ids.ts';
import { judgePlain } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { makeExercise } from '#learn/exercise/make-exercise.ts';
import { markAnswers } from '#learn/exercise/mark.ts';
import { templateOf } from '#learn/exercise/templates.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { Answerer } from '#state/threads/asks/asks.ts';

// eslint-disable-next-line require-yield -- one exercise is one piece of work
export const answerExercise: Answerer<'exercise'> = function* ({ template: id, seed }) {
  const template = templateOf(id);
  const exercise = template === null ? null : makeExercise(template, seed);
  if (exercise === null) return null;
  const read = readDesign(exercise.doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says ?? 'no design');
  return { exercise, judged: judgePlain(read.design, new PathCache()) };
};

// eslint-disable-next-line require-yield -- one answer file is one piece of work
export const answerMark: Answerer<'mark'> = function* (json) {
  return markAnswers(json);
};
