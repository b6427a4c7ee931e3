// The exercises on their page: one sheet with its answers, or sheets for a whole class, made beside the page one by one so that
// one may stop. A seed without a build says so, and the class takes the next.

import type { ExerciseMade } from '#state/threads/asks/asks.ts';
import type { Thread } from '#state/threads/thread.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { withTurns } from '#judge/judging/judge.ts';
import { studyOf } from '#judge/study.ts';
import { templates } from '#learn/exercise/templates.ts';
import { readDesign } from '#model/read/read-design.ts';
import { inMillimetres } from '#words/text/length-unit.ts';
import { exerciseAndAnswers, exerciseClass } from '#papers/html/exercise-sheet.ts';
import type { ExercisePaper } from '#papers/html/exercise-parts.ts';
import { exerciseTitle } from '#words/learn/exercise-words.ts';

export type MadeExercise = Omit<ExercisePaper, 'answers'>;

export const exerciseKinds = templates.map(({ id }) => ({ id, title: exerciseTitle(id) }));

export const LARGEST_SEED = 0xffffffff;
const CLASS = 30;
/** So many seeds without a build one after another end the making of a class. */
const MOST_EMPTY = 20;

export class Exercises {
  /** The papers as one document; null while they are made. */
  html: string | null = $state.raw(null);
  /** What is said while nothing can be shown, or beside it. */
  says = $state('');
  /** How many of a class are made; null where none is being made. */
  made: number | null = $state(null);
  #turn = 0;
  readonly #thread: Thread;

  constructor(thread: Thread) {
    this.#thread = thread;
  }

  async show(template: string, seed: number): Promise<void> {
    const turn = this.#begin('Being made.');
    const found = await makeExercise(this.#thread, template, seed);
    if (turn !== this.#turn) return;
    this.says = found.kind === 'made' ? '' : found.says;
    if (found.kind === 'made') this.html = inMillimetres(() => exerciseAndAnswers(found.made));
  }

  /** Sheets for thirty pupils, numbered in a row from this seed on. */
  async showClass(template: string, seed: number): Promise<void> {
    const turn = this.#begin('');
    const papers: MadeExercise[] = [];
    let empty = 0;
    this.made = 0;
    for (let number = seed; papers.length < CLASS && empty < MOST_EMPTY; number += 1) {
      const found = await makeExercise(this.#thread, template, number % (LARGEST_SEED + 1));
      if (turn !== this.#turn) return;
      if (found.kind === 'made') papers.push(found.made);
      else empty += 1;
      this.made = papers.length;
    }
    this.made = null;
    this.says =
      empty === 0 ? '' : `${empty} numbers had no build with one right answer; the next ones were taken.`;
    this.html = inMillimetres(() => exerciseClass(papers));
  }

  stop(): void {
    this.#begin('Stopped.');
  }

  #begin(says: string): number {
    this.html = null;
    this.made = null;
    this.says = says;
    return ++this.#turn;
  }
}

export type MakingExercise =
  { readonly kind: 'made'; readonly made: MadeExercise } | { readonly kind: 'none'; readonly says: string };

/** One exercise with its build read and judged, all of it made beside the page. */
export async function makeExercise(thread: Thread, template: string, seed: number): Promise<MakingExercise> {
  const outcome = await thread.ask('exercise', { template, seed }).outcome;
  if (outcome.kind !== 'answer')
    return {
      kind: 'none',
      says: 'This exercise could not be made: the thread beside the page gave no answer.',
    };
  if (outcome.answer === null)
    return { kind: 'none', says: `${seed} has no build with one right answer; take another number.` };
  return { kind: 'made', made: madeOf(outcome.answer) };
}

function madeOf({ exercise, judged }: ExerciseMade): MadeExercise {
  const read = readDesign(exercise.doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says ?? 'no design');
  return { exercise, design: read.design, judgement: studyOf(read.design, withTurns(judged)) };
}
