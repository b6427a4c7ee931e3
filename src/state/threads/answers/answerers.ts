// Who answers what, each loaded with its first question, so that a thread that only judges starts quickly.

import type { AskName, Answerer } from '#state/threads/asks/asks.ts';

export const answerers: { readonly [A in AskName]: () => Promise<Answerer<A>> } = {
  judge: async () => (await import('./answer-judge.ts')).answerJudge(),
  decide: async () => (await import('./answer-decide.ts')).answerDecide,
  field: async () => (await import('./answer-field.ts')).answerField(),
  exercise: async () => (await import('./answer-exercise.ts')).answerExercise,
  mark: async () => (await import('./answer-exercise.ts')).answerMark,
  mend: async () => (await import('./answer-mend.ts')).answerMend,
  draws: async () => (await import('./answer-spread.ts')).answerDraws,
  spread: async () => (await import('./answer-spread.ts')).answerSpread,
  books: async () => (await import('./answer-books.ts')).answerBooks,
};
