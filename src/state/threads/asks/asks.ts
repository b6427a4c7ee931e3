// What may be asked of the threads beside the page: to each ask its question, what is told on the way, and its answer.
// All of it is plain data, which goes from one thread to another. A new ask is one line here and one in answerers.ts.

import type { HeldMending } from '#mend/hold/held-mends.ts';
import type { Placement } from '#spread/placement.ts';
import type { SpreadPart } from '#spread/spread-part.ts';
import type { Spread } from '#spread/spread.ts';
import type { Deciding } from '#judge/decide/deciding-figure.ts';
import type { FieldPicture } from '#judge/field/field-picture.ts';
import type { Design } from '#model/design.ts';
import type { CurvePoint } from '#judge/study/asked-curve.ts';
import type { BookColumn } from '#judge/study/side-by-side.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { PairAnswer } from '#judge/judging/pair-answers.ts';
import type { PlainJudgement } from '#judge/judging/judge.ts';
import type { Exercise } from '#learn/exercise/exercise.ts';
import type { Marking } from '#learn/exercise/mark.ts';
import type { Assumption } from '#judge/verdict/verdict.ts';

export interface Asks {
  /** Told are answers that are known before the whole, or null as a sign that it goes on. */
  readonly judge: Ask<Design, readonly PairAnswer[] | null, PlainJudgement>;
  readonly decide: Ask<DecideQuestion, Decided, null>;
  readonly field: Ask<FieldAsked, number, FieldAnswered>;
  readonly exercise: Ask<ExerciseAsked, never, ExerciseMade | null>;
  readonly mark: Ask<unknown, never, Marking>;
  readonly mend: Ask<DesignFile, MendTold, DrawnMending>;
  readonly draws: Ask<DrawsAsked, SpreadTold, SpreadPart>;
  readonly spread: Ask<SpreadSummed, never, Spread>;
  readonly books: Ask<BooksAsked, JudgedByBook, null>;
}

interface Ask<Question, Told, Answer> {
  readonly question: Question;
  /** Told while it works; the answer stands without it. */
  readonly told: Told;
  readonly answer: Answer;
}

export interface DecideQuestion {
  readonly doc: DesignFile;
  /** In the order in which they are to be looked at. */
  readonly open: readonly Pick<Assumption, 'field' | 'between'>[];
}

export interface ExerciseAsked {
  readonly template: string;
  readonly seed: number;
}

/** The exercise with the judgement of its build; null where a seed has none, or there is no such template. */
export interface ExerciseMade {
  readonly exercise: Exercise;
  readonly judged: PlainJudgement;
}

/** `quick`: a first look; `turned`: round the axis of a round tube; told is the part done, 0 to 1. */
export interface FieldAsked {
  readonly design: Design;
  readonly quick: boolean;
  readonly turned: boolean;
}

/** `judged`: with what the field found; null after a first look, which cannot say how far it is off. */
export interface FieldAnswered {
  readonly picture: FieldPicture;
  readonly judged: PlainJudgement | null;
}

/** Each proposal with what it is drawn from. */
export interface DrawnMending extends HeldMending {
  readonly drawn: readonly PlainJudgement[];
}

export interface MendTold {
  /** Builds judged so far. */
  readonly judged: number;
  /** Null where nothing new was found. */
  readonly mending: DrawnMending | null;
}

export interface SpreadAsked {
  readonly doc: DesignFile;
  readonly seed: number;
  readonly draws: number;
  readonly placement: Placement;
}

/** Some of the draws, so that several threads may share them. */
export interface DrawsAsked extends SpreadAsked {
  /** From one number to just before another. */
  readonly numbers: readonly [number, number];
}

/** What all the draws together say. */
export interface SpreadSummed extends SpreadAsked {
  readonly part: SpreadPart;
}

export interface SpreadTold {
  readonly count: number;
  readonly meets: number;
}

/** `place`: in the question's list. */
export interface Decided {
  readonly place: number;
  readonly deciding: Deciding;
}

/** In the order in which they are to be judged by. */
export interface BooksAsked {
  readonly design: Design;
  readonly ids: readonly string[];
}

/** One book's column, with the curve of what it asks of each pair. */
export interface JudgedByBook {
  readonly column: BookColumn;
  readonly curves: readonly (readonly CurvePoint[])[];
}

export type AskName = keyof Asks;
export type QuestionOf<A extends AskName> = Asks[A]['question'];
export type ToldOf<A extends AskName> = Asks[A]['told'];
export type AnswerOf<A extends AskName> = Asks[A]['answer'];

/** Works on one question. Each `yield` is a breath: other questions are let in, and this one can be stopped there. */
export type Answerer<A extends AskName> = (
  question: QuestionOf<A>,
  tell: (told: ToldOf<A>) => void,
) => Generator<void, AnswerOf<A>, void>;
