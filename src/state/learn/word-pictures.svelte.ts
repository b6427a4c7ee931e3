// The builds that terms are drawn from: those of the lessons, each judged once, beside the page, when a term first asks for it.

import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { JudgeErrand } from '#state/judging/judge-errand.ts';
import type { JudgedBuild } from '#state/judging/newest-judgement.svelte.ts';
import { lessonShelf } from './lesson-shelf.ts';

export interface WordBuild {
  readonly judged: JudgedBuild;
  readonly pair: readonly [string, string];
}

export class WordPictures {
  #builds: Readonly<Record<string, WordBuild>> = $state.raw({});
  readonly #asked: Record<string, true> = {};
  readonly #judge: JudgeErrand;

  constructor(judge: JudgeErrand) {
    this.#judge = judge;
  }

  /** Null while it is judged, and where it could not be. */
  of(lesson: string): WordBuild | null {
    return this.#builds[lesson] ?? null;
  }

  /** Has it judged, unless it was. */
  async ask(id: string): Promise<void> {
    const lesson = lessonShelf.find((each) => each.id === id);
    if (lesson === undefined || this.#asked[id] === true) return;
    this.#asked[id] = true;
    const read = readDesign(lesson.build, knownIds);
    if (read.kind === 'bad') return;
    const found = await this.#judge(read.design);
    if (found.kind !== 'judged') return;
    const judged = { doc: lesson.build, design: read.design, judgement: found.judgement };
    this.#builds = { ...this.#builds, [id]: { judged, pair: lesson.pair } };
  }
}
