// The spread of the build on the sheet, drawn beside the page with the seed and the placement model that are set here.
// The draws are shared among threads; stopped, those made so far still stand as a count.

import type { DesignFile } from '#model/schema/schema.ts';
import { PLACEMENT, type Placement } from '#spread/placement.ts';
import type { Spread } from '#spread/spread.ts';
import { sharesOfDraws } from '#spread/shares-of-draws.ts';
import { EMPTY, joined, type SpreadPart } from '#spread/spread-part.ts';
import type { QuestionOf, SpreadTold } from '#state/threads/asks/asks.ts';
import type { Asked, Outcome, Thread } from '#state/threads/thread.ts';

export { wilson } from '#spread/wilson.ts';
export type { Placement } from '#spread/placement.ts';
export type { Distances } from '#spread/distances.ts';
export type { Spread } from '#spread/spread.ts';

export class SpreadSearch {
  found: Spread | null = $state.raw(null);
  /** How far it is; null while nothing is worked on and nothing was stopped. */
  told: SpreadTold | null = $state.raw(null);
  isLooking = $state(false);
  says: string | null = $state(null);
  seed = $state(1);
  draws = $state(10_000);
  placement: Placement = $state.raw(PLACEMENT);
  #of: DesignFile | null = null;
  #asked: readonly (Asked<'draws'> | Asked<'spread'>)[] = [];
  readonly #threads: readonly Thread[];

  /** `threads`: they share the draws; the first says what all together come to. */
  constructor(threads: readonly Thread[]) {
    this.#threads = threads;
  }

  /** Draws pieces of a build, unless it is the one that they were drawn of. */
  look(doc: DesignFile): void {
    if (this.#of !== doc) this.draw(doc);
  }

  /** Draws anew, with the figures as they are set now. */
  draw(doc: DesignFile): void {
    this.#end();
    this.#of = doc;
    this.found = null;
    void this.#search(doc);
  }

  stop(): void {
    this.#end();
  }

  leave(): void {
    if (this.isLooking) this.#of = null;
    this.#end();
  }

  async #search(doc: DesignFile): Promise<void> {
    this.told = { count: 0, meets: 0 };
    this.says = null;
    this.isLooking = true;
    const { seed, draws, placement } = this;
    const question = { doc, seed, draws, placement };
    const parts = this.#drawn(question);
    const mine = this.#asked;
    const outcomes = await Promise.all(parts);
    if (this.#asked !== mine) return;
    const missing = outcomes.find(({ kind }) => kind !== 'answer');
    if (missing !== undefined) return this.#ended(missing);
    const part = outcomes.map(answerOf).reduce(joined, EMPTY);
    const summed = this.#threads[0]!.ask('spread', { ...question, part });
    const all = (this.#asked = [summed]);
    const outcome = await summed.outcome;
    if (this.#asked === all) this.#ended(outcome);
  }

  #drawn(question: Omit<QuestionOf<'draws'>, 'numbers'>): readonly Promise<Outcome<'draws'>>[] {
    const shares = sharesOfDraws(question.draws, this.#threads.length);
    const made = shares.map((): SpreadTold => ({ count: 0, meets: 0 }));
    const asked = shares.map((numbers, i) =>
      this.#threads[i]!.ask('draws', { ...question, numbers }, (told) => {
        if (this.#asked !== asked) return;
        made[i] = told;
        this.told = made.reduce((a, b) => ({ count: a.count + b.count, meets: a.meets + b.meets }));
      }),
    );
    this.#asked = asked;
    return asked.map(({ outcome }) => outcome);
  }

  #ended(outcome: Outcome<'draws'> | Outcome<'spread'>): void {
    this.#end();
    if (outcome.kind !== 'answer') this.says = TROUBLE[outcome.kind];
    else if ('interval' in outcome.answer) {
      this.found = outcome.answer;
      this.told = null;
    }
  }

  #end(): void {
    for (const asked of this.#asked) asked.stop();
    this.#asked = [];
    this.isLooking = false;
  }
}

const answerOf = (outcome: Outcome<'draws'>): SpreadPart =>
  outcome.kind === 'answer' ? outcome.answer : EMPTY;

const TROUBLE = {
  broke: 'The drawing of pieces broke off, which is a fault of the program.',
  lost: 'The drawing of pieces gave no sign for too long and was ended.',
  away: 'This browser gives the page no thread to draw in.',
  stopped: null,
} as const;
