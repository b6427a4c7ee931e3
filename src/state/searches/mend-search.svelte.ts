// The mends of the build on the sheet, searched beside the page: shown as they are found, stopped when one asks. What was
// found for a build stays as long as it lies there.

import { withTurns } from '#judge/judging/judge.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { DrawnMending } from '#state/threads/asks/asks.ts';
import type { Asked, Thread } from '#state/threads/thread.ts';

export type { Proposal } from '#mend/search/mend.ts';
export type { Held } from '#mend/hold/slack.ts';

export interface ShownMending extends Omit<DrawnMending, 'drawn'> {
  readonly drawn: readonly Drawable[];
  /** To each proposal its file as read. */
  readonly read: readonly Design[];
}

export class MendSearch {
  found: ShownMending | null = $state.raw(null);
  /** Sets tried so far. */
  judged = $state(0);
  isLooking = $state(false);
  isStopped = $state(false);
  /** What went wrong; null where nothing did. */
  says: string | null = $state(null);
  #of: DesignFile | null = null;
  #asked: Asked<'mend'> | null = null;
  readonly #thread: Thread;

  constructor(thread: Thread) {
    this.#thread = thread;
  }

  /** Looks at a build, unless it is the one that is looked at. */
  look(doc: DesignFile): void {
    if (this.#of === doc) return;
    this.#end();
    this.found = null;
    this.#of = doc;
    void this.#search(doc);
  }

  /** From the beginning, after it was stopped. */
  again(): void {
    const doc = this.#of;
    this.#of = null;
    if (doc !== null) this.look(doc);
  }

  stop(): void {
    this.isStopped = this.isLooking;
    this.#end();
  }

  /** Nobody looks any more: what is not done is begun anew the next time. */
  leave(): void {
    if (this.isLooking) this.#of = null;
    this.#end();
  }

  async #search(doc: DesignFile): Promise<void> {
    this.judged = 0;
    this.says = null;
    this.isStopped = false;
    this.isLooking = true;
    const asked = this.#thread.ask('mend', doc, ({ judged, mending }) => {
      if (this.#asked !== asked) return;
      this.judged = judged;
      if (mending !== null) this.found = shown(mending);
    });
    this.#asked = asked;
    const outcome = await asked.outcome;
    if (this.#asked !== asked) return;
    this.#asked = null;
    this.isLooking = false;
    if (outcome.kind === 'answer') this.found = shown(outcome.answer);
    else this.says = TROUBLE[outcome.kind];
  }

  #end(): void {
    this.#asked?.stop();
    this.#asked = null;
    this.isLooking = false;
  }
}

const shown = ({ drawn, ...mending }: DrawnMending): ShownMending => ({
  ...mending,
  drawn: drawn.map(withTurns),
  read: mending.proposals.map(({ design }) => {
    const read = readDesign(design, knownIds);
    if (read.kind === 'bad') throw new Error('a proposal is refused as a file');
    return read.design;
  }),
});

const TROUBLE = {
  broke: 'The search broke off, which is a fault of the program.',
  lost: 'The search gave no sign for too long and was ended.',
  away: 'This browser gives the page no thread to search in.',
  stopped: null,
} as const;
