// The rule books on their page: the build by each of them, its own first, and the drawing of one that is looked at. Judged
// beside the page; the file is not changed.

import { ruleBookIds } from '#books/shelf.ts';
import { withTurns } from '#judge/judging/judge.ts';
import type { Design } from '#model/design.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import type { JudgedByBook } from '#state/threads/asks/asks.ts';
import type { Asked, Thread } from '#state/threads/thread.ts';

export type { JudgedByBook } from '#state/threads/asks/asks.ts';
export type { BookColumn, BookPair } from '#judge/study/side-by-side.ts';

export interface BookLook {
  readonly id: string;
  readonly design: Design;
  readonly judgement: Drawable;
}

export class BooksSearch {
  /** As they come. */
  found: readonly JudgedByBook[] = $state.raw([]);
  readonly ids: readonly string[] = ruleBookIds;
  isBusy = $state(false);
  says: string | null = $state(null);
  /** What is drawn for a look; null: nothing. */
  look: BookLook | null = $state.raw(null);
  #of: Design | null = null;
  #asked: Asked<'books'> | null = null;
  #looking: Asked<'judge'> | null = null;
  readonly #thread: Thread;

  constructor(thread: Thread) {
    this.#thread = thread;
  }

  /** Judges a build by all of them, unless it is the one that was. */
  judge(design: Design): void {
    if (this.#of === design) return;
    this.leave();
    this.#of = design;
    this.found = [];
    this.look = null;
    this.says = null;
    this.isBusy = true;
    const ids = [design.rules, ...this.ids.filter((id) => id !== design.rules)];
    const asked = this.#thread.ask('books', { design, ids }, (told) => {
      if (this.#asked === asked) this.found = [...this.found, told];
    });
    this.#asked = asked;
    void asked.outcome.then(({ kind }) => {
      if (this.#asked !== asked) return;
      this.#asked = null;
      this.isBusy = false;
      if (kind !== 'answer' && kind !== 'stopped')
        this.says = 'Not every rule book could be asked on this machine.';
    });
  }

  /** Null while it is being asked. */
  by(id: string): JudgedByBook | null {
    return this.found.find(({ column }) => column.rules.id === id) ?? null;
  }

  /** Draws the build as one book judges it. */
  lookAt(id: string): void {
    const design = this.#of;
    if (design === null) return;
    this.#looking?.stop();
    const by = { ...design, rules: id };
    const asked = this.#thread.ask('judge', by, () => undefined);
    this.#looking = asked;
    void asked.outcome.then((outcome) => {
      if (this.#looking !== asked) return;
      this.#looking = null;
      if (outcome.kind === 'answer') this.look = { id, design: by, judgement: withTurns(outcome.answer) };
    });
  }

  lookAway(): void {
    this.#looking?.stop();
    this.#looking = null;
    this.look = null;
  }

  /** Nobody looks any more; what is not finished is asked anew. */
  leave(): void {
    if (this.isBusy) this.#of = null;
    this.#asked?.stop();
    this.#asked = null;
    this.isBusy = false;
    this.lookAway();
  }
}
