// Acts of mending that are tried on: shown and judged as if they were done, kept as one step or put back. Several together,
// for spots that need each other.

import { applyActs, changesOf, type Act, type Change } from '#mend/acts/act.ts';
import { actsOfSpots } from '#mend/acts/acts-of-spots.ts';
import type { WeakSpot } from '#state/judging/judged.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Editor } from './editor.svelte.ts';

/** An act as it is offered: what it changes, and which spots name it. */
export interface OfferedAct {
  readonly act: Act;
  readonly changes: readonly Change[];
  readonly spots: readonly number[];
}

interface Tried {
  readonly acts: readonly Act[];
  readonly doc: DesignFile;
  /** Weak spots before anything was tried, and what was offered then: places in the file are those of that build. */
  readonly offers: readonly OfferedAct[];
  readonly spots: number;
}

export class Trial {
  #tried: Tried | null = $state.raw(null);
  readonly #editor: Editor;

  constructor(editor: Editor) {
    this.#editor = editor;
  }

  /** What is on trial; null as soon as anything else is shown. */
  get tried(): Tried | null {
    const { shown, doc } = this.#editor;
    return this.#tried !== null && this.#tried.doc === shown && shown !== doc ? this.#tried : null;
  }

  offers(spots: readonly WeakSpot[]): readonly OfferedAct[] {
    const { doc } = this.#editor;
    return actsOfSpots(doc, spots).map(({ act, spots: named }) => ({
      act,
      changes: changesOf(doc, [act]),
      spots: named,
    }));
  }

  isTried(act: Act): boolean {
    return this.tried?.acts.includes(act) === true;
  }

  /** On or off. Acts on the same thing take each other's place. */
  toggle(act: Act, offers: readonly OfferedAct[], spots: number): void {
    const before = this.tried;
    const others = (before?.acts ?? []).filter((each) => each !== act && each.on !== act.on);
    const acts = this.isTried(act) ? others : [...others, act];
    if (acts.length === 0) return this.putBack();
    const doc = applyActs(this.#editor.doc, acts);
    this.#tried = { acts, doc, offers: before?.offers ?? offers, spots: before?.spots ?? spots };
    this.#editor.propose(doc);
  }

  keep(): void {
    const { tried } = this;
    if (tried === null) return;
    this.#tried = null;
    this.#editor.change(tried.doc, tried.acts.length === 1 ? 'mend' : `mend in ${tried.acts.length} places`);
  }

  putBack(): void {
    if (this.tried !== null) this.#editor.cancel();
    this.#tried = null;
  }
}
