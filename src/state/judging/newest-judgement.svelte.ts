// The newest judgement of the build on the sheet. It is made beside the page, so that the hand never waits: one question at
// a time goes there, and after its answer the build as it is by then. A question that an edit has made old is given up where
// it takes long. Where nobody is beside the page (tests, the page as it is built) all is judged at once.

import type { Design } from '#model/design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { PairAnswer } from '#judge/judging/pair-answers.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { judgingAnswer, type JudgingAnswer } from './judging-answer.ts';
import { samePlaces } from './same-places.ts';

export interface JudgedBuild {
  readonly doc: DesignFile;
  readonly design: Design;
  readonly judgement: Drawable;
}

export type BesideAnswer =
  | JudgingAnswer<Drawable>
  | { readonly kind: 'stopped' }
  /** The thread gave no sign, or ended: another is started with the next question. */
  | { readonly kind: 'lost'; readonly why: Lost }
  /** There is nobody to ask, now and later. */
  | { readonly kind: 'away' };

export interface JudgingBeside {
  readonly answer: Promise<BesideAnswer>;
  readonly stop: () => void;
}

/** `early`: told before the answer where that takes long. */
export type JudgeBeside = (design: Design, early: (answers: readonly PairAnswer[]) => void) => JudgingBeside;

/** How it stands with the build as it is now; in all but the first what is judged, if anything, is something older. */
export type Standing =
  | { readonly kind: 'judged' }
  /** `early`: of the pairs of which something is asked, what is known already. */
  | { readonly kind: 'judging'; readonly early: readonly PairAnswer[] }
  /** Someone did not want to wait. */
  | { readonly kind: 'stopped' }
  /** The thread was lost twice over this build. */
  | { readonly kind: 'lost'; readonly why: Lost }
  /** A fault of the program in judging this build. */
  | { readonly kind: 'broke'; readonly says: string };

export interface Newest {
  /** The last state without a wrong entry, which may be ahead of what is judged. */
  readonly newest: { readonly doc: DesignFile; readonly design: Design } | null;
  readonly judged: JudgedBuild | null;
  readonly standing: Standing;
  /** Places in the file name other things in what is judged than in the build as it is now. */
  readonly isShifted: boolean;
  /** There is nobody beside the page: it stands still while it judges. */
  readonly isAlone: boolean;
  /** The thread was lost over this build and started anew. */
  readonly restarted: Lost | null;
}

/** It gave no sign for too long, or it ended. */
export type Lost = 'silent' | 'crashed';

/** Numbered in the order in which they were shown. */
interface ShownBuild {
  readonly doc: DesignFile;
  readonly design: Design;
  readonly number: number;
}

/** A question that is out for so long is given up for a newer one. */
const PATIENCE_MS = 1000;

export class NewestJudgement {
  /** Counts whatever changes from outside, so that what is derived looks again. */
  #arrived = $state(0);
  #count = 0;
  /** The build without a wrong entry that was shown last. */
  #build: ShownBuild | null = null;
  /** Number of the newest build that is not to be judged any more, and what became of it. */
  #settled = 0;
  #standing: Standing = { kind: 'judged' };
  #made: JudgedBuild | null = null;
  #asked: { readonly build: ShownBuild; readonly since: number; readonly stop: () => void } | null = null;
  /** Told of this build before its judgement. */
  #early: { readonly of: ShownBuild; readonly answers: readonly PairAnswer[] } | null = null;
  /** The build over which the thread was lost last. */
  #lost: { readonly doc: DesignFile; readonly why: Lost } | null = null;
  #waiting: (() => void)[] = [];
  #beside: JudgeBeside | null;
  readonly #judge: (design: Design) => Drawable;

  constructor(
    judge: (design: Design) => Drawable,
    beside: JudgeBeside | null,
    first: JudgedBuild | null = null,
  ) {
    this.#judge = judge;
    this.#beside = beside;
    this.#made = first;
  }

