// The search for the figures that would turn the verdict, beside the page: a little at a time so that the hand never waits,
// stopped when one asks, begun anew when the build changes.

import { decidingFigure, type Deciding, type JudgeFile } from '#judge/decide/deciding-figure.ts';
import { nextMeasurement, type NextMeasurement } from '#judge/decide/next-measurement.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Editor } from '#state/document/editor.svelte.ts';
import type { Assumption } from './judged.ts';
import { judging } from './judging.ts';

export type { Deciding, NextMeasurement };

/** Time that one turn may take before the page is let in again. */
const TURN_MS = 8;

export class DecidingSearch {
  #found: Readonly<Record<string, Deciding>> = $state.raw({});
  /** What is looked at now; null when nothing is. */
  #current: string | null = $state(null);
  isStopped = $state(false);
  #doc: DesignFile | null = null;
  #turn = 0;
  readonly #editor: Editor;

  constructor(editor: Editor) {
    this.#editor = editor;
  }

  /** What is open and could be found out, deciding ones first. */
  readonly open: readonly Assumption[] = $derived.by(() => {
    const all = this.#editor.judged?.judgement.verdict.assumptions ?? [];
    const open = all.filter(({ kind }) => kind === 'unknown' || kind === 'interval');
    return [...open].sort((a, b) => Number(b.decides) - Number(a.decides));
  });

  readonly next: NextMeasurement | null = $derived.by(() => {
    const verdict = this.#editor.judged?.judgement.verdict;
    return verdict === undefined ? null : nextMeasurement(verdict.assumptions, verdict.verdict);
  });

  get done(): number {
    return this.open.filter((one) => this.figureOf(one) !== undefined).length;
  }

  get isLooking(): boolean {
    return this.#current !== null;
  }

  looksAt(assumption: Assumption): boolean {
    return this.#current === nameOf(assumption);
  }

  /** Undefined while it has not been looked for. */
  figureOf(assumption: Assumption): Deciding | undefined {
    return this.#found[nameOf(assumption)];
  }

  /** Searches the build on the sheet; what was found for the same build stays. */
  async start(): Promise<void> {
    const judged = this.#editor.judgedNow();
    if (judged === null) return;
    if (this.#doc !== judged.doc) this.#found = {};
    this.#doc = judged.doc;
    this.isStopped = false;
    const turn = ++this.#turn;
    const judge = judgeFile();
    for (const one of this.open) {
      if (this.figureOf(one) !== undefined) continue;
      this.#current = nameOf(one);
      const deciding = await this.#finish(decidingFigure(judged.doc, one, judge), turn);
      if (deciding === null) return;
      this.#found = { ...this.#found, [nameOf(one)]: deciding };
    }
    this.#current = null;
  }

  stop(): void {
    this.#turn++;
    this.#current = null;
    this.isStopped = true;
  }

  /** Null where it was stopped on the way. */
  async #finish(search: Generator<void, Deciding, void>, turn: number): Promise<Deciding | null> {
    for (;;) {
      const until = performance.now() + TURN_MS;
      do {
        const { done, value } = search.next();
        if (done === true) return value;
      } while (performance.now() < until);
      await new Promise((goOn) => setTimeout(goOn, 0));
      if (turn !== this.#turn) return null;
    }
  }
}

/** Voltages of several pairs share one field. */
const nameOf = ({ field, between }: Assumption): string => [field, ...(between ?? [])].join(' ');

/** With a memory of its own, so that the search does not push the page's out. */
function judgeFile(): JudgeFile {
  const { read, judge } = judging();
  return (doc) => {
    const reading = read(doc);
    return reading.kind === 'bad' ? null : judge(reading.design).verdict;
  };
}
