// What goes between the page and a thread beside it. Every question has a number; whatever is said of it bears the same.

import type { AnswerOf, AskName, QuestionOf, ToldOf } from './asks.ts';

export type ToThread =
  { [A in AskName]: AskMessage<A> }[AskName] | { readonly kind: 'stop'; readonly number: number };

export interface AskMessage<A extends AskName> {
  readonly kind: 'ask';
  readonly number: number;
  readonly ask: A;
  readonly question: QuestionOf<A>;
}

/** `took`: milliseconds of work, breaths left out. */
export type FromThread =
  /** The thread's script is there: what ends it from now on is a crash, not a script that could not be had. */
  | { readonly kind: 'ready' }
  /** A stopped question is let go. */
  | { readonly kind: 'stopped'; readonly number: number }
  | { readonly kind: 'told'; readonly number: number; readonly told: ToldOf<AskName> }
  | {
      readonly kind: 'answer';
      readonly number: number;
      readonly answer: AnswerOf<AskName>;
      readonly took: number;
    }
  | { readonly kind: 'broke'; readonly number: number; readonly says: string; readonly took: number };
