// What a lesson file holds (format layerwright-lesson/1): words, a build to begin with, what must be true of its judgement
// at the end, hints, a stored way there and what undoes it. Data only: writing a lesson needs no code.

import * as z from 'zod';
import type { DesignFile } from '#model/schema/schema.ts';

const words = z.string().trim().min(1).max(2000);
const between = z.tuple([words, words]);
const grade = z.enum(['none', 'functional', 'basic', 'supplementary', 'double', 'reinforced']);
const answer = z.enum(['meets', 'falls-short', 'not-shown']);

/** One thing that must be true of the judgement, or of the file, for the task to be done. */
export const goalSchema = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('verdict'), verdict: answer }),
  z.strictObject({ is: z.literal('pair-verdict'), between, verdict: answer }),
  z.strictObject({ is: z.literal('needed'), between, grade }),
  z.strictObject({ is: z.literal('achieved'), between, atLeast: grade }),
  z.strictObject({ is: z.literal('no-spot'), kind: words }),
  z.strictObject({
    is: z.literal('field'),
    path: words,
    atMost: words.optional(),
    atLeast: words.optional(),
    equals: z.union([words, z.number(), z.boolean()]).optional(),
  }),
  z.strictObject({ is: z.literal('unchanged'), path: words }),
  /** No more than so many fields differ from the build that the lesson began with. */
  z.strictObject({ is: z.literal('changed'), atMost: z.int().min(1).max(100) }),
]);

export const lessonEditSchema = z.union([
  z.strictObject({ set: words, to: z.unknown() }),
  z.strictObject({ insert: words, value: z.unknown() }),
  z.strictObject({ remove: words }),
]);

const clause = z.strictObject({
  standard: words,
  edition: words,
  clause: words,
  table: words.optional(),
});

export const lessonSchema = z.strictObject({
  format: z.literal('layerwright-lesson/1'),
  id: z.string().regex(/^[a-z0-9-]{1,40}$/),
  /** Name on the row of lessons. */
  short: words.max(24),
  title: words.max(80),
  /** The question, answered by a guess before anything is shown. */
  asks: words,
  /** The two circuits that it is about. */
  pair: between,
  guess: z.array(z.enum(['way', 'length', 'grade'])).min(1),
  /** A whole design file; read like any other before it is shown. */
  build: z.custom<DesignFile>((value) => typeof value === 'object' && value !== null),
  /** Says why the answer is what it is; stands beside the solver's own reasons. */
  explains: words,
  task: z.strictObject({
    asks: words,
    fields: z.array(words).min(1),
    /** Changes that no field makes, each behind a button of its own; not all of them need lead to the goal. */
    offers: z
      .array(z.strictObject({ says: words.max(80), edits: z.array(lessonEditSchema).min(1) }))
      .max(6)
      .optional(),
    goal: z.array(goalSchema).min(1),
  }),
  /** Two at most, each pointing at a field; after them the stored solution is shown. */
  hints: z.array(z.strictObject({ says: words, at: words.optional() })).max(2),
  solution: z.array(lessonEditSchema).min(1),
  /** Undoes, on the solved build, what the lesson is about. */
  point: z.array(lessonEditSchema).min(1),
  learnt: z
    .strictObject({ says: words, clause: clause.optional(), practice: words.optional() })
    .refine((it) => (it.clause === undefined) !== (it.practice === undefined), {
      error: 'either a clause or a common practice',
    }),
});

export type Lesson = z.output<typeof lessonSchema>;
export type Goal = z.output<typeof goalSchema>;
export type LessonEdit = z.output<typeof lessonEditSchema>;
export type LessonOffer = NonNullable<Lesson['task']['offers']>[number];
