// The newest judgement of the build on the sheet. What is judged quickly is judged at once, so that it follows the hand; a
// build that takes longer is judged beside the page, so that the hand never waits for it. One question at a time goes
// there, and after its answer the build as it is by then.

import type { Design } from '#model/design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { judgingAnswer, type JudgingAnswer } from './judging-answer.ts';
import { samePlaces } from '#state/document/same-places.ts';

export interface JudgedBuild {
  readonly doc: DesignFile;
  readonly design: Design;
  readonly judgement: Drawable;
}

/** Away: there is nobody to ask, now and later. */
export type JudgeBeside = (design: Design) => Promise<JudgingAnswer<Drawable> | { readonly kind: 'away' }>;

export interface Newest {
  /** As read last, which may be ahead of what is judged. */
  readonly design: Design | null;
  readonly judged: JudgedBuild | null;
  /** What went wrong where judging the build itself broke. */
  readonly broke: string | null;
  /** The build as it is now is still being judged. */
  readonly isBehind: boolean;
}

/** Numbered in the order in which they were shown. */
interface ShownBuild {
  readonly doc: DesignFile;
  readonly design: Design;
  readonly number: number;
}

/** A frame has 16 ms, and drawing wants some of them: what is judged within the rest follows the hand. */
const LIGHT_MS = 12;
/** A machine warms up while it judges: only so many times that long without a quick one between makes a build heavy, */
const HEAVY = 30;
/** or one judgement that the hand would feel; the first of all finds the machine cold. */
const HEAVY_MS = 100;
const HEAVY_WHEN_COLD_MS = 250;

export class NewestJudgement {
  /** Counts answers from beside the page, so that what is derived looks again. */
  #arrived = $state(0);
  #count = 0;
  /** The build without a wrong entry that was shown last. */
  #build: ShownBuild | null = null;
  /** Number of the newest build that was judged or broke. */
  #settled = 0;
  #made: JudgedBuild | null = null;
  #broke: string | null = null;
  #isCold = true;
  /** How often the time that is light has passed since a judgement was within it. */
  #weight = 0;
  #isAsked = false;
  #beside: JudgeBeside | null;
  readonly #judge: (design: Design) => Drawable;

  constructor(judge: (design: Design) => Drawable, beside: JudgeBeside | null) {
    this.#judge = judge;
    this.#beside = beside;
  }

  follow(doc: DesignFile, design: Design): void {
    if (this.#build?.doc === doc) return;
    this.#build = { doc, design, number: ++this.#count };
    if (this.#made?.doc !== doc) return;
    // it came back to what is judged: answers on the way are older now
    this.#settled = this.#count;
    this.#broke = null;
  }

  /** `mayShift`: the judgement may wait even where places changed, since nothing on the page goes by them. */
  look(mayShift: boolean): Newest {
    void this.#arrived;
    const build = this.#build;
    if (build !== null && this.#isBehind) {
      if (this.#beside === null || !this.#mayWait(build, mayShift)) this.#judgeHere(build);
      else if (!this.#isAsked) this.#ask(build, this.#beside);
    }
    return {
      design: this.#build?.design ?? null,
      judged: this.#made,
      broke: this.#isBehind ? null : this.#broke,
      isBehind: this.#isBehind,
    };
  }

  /** Ends waiting; not to be called within what is derived. */
  catchUp(): void {
    if (this.#build === null || !this.#isBehind) return;
    this.#judgeHere(this.#build);
    this.#arrived++;
  }

  /** Another build comes: nothing of this one is shown any more, not even what is still on its way. */
  forget(): void {
    this.#settled = ++this.#count;
    this.#weight = 0;
    this.#build = null;
    this.#made = null;
    this.#broke = null;
  }

  get #isBehind(): boolean {
    return this.#build !== null && this.#settled !== this.#build.number;
  }

  #mayWait({ doc }: ShownBuild, mayShift: boolean): boolean {
    return this.#weight >= HEAVY && this.#made !== null && (mayShift || samePlaces(this.#made.doc, doc));
  }

  #judgeHere(build: ShownBuild): void {
    this.#settle(
      build,
      judgingAnswer(() => this.#judge(build.design)),
    );
  }

  #ask(build: ShownBuild, beside: JudgeBeside): void {
    this.#isAsked = true;
    void beside(build.design).then((answer) => {
      this.#isAsked = false;
      if (answer.kind === 'away') this.#beside = null;
      else if (build.number > this.#settled) this.#settle(build, answer);
      this.#arrived++;
    });
  }

  #settle({ doc, design, number }: ShownBuild, answer: JudgingAnswer<Drawable>): void {
    this.#weight = this.#weightAfter(answer.took);
    this.#isCold = false;
    this.#settled = number;
    this.#broke = answer.kind === 'broke' ? answer.says : null;
    if (answer.kind === 'judged') this.#made = { doc, design, judgement: answer.judgement };
  }

  #weightAfter(took: number): number {
    if (took >= (this.#isCold ? HEAVY_WHEN_COLD_MS : HEAVY_MS)) return HEAVY;
    return took < LIGHT_MS || this.#isCold ? 0 : this.#weight + Math.floor(took / LIGHT_MS);
  }
}
