// What a step of taking apart decides: the build judged with each answer that the step may get, and the way round the barrier
// as far as it is known. Judged beside the page, anew when the build or the step changes; what nobody knows counts at its worst
// and at its best, so that an answer says from where to where the pair may still come.

import { leadingPath } from '#words/paths/leading-path.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { PairVerdict, PathLeg, Verdict } from '#state/judging/judged.ts';
import type { JudgeErrand } from '#state/judging/judge-errand.ts';
import { stepChoices } from '#state/begin/step-choices.ts';
import type { ApartStep } from '#state/begin/taking-apart.ts';
import { reachOf, type PairReach } from './narrowing.svelte.ts';

export interface DecidedRow {
  readonly says: string;
  readonly isChosen: boolean;
  /** Pairs of which something is drawn on both sides; empty while judged, and where the file would be refused. */
  readonly reaches: readonly PairReach[];
}

/** The shortest way round what came off, mm, against what is asked. */
export interface WaySoFar {
  readonly between: readonly [string, string];
  readonly legs: readonly PathLeg[];
  readonly length: number;
  readonly required: number;
}

export interface StepDecided {
  readonly asks: string;
  readonly supposed: string | null;
  readonly rows: readonly DecidedRow[];
  readonly way: WaySoFar | null;
}

export class StepDecides {
  /** Null where the step has no answers to lay out. */
  shown: StepDecided | null = $state.raw(null);
  isBusy = $state(false);
  #turn = 0;
  readonly #judge: JudgeErrand;

  constructor(judge: JudgeErrand) {
    this.#judge = judge;
  }

  async look(doc: DesignFile, step: ApartStep): Promise<void> {
    const turn = ++this.#turn;
    const asked = stepChoices(doc, step);
    if (asked === null) {
      this.shown = null;
      this.isBusy = false;
      return;
    }
    const { asks, supposed, choices, soFar } = asked;
    this.isBusy = true;
    const rows: DecidedRow[] = [];
    for (const { says, isChosen, doc: tried } of choices) {
      const verdict = await this.#verdictOf(tried);
      if (turn !== this.#turn) return;
      rows.push({ says, isChosen, reaches: verdict === null ? [] : drawnReaches(verdict) });
    }
    const verdict = await this.#verdictOf(soFar);
    if (turn !== this.#turn) return;
    this.shown = { asks, supposed, rows, way: verdict === null ? null : wayOf(verdict.pairs) };
    this.isBusy = false;
  }

  /** Nobody looks any more. */
  leave(): void {
    this.#turn++;
  }

  async #verdictOf(doc: DesignFile): Promise<Verdict | null> {
    const read = readDesign(doc, knownIds);
    if (read.kind === 'bad') return null;
    const found = await this.#judge(read.design);
    return found.kind === 'judged' ? found.judgement.verdict : null;
  }
}

const drawnReaches = (verdict: Verdict): readonly PairReach[] =>
  reachOf({ ...verdict, pairs: verdict.pairs.filter(({ undrawn }) => undrawn.length === 0) });

/** Of the pair that lacks most. */
function wayOf(pairs: readonly PairVerdict[]): WaySoFar | null {
  const ways = pairs.flatMap((pair): readonly WaySoFar[] => {
    const path = leadingPath(pair);
    if (path?.length == null || path.required === null || path.legs.length === 0) return [];
    const { legs, length, required } = path;
    return [{ between: pair.between, legs, length, required }];
  });
  return [...ways].sort((a, b) => b.required - b.length - (a.required - a.length))[0] ?? null;
}
