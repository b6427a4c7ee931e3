// Reading the weakest path: its pieces light one by one, as its sentence tells them. With reduced motion nothing runs by
// itself: each press goes one piece on.

import { pathParts, type PathPart } from '#words/paths/path-words.ts';
import type { PathScale } from '#drawing/scene/scene.ts';
import type { Selection } from '#state/document/selection.svelte.ts';

const STEP_MS = 220;
/** How long the last piece stays lit. */
const REST_MS = 1400;

export class Reading {
  #at: number | null = $state(null);
  #timer: ReturnType<typeof setTimeout> | null = null;
  readonly #path: () => PathScale | null;
  readonly #selection: Selection;
  readonly #isStill: () => boolean;

  constructor(path: () => PathScale | null, selection: Selection, isStill: () => boolean) {
    this.#path = path;
    this.#selection = selection;
    this.#isStill = isStill;
  }

  readonly parts: readonly PathPart[] = $derived.by(() => pathParts(this.#path()?.legs ?? []));

  get isOn(): boolean {
    return this.#at !== null;
  }

  /** The legs that light up: those of the piece that is told, or pointed at in the sentence. */
  readonly lit: readonly number[] | null = $derived.by(() => {
    const { leg } = this.#selection;
    const part = this.#at === null ? null : this.parts[this.#at];
    if (part != null) return part.legs;
    if (leg === null) return null;
    return this.parts.find(({ legs }) => legs.includes(leg))?.legs ?? [leg];
  });

  readonly told: readonly number[] = $derived.by(() =>
    this.#at === null ? [] : this.parts.slice(0, this.#at).flatMap(({ legs }) => legs),
  );

  readonly words: string = $derived.by(() => (this.#at === null ? '' : (this.parts[this.#at]?.text ?? '')));

  next(): void {
    const next = this.#at === null ? 0 : this.#at + 1;
    this.#clear();
    if (next >= this.parts.length) return;
    this.#at = next;
    if (this.#isStill()) return;
    const isLast = next === this.parts.length - 1;
    this.#timer = setTimeout(() => this.next(), isLast ? REST_MS : STEP_MS);
  }

  #clear(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    this.#at = null;
  }

  stop(): void {
    this.#clear();
  }
}
