// Exercises drawn for seeds: the same numbers for the same seed, one right answer each, marked as a teacher would.

import { describe, expect, it } from 'vitest';

import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { makeExercise } from '#learn/exercise/make-exercise.ts';
import { markAnswers, markOf } from '#learn/exercise/mark.ts';
import type { Exercise, Question } from '#learn/exercise/exercise.ts';
import { templateOf, templates } from '#learn/exercise/templates.ts';
import type { Grade } from '#units/terms.ts';

const made = (id: string, seed: number): Exercise => {
  const exercise = makeExercise(templateOf(id)!, seed);
  if (exercise === null) throw new Error(`no build for ${id} ${seed}`);
  return exercise;
};

const rightAnswers = (exercise: Exercise): Record<string, string> =>
  Object.fromEntries(
    exercise.questions.map(({ id, answer }) => [
      id,
      answer.kind === 'length' ? `${answer.value} mm` : answer.value,
    ]),
  );

/** A sample, for time; EXERCISE_FROM and EXERCISE_SEEDS ask for others. */
const FROM = Number(process.env.EXERCISE_FROM ?? 1);
const SEEDS = Number(process.env.EXERCISE_SEEDS ?? 3);

const grades: readonly Grade[] = ['none', 'functional', 'basic', 'supplementary', 'double', 'reinforced'];

/** Everything that a pupil could write: every grade, every verdict, every hundredth of a millimetre up to 12. */
const ANYTHING: readonly string[] = [
  ...grades,
  'meets',
  'falls-short',
  'not-shown',
  ...Array.from({ length: 1201 }, (_, i) => `${(i / 100).toFixed(2)} mm`),
];

/** What of all that earns the points of a question. */
const rightOf = (exercise: Exercise, { id }: Question): readonly string[] =>
  ANYTHING.filter((given) => markOf('seat 1', exercise, { [id]: given }).points > 0);

function meetsWith({ doc }: Exercise, margin: number): boolean {
  const wider = (['left', 'right'] as const).reduce(
    (edited, side) => editDesign(edited, `layers[2].margins.${side}.width`, `${margin.toFixed(2)} mm`),
    doc,
  );
  const read = readDesign(wider, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
  return judge(read.design).verdict.pairs.every(({ verdict }) => verdict === 'meets');
}

/** No narrower margin meets and every wider one does, so that "the least" means one width: step beside it, then coarser ones. */
function onlyFrom(exercise: Exercise, least: number): boolean {
  const below = [least - 0.05, ...everyHalf.filter((width) => width < least - 0.05)];
  const above = [least, least + 0.05, ...everyHalf.filter((width) => width > least + 0.05)];
  return (
    below.every((width) => !meetsWith(exercise, width)) && above.every((width) => meetsWith(exercise, width))
  );
}

const everyHalf = Array.from({ length: 17 }, (_, i) => i / 2);

describe('exercise', () => {
  it('should be the same for the same seed and another for another', () => {
    expect(made('margins', 7)).toEqual(made('margins', 7));
    expect(made('margins', 7).doc).not.toEqual(made('margins', 8).doc);
  });

  it.each(templates)(
    'should have one right answer to every question for each of many seeds: $id',
    ({ id }) => {
      for (let seed = 1; seed <= 12; seed += 1) {
        const exercise = made(id, seed);
        expect(exercise.questions.map(({ kind }) => kind)).toEqual(templateOf(id)!.questions);
        for (const { answer } of exercise.questions)
          if (answer.kind === 'length') expect(answer.value).toBeGreaterThan(0);
      }
    },
  );

  it.each(templates)(
    'should have answers of which no other is right, as the judge sees it: $id',
    ({ id }) => {
      for (let seed = FROM; seed < FROM + SEEDS; seed += 1) {
        const exercise = made(id, seed);
        for (const question of exercise.questions) {
          const { answer, kind, slips } = question;
          const right = rightOf(exercise, question);
          if (answer.kind !== 'length') {
            expect(right, `${id} ${seed} ${kind}`).toEqual([answer.value]);
            continue;
          }
          const widths = right.map((given) => Number.parseFloat(given));
          expect(widths.every((width) => Math.abs(width - answer.value) <= answer.within + 1e-9)).toBe(true);
          expect(Math.max(...widths) - Math.min(...widths)).toBeLessThanOrEqual(2 * answer.within + 1e-9);
          for (const { value } of slips)
            expect(Math.abs(value - answer.value)).toBeGreaterThan(answer.within);
        }
        for (const { answer, kind } of exercise.questions)
          if (kind === 'least-margin' && answer.kind === 'length')
            expect(onlyFrom(exercise, answer.value), `${id} ${seed}`).toBe(true);
        const marked = markOf('seat 1', exercise, rightAnswers(exercise));
        expect(marked.points).toBe(marked.of);
      }
    },
    600_000,
  );

  it('should ask for what a margin must make up: both margins, the tape, and no more', () => {
    const { questions, verdict } = made('margins', 3);
    const of = (kind: string) => {
      const answer = questions.find((question) => question.kind === kind)!.answer;
      return answer.kind === 'length' ? answer.value : Number.NaN;
    };
    expect(of('length') + of('missing')).toBeCloseTo(of('asked'), 6);
    expect(verdict.pairs[0]?.verdict).toBe('falls-short');
  });
});

describe('marking', () => {
  it('should give all points to right answers and none to an empty paper', () => {
    const exercise = made('margins', 5);
    const full = markOf('seat 1', exercise, rightAnswers(exercise));
    expect(full.points).toBe(full.of);
    expect(markOf('seat 2', exercise, {}).points).toBe(0);
  });

  it('should name the slip that a wrong number tells of', () => {
    const exercise = made('margins', 5);
    const way = exercise.questions.find(({ kind }) => kind === 'length')!;
    const slip = way.slips.find((each) => each.slip === 'one-margin-only')!;
    const [marked] = markOf('seat 3', exercise, { [way.id]: `${slip.value} mm` }).questions.filter(
      ({ question }) => question === way,
    );
    expect(marked).toMatchObject({ isRight: false, slip: 'one-margin-only' });
  });

  it('should take a bare number for millimetres, with a comma as well', () => {
    const exercise = made('margins', 5);
    const way = exercise.questions.find(({ kind }) => kind === 'length')!;
    const value = way.answer.kind === 'length' ? way.answer.value : 0;
    for (const given of [value, String(value), String(value).replace('.', ',')])
      expect(markOf('seat 6', exercise, { [way.id]: given }).points).toBe(way.points);
  });

  it('should take a length in another unit', () => {
    const exercise = made('margins', 5);
    const way = exercise.questions.find(({ kind }) => kind === 'length')!;
    const um = way.answer.kind === 'length' ? Math.round(way.answer.value * 1000) : 0;
    const [marked] = markOf('seat 4', exercise, { [way.id]: `${um} um` }).questions.filter(
      ({ question }) => question === way,
    );
    expect(marked?.isRight).toBe(true);
  });

  it('should refuse an answer file by the field that is wrong', () => {
    const file = {
      format: 'layerwright-answers/1',
      exercise: 'margins',
      seed: 5,
      pupil: 'seat 5',
      answers: {},
    };
    expect(markAnswers(file).kind).toBe('marked');
    expect(markAnswers({ ...file, exercise: 'nothing' })).toMatchObject({ kind: 'bad', field: 'exercise' });
    expect(markAnswers({ ...file, answers: { q99: '1 mm' } })).toMatchObject({
      kind: 'bad',
      field: 'answers.q99',
    });
  });
});
