// Marks one answer file (format layerwright-answers/1): the exercise is made anew from its seed, so that no right answer
// travels with the paper. An answer that cannot be read earns nothing and is told as such.

import * as z from 'zod';
import { schemaFaults } from '#model/faults/schema-faults.ts';
import { record } from '#model/schema/schema-leaf.ts';
import type { Exercise, Question, Slip } from './exercise.ts';
import { makeExercise } from './make-exercise.ts';
import { spokenLength } from './spoken-length.ts';
import { templateOf, templates } from './templates.ts';

const expected = <T>(error: T) => ({ error });
const SEED = expected('a whole number from 0 to 4294967295');
const PUPIL = expected('a name or a seat of up to 80 signs');
const ANSWER = expected('an answer as a text of up to 80 signs or a number');
const ANSWERS = expected('an object with an answer by the id of each question');

export const answersSchema = record({
  format: z.literal('layerwright-answers/1', expected('"layerwright-answers/1"')),
  exercise: z.string(expected('the id of an exercise')).max(40, expected('the id of an exercise')),
  seed: z.int(SEED).min(0, SEED).max(0xffffffff, SEED),
  /** A seat or a name as the class uses them. */
  pupil: z.string(PUPIL).trim().min(1, PUPIL).max(80, PUPIL),
  /** By the question's id, as written: `5.0 mm`, `basic`, `falls-short`. */
  answers: z.record(
    z.string().max(8, expected('the id of a question')),
    z.union([z.string().max(80), z.number()], ANSWER),
    ANSWERS,
  ),
});

export type Answers = z.output<typeof answersSchema>;

export interface MarkedQuestion {
  readonly question: Question;
  readonly given: string | null;
  readonly isRight: boolean;
  /** The slip that the wrong number tells of. */
  readonly slip: Slip['slip'] | null;
}

export interface Marked {
  readonly pupil: string;
  readonly exercise: Exercise;
  readonly questions: readonly MarkedQuestion[];
  readonly points: number;
  readonly of: number;
}

export type Marking =
  | { readonly kind: 'marked'; readonly marked: Marked }
  | { readonly kind: 'bad'; readonly field: string; readonly found: string; readonly expected: string };

/** Exercises that were made already, by their sheet: a class that shares one has it made once. */
export type MadeExercises = Map<string, Exercise | null>;

export function markAnswers(json: unknown, made: MadeExercises = new Map()): Marking {
  const parsed = answersSchema.safeParse(json);
  if (!parsed.success) {
    const [fault] = schemaFaults(parsed.error.issues, json);
    return bad(fault!.field, fault!.found, fault!.expected);
  }
  const { exercise: id, seed, pupil, answers } = parsed.data;
  const template = templateOf(id);
  if (template === null) return bad('exercise', id, `one of ${templates.map((each) => each.id).join(', ')}`);
  const sheet = `${id} ${seed}`;
  const exercise = made.has(sheet) ? (made.get(sheet) ?? null) : makeExercise(template, seed);
  made.set(sheet, exercise);
  if (exercise === null) return bad('seed', String(seed), 'a seed that has a build');
  const strange = Object.keys(answers).find((key) => exercise.questions.every((each) => each.id !== key));
  if (strange !== undefined)
    return bad(
      `answers.${strange}`,
      strange,
      `one of ${exercise.questions.map((each) => each.id).join(', ')}`,
    );
  return { kind: 'marked', marked: markOf(pupil, exercise, answers) };
}

export function markOf(pupil: string, exercise: Exercise, answers: Answers['answers']): Marked {
  const questions = exercise.questions.map((question) =>
    markQuestion(question, answers[question.id] ?? null),
  );
  const points = (all: readonly MarkedQuestion[]) => all.reduce((sum, each) => sum + each.question.points, 0);
  return {
    pupil,
    exercise,
    questions,
    points: points(questions.filter(({ isRight }) => isRight)),
    of: points(questions),
  };
}

function markQuestion(question: Question, given: string | number | null): MarkedQuestion {
  const { answer } = question;
  const text = given === null ? null : String(given).trim();
  const wrong = { question, given: text, isRight: false, slip: null };
  if (text === null || text === '') return { ...wrong, given: null };
  if (answer.kind !== 'length') {
    const word = text.toLowerCase().replaceAll(/[\s_]+/g, '-');
    return { ...wrong, isRight: word === answer.value };
  }
  const millimetres = spokenLength(text);
  if (millimetres === null) return wrong;
  const near = (value: number, within: number): boolean => Math.abs(millimetres - value) <= within + 1e-9;
  const isRight = near(answer.value, answer.within);
  const slip = isRight
    ? null
    : (question.slips.find(({ value }) => near(value, answer.within))?.slip ?? null);
  return { ...wrong, isRight, slip };
}

const bad = (field: string, found: string, expected: string): Marking => ({
  kind: 'bad',
  field,
  found,
  expected,
});
