// Draws an exercise for a seed and asks the judge for every right answer. Numbers are drawn again until each question has
// exactly one; after too many tries there is none, and the seed is said to be without a build.

import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Judges } from './asked.ts';
import type { Exercise } from './exercise.ts';
import { questionOf } from './questions.ts';
import { randomOf } from '#units/random.ts';
import type { Template } from './templates.ts';

const MOST_TRIES = 200;

/** Null where no build of this seed has one right answer to every question. */
export function makeExercise(template: Template, seed: number, judgeOf: Judges = judged): Exercise | null {
  const random = randomOf(seed);
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const doc = template.draw(random);
    const verdict = judgeOf(doc);
    const pair = verdict.pairs.find(({ needed }) => needed !== null);
    if (pair === undefined) continue;
    const questions = template.questions.map((kind, i) =>
      questionOf(kind, i, { doc, verdict, pair, judgeOf }),
    );
    if (questions.every((question) => question !== null))
      return { id: template.id, seed, pair: pair.between, doc, verdict, questions };
  }
  return null;
}

/** Throws where a template draws what is no design: a bug of ours. */
function judged(doc: DesignFile): Verdict {
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says ?? 'no design');
  return judge(read.design).verdict;
}
