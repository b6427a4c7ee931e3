// What is known of the pairs before the whole judgement is there.

import { answerWords } from '#words/text/answer-words.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { pairNames } from './pair-words.ts';

interface EarlyAnswer {
  readonly between: readonly [string, string];
  readonly verdict: Answer;
}

/** Empty where nothing is known yet. */
export function earlyWords(answers: readonly EarlyAnswer[], looks: Parameters<typeof pairNames>[1]): string {
  if (answers.length === 0) return '';
  const said = answers.map(({ between, verdict }) => `${pairNames(between, looks)} ${answerWords(verdict)}`);
  return `So much is known: ${said.join('; ')}. Where and why follows.`;
}
