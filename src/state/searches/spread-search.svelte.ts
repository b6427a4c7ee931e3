// The spread of the build on the sheet, drawn beside the page with the seed and the placement model that are set here.
// Stopped, the draws made so far still stand as a count.

import type { DesignFile } from '#model/schema/schema.ts';
import { PLACEMENT, type Placement } from '#spread/placement.ts';
import type { Spread } from '#spread/spread.ts';
import type { SpreadTold } from '#state/threads/asks/asks.ts';
import type { Asked, Thread } from '#state/threads/thread.ts';

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
  #asked: Asked<'spread'> | null = null;
  readonly #thread: Thread;

  constructor(thread: Thread) {
    this.#thread = thread;
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
    const asked = this.#thread.ask('spread', { doc, seed, draws, placement }, (told) => {
      if (this.#asked === asked) this.told = told;
    });
    this.#asked = asked;
    const outcome = await asked.outcome;
    if (this.#asked !== asked) return;
    this.#asked = null;
    this.isLooking = false;
    if (outcome.kind === 'answer') {
      this.found = outcome.answer;
      this.told = null;
    } else this.says = TROUBLE[outcome.kind];
  }

  #end(): void {
    this.#asked?.stop();
    this.#asked = null;
    this.isLooking = false;
  }
}

const TROUBLE = {
  broke: 'The drawing of pieces broke off, which is a fault of the program.',
  lost: 'The drawing of pieces gave no sign for too long and was ended.',
  away: 'This browser gives the page no thread to draw in.',
  stopped: null,
} as const;
