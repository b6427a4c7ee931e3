// The search for the figures that would turn the verdict, beside the page: each is shown when it is found. Stopped when one
// asks, begun anew when the build changes.

import type { Deciding } from '#judge/decide/deciding-figure.ts';
import { nextMeasurement, type NextMeasurement } from '#judge/decide/next-measurement.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Editor } from '#state/document/editor.svelte.ts';
import type { Assumption } from '#state/judging/judged.ts';
import type { Asked, Thread } from '#state/threads/thread.ts';

export type { Deciding, NextMeasurement };

export class DecidingSearch {
  #found: Readonly<Record<string, Deciding>> = $state.raw({});
  /** What is looked at now; null when nothing is. */
  #current: string | null = $state(null);
  isStopped = $state(false);
  #doc: DesignFile | null = null;
  #turn = 0;
  /** Why it ended before all was found. */
  trouble: string | null = $state(null);
  #asked: Asked<'decide'> | null = null;
  readonly #editor: Editor;
  readonly #thread: Thread;

  constructor(editor: Editor, thread: Thread) {
    this.#editor = editor;
    this.#thread = thread;
  }

  /** What is open and could be found out, the most promising first. */
  readonly open: readonly Assumption[] = $derived.by(() => {
    const all = this.#editor.judged?.judgement.verdict.assumptions ?? [];
    const open = all.filter(({ kind }) => kind === 'unknown' || kind === 'interval');
    return [...open].sort((a, b) => promise(b) - promise(a));
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
    this.#end();
    const turn = this.#turn;
    this.isStopped = false;
    this.trouble = null;
    const judged = await this.#editor.judgedSoon();
    if (judged === null || turn !== this.#turn) return;
    if (this.#doc !== judged.doc) this.#found = {};
    this.#doc = judged.doc;
    const left = this.open.filter((one) => this.figureOf(one) === undefined);
    const lookAt = (place: number): void => {
      this.#current = left[place] === undefined ? null : nameOf(left[place]);
    };
    lookAt(0);
    const open = left.map(({ field, between }) => ({ field, between }));
    this.#asked = this.#thread.ask('decide', { doc: judged.doc, open }, ({ place, deciding }) => {
      if (turn !== this.#turn) return;
      this.#found = { ...this.#found, [nameOf(left[place]!)]: deciding };
      lookAt(place + 1);
    });
    const outcome = await this.#asked.outcome;
    if (turn !== this.#turn) return;
    this.#current = null;
    if (outcome.kind !== 'answer') this.trouble = TROUBLE[outcome.kind];
  }

  stop(): void {
    this.#end();
    this.isStopped = true;
  }

  #end(): void {
    this.#turn++;
    this.#current = null;
    this.#asked?.stop();
    this.#asked = null;
  }
}

const TROUBLE = {
  broke: 'The search broke off, which is a fault of the program.',
  lost: 'The search gave no sign for too long and was ended.',
  away: 'This browser gives the page no thread to search in.',
  stopped: null,
} as const;

/** What would lead further alone comes first. */
const promise = ({ decides, atBest }: Assumption): number =>
  (decides ? 4 : 0) + (atBest === null ? 0 : ['falls-short', 'not-shown', 'meets'].indexOf(atBest));

/** Voltages of several pairs share one field. */
const nameOf = ({ field, between }: Assumption): string => [field, ...(between ?? [])].join(' ');
