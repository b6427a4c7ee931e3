// The field on its page: a coarse picture at once while the build changes, the fine one when it has rested a while;
// solved beside the page, so that the hand never waits. While the build is dragged one first look follows the other, each of
// the build as it is by then. Stop keeps the coarse one.

import type { FieldPicture } from '#judge/field/field-picture.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { withTurns } from '#judge/judging/judge.ts';
import type { Design } from '#model/design.ts';
import type { Asked } from '#state/threads/thread.ts';
import type { Thread } from '#state/threads/thread.ts';

export type { FieldPicture } from '#judge/field/field-picture.ts';
export type { FieldGap, FieldReport, DividedPart } from '#judge/field/field-report.ts';

/** So long a build has to rest before the fine answer is begun. */
const REST_MS = 350;
/** A first look that takes longer is given up for a newer build, which may be a simpler one. */
const PATIENCE_MS = 10_000;

/** Only a round tube has an axis to turn the section about. */
export const isRound = ({ former }: Design): boolean => former.tube?.shape === 'round';

export class FieldSearch {
  picture: FieldPicture | null = $state.raw(null);
  /** What is looked at, and what the picture is of. */
  #of: Design | null = null;
  #solved: Design | null = null;
  /** How many pictures have come. */
  count = $state(0);
  isCoarse = $state(false);
  /** The picture is of the build as it was before. */
  isBehind = $state(false);
  isStopped = $state(false);
  /** Part of the fine answer that is done; null while nothing is worked on. */
  done: number | null = $state(null);
  /** Turned round the axis of the tube, where that is round. */
  isTurned = $state(false);
  /** What went wrong; null where nothing did. */
  says: string | null = $state(null);
  #asked: Asked<'field'> | null = null;
  /** When the first look that is out was begun. */
  #since: number | null = null;
  #rest: ReturnType<typeof setTimeout> | null = null;
  readonly #thread: Thread;
  readonly #judged: (design: Design, judgement: Drawable) => void;

  /** `judged` hears of a build that was judged by its field. */
  constructor(thread: Thread, judged: (design: Design, judgement: Drawable) => void = () => undefined) {
    [this.#thread, this.#judged] = [thread, judged];
  }

  /** The fine answer, where it is of this very build. */
  fineOf(design: Design): FieldPicture | null {
    return this.#solved === design && !this.isCoarse ? this.picture : null;
  }

  /** Looks at a build, unless it is the one that is looked at. */
  look(design: Design): void {
    if (this.#of === design) return;
    this.#of = design;
    this.isBehind = this.picture !== null;
    this.isStopped = false;
    this.says = null;
    // let end: in a drag there would be no picture otherwise
    const isLooking = this.#since !== null && performance.now() - this.#since < PATIENCE_MS;
    if (isLooking) return;
    this.leave();
    void this.#lookFirst();
  }

  async #lookFirst(): Promise<void> {
    for (;;) {
      const design = this.#of;
      if (design === null) return;
      this.#since = performance.now();
      const came = await this.#solve(design, true);
      if (came === 'left') return;
      this.#since = null;
      if (this.#of !== design) continue;
      if (came === 'answered') this.#rest = setTimeout(() => this.finish(), REST_MS);
      return;
    }
  }

  /** Round the axis of a round tube, or as a plane section; the build is looked at anew. */
  turn(isTurned: boolean): void {
    const design = this.#of;
    if (design === null || isTurned === this.isTurned) return;
    this.isTurned = isTurned;
    this.leave();
    this.#of = null;
    this.look(design);
  }

  /** The fine answer, now. */
  finish(): void {
    const design = this.#of;
    if (design === null) return;
    this.leave();
    this.isStopped = false;
    this.done = 0;
    void this.#solve(design, false).then((came) => {
      if (came !== 'left') this.done = null;
    });
  }

  stop(): void {
    this.leave();
    this.isStopped = true;
  }

  /** Nobody looks any more. */
  leave(): void {
    if (this.#rest !== null) clearTimeout(this.#rest);
    this.#rest = null;
    this.#asked?.stop();
    this.#asked = null;
    this.#since = null;
    this.done = null;
  }

  /** Forgets what was looked at, so that the same build is looked at anew. */
  close(): void {
    if (this.#asked !== null || this.isCoarse) this.#of = null;
    this.leave();
  }

  /** `left`: nobody waits for it any more. */
  async #solve(design: Design, quick: boolean): Promise<'answered' | 'failed' | 'left'> {
    const asked = this.#thread.ask(
      'field',
      { design, quick, turned: this.isTurned && isRound(design) },
      (done) => {
        if (!quick && this.#asked === asked) this.done = done;
      },
    );
    this.#asked = asked;
    const outcome = await asked.outcome;
    if (this.#asked !== asked) return 'left';
    this.#asked = null;
    if (outcome.kind === 'answer') {
      const { picture, judged } = outcome.answer;
      this.picture = picture;
      this.count++;
      this.#solved = design;
      this.isBehind = this.#of !== design;
      this.isCoarse = quick;
      if (judged !== null) this.#judged(design, withTurns(judged));
      return 'answered';
    }
    if (outcome.kind !== 'stopped') this.says = 'The field could not be solved on this machine.';
    return 'failed';
  }
}
