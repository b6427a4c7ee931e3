// An exercise as data: a build drawn for a seed, and questions whose right answers the judge gave.

import type { DesignFile } from '#model/schema/schema.ts';
import type { Grade } from '#units/terms.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { Answer } from '#judge/verdict/answer.ts';

/** `layers`, `edit`: what would be otherwise for the question, told by its kind. */
export type QuestionKind =
  'asked' | 'length' | 'grade' | 'verdict' | 'missing' | 'least-margin' | 'one-ply-less' | 'more-enamel';

export const questionKinds: readonly QuestionKind[] = [
  'asked',
  'length',
  'grade',
  'verdict',
  'missing',
  'least-margin',
  'one-ply-less',
  'more-enamel',
];

/** Lengths in mm. */
export type RightAnswer =
  | { readonly kind: 'length'; readonly value: number; readonly within: number }
  | { readonly kind: 'grade'; readonly value: Grade }
  | { readonly kind: 'verdict'; readonly value: Answer };

/** A wrong answer that a common slip leads to, so that a teacher reads the slip from the number. */
export interface Slip {
  readonly value: number;
  readonly slip: 'one-margin-only' | 'tape-only' | 'basic-for-reinforced' | 'both-margins-for-one';
}

export interface Question {
  readonly id: string;
  readonly kind: QuestionKind;
  readonly points: number;
  readonly answer: RightAnswer;
  readonly slips: readonly Slip[];
}

export interface Exercise {
  readonly id: string;
  readonly seed: number;
  readonly pair: readonly [string, string];
  readonly doc: DesignFile;
  readonly verdict: Verdict;
  readonly questions: readonly Question[];
}
