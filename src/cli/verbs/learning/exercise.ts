// `exercise ID [--seed S] [--answers] [--out X.html]`: a printable exercise with numbers drawn for the seed, or its answer
// sheet; `exercise` alone names those that there are.

import { knownIds } from '#judge/conductors/known-ids.ts';
import { study } from '#judge/study.ts';
import { makeExercise } from '#learn/exercise/make-exercise.ts';
import { templateOf, templates } from '#learn/exercise/templates.ts';
import { readDesign } from '#model/read/read-design.ts';
import { exerciseSheet } from '#papers/html/exercise-sheet.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { refused, type Outcome } from '#cli/line/outcome.ts';
import { writeWhole } from '#cli/files/write-whole.ts';

const NAMES = templates.map(({ id }) => id).join(', ');
const LARGEST_SEED = 0xffffffff;

export function exerciseOf(words: readonly string[]): Outcome {
  const given = readArguments(words, { seed: 'value', answers: 'switch', out: 'value' });
  if (given.kind === 'wrong') return refused(`exercise: ${given.says}.`);
  const [id, ...more] = given.files;
  if (id === undefined || more.length > 0) return refused(`exercise: name one of ${NAMES}.`);
  const template = templateOf(id);
  if (template === null) return refused(`exercise: there is no ${printable(id)}; there are ${NAMES}.`);
  const seed = Number(given.options.get('seed') ?? 1);
  if (!Number.isInteger(seed) || seed < 0 || seed > LARGEST_SEED)
    return refused(`exercise: --seed is a whole number from 0 to ${LARGEST_SEED}.`);
  const exercise = makeExercise(template, seed);
  if (exercise === null)
    return refused(`exercise: ${seed} has no build with one right answer; take the next.`);
  const read = readDesign(exercise.doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
  const paper = {
    exercise,
    design: read.design,
    judgement: study(read.design),
    answers: given.options.has('answers'),
  };
  return writeWhole(given.options.get('out') ?? '-', exerciseSheet(paper), 'exercise');
}