  follow(doc: DesignFile, design: Design): void {
    if (this.#build?.doc === doc) return;
    this.#build = { doc, design, number: ++this.#count };
    // it came back to what is judged: answers on the way are older now
    if (this.#made?.doc === doc) this.#settle(this.#count, { kind: 'judged' });
    else if (this.#asked !== null && performance.now() - this.#asked.since > PATIENCE_MS) this.#giveUp();
  }

  look(): Newest {
    void this.#arrived;
    const build = this.#build;
    if (build !== null && this.#isBehind) {
      if (this.#beside === null)
        this.#settleWith(
          build,
          judgingAnswer(() => this.#judge(build.design)),
        );
      else if (this.#asked === null) this.#ask(build, this.#beside);
    }
    return {
      newest: build,
      judged: this.#made,
      standing: this.#isBehind ? { kind: 'judging', early: this.#earlyOf(build) } : this.#standing,
      isShifted: build !== null && (this.#made === null || !samePlaces(this.#made.doc, build.doc)),
      isAlone: this.#beside === null,
      restarted: this.#lost !== null && this.#lost.doc === build?.doc ? this.#lost.why : null,
    };
  }

  /** Ends waiting: what is asked now is not to be judged. Not to be called within what is derived. */
  stop(): void {
    if (this.#build === null || !this.#isBehind) return;
    this.#settle(this.#build.number, { kind: 'stopped' });
    this.#giveUp();
    this.#arrived++;
  }

  /** Asks once more for what was stopped or lost. */
  again(): void {
    if (this.#build === null || this.#isBehind || this.#standing.kind === 'judged') return;
    this.#build = { ...this.#build, number: ++this.#count };
    this.#arrived++;
  }

  /** The same build judged by more than before: takes the place of its judgement, unless another build is judged by now. */
  takeOver(design: Design, judgement: Drawable): void {
    if (this.#made?.design !== design) return;
    this.#made = { ...this.#made, judgement };
    this.#arrived++;
  }

  /** Resolves once the build as it is now is judged, or will not be. */
  whenSettled(): Promise<void> {
    return this.#isBehind ? new Promise((goOn) => this.#waiting.push(goOn)) : Promise.resolve();
  }

  /** Another build comes: nothing of this one is shown any more, not even what is still on its way. */
  forget(): void {
    this.#settled = ++this.#count;
    this.#standing = { kind: 'judged' };
    this.#build = null;
    this.#made = null;
    this.#giveUp();
    this.#tellWaiting();
    // the very same file may come again: what is derived has to look for it
    this.#arrived++;
  }

  get #isBehind(): boolean {
    return this.#build !== null && this.#settled < this.#build.number;
  }

  #earlyOf(build: ShownBuild | null): readonly PairAnswer[] {
    return this.#early !== null && this.#early.of === build ? this.#early.answers : [];
  }

  #ask(build: ShownBuild, beside: JudgeBeside): void {
    const { answer, stop } = beside(build.design, (answers) => {
      this.#early = { of: build, answers };
      this.#arrived++;
    });
    const asked = { build, since: performance.now(), stop };
    this.#asked = asked;
    void answer.then((found) => {
      if (this.#asked !== asked) return;
      this.#asked = null;
      if (found.kind === 'away') this.#beside = null;
      else if (found.kind === 'lost' && this.#lost?.doc !== build.doc)
        this.#lost = { doc: build.doc, why: found.why };
      else if (found.kind !== 'stopped' && build.number > this.#settled) this.#settleWith(build, found);
      this.#arrived++;
    });
  }

  #giveUp(): void {
    const asked = this.#asked;
    this.#asked = null;
    asked?.stop();
  }

  #settleWith(
    { doc, design, number }: ShownBuild,
    found: JudgingAnswer<Drawable> | { readonly kind: 'lost'; readonly why: Lost },
  ): void {
    if (found.kind === 'judged') this.#made = { doc, design, judgement: found.judgement };
    this.#settle(number, found.kind === 'judged' ? { kind: 'judged' } : found);
  }

  #settle(number: number, standing: Standing): void {
    this.#settled = number;
    this.#standing = standing;
    if (!this.#isBehind) this.#tellWaiting();
  }

  #tellWaiting(): void {
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const goOn of waiting) goOn();
  }
}
