// One sheet being explored: its curves, worked out anew for another sheet or knob; what comes late for an older one is let go.

import type { Curve } from '#drawing/plot/figure-plot.ts';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judgeErrand } from '#state/judging/judge-errand.ts';
import type { Thread } from '#state/threads/thread.ts';
import { exploreSheets } from './explore-sheets.ts';
import type { ExploreSheet, JudgeDoc } from './sheets/explore-sheet.ts';
import { lessonShelf } from './lesson-shelf.ts';

export class Exploring {
  readonly sheets: readonly ExploreSheet[] = exploreSheets(
    lessonShelf.find(({ id }) => id === 'margin')!.build,
  );
  curves: readonly Curve[] = $state.raw([]);
  #turn = 0;
  readonly #judge: JudgeDoc;

  constructor(thread: Thread) {
    const judge = judgeErrand(thread);
    this.#judge = async (doc) => {
      const read = readDesign(doc, knownIds);
      if (read.kind === 'bad') return null;
      const found = await judge(read.design);
      return found.kind === 'judged' ? found.judgement.verdict : null;
    };
  }

  async show(sheet: ExploreSheet, option: string): Promise<void> {
    const turn = ++this.#turn;
    this.curves = [];
    const curves = await sheet.curves(option, this.#judge);
    if (turn === this.#turn) this.curves = curves;
  }
}
