// A layer on its way into the build: described on a card, drawn and judged as it would lie, in the file only when it is put in.

import { putIn, type LayerWish } from '#model/edit/put-in.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Editor } from './editor.svelte.ts';

export class Placing {
  wish: LayerWish | null = $state.raw(null);
  readonly #editor: Editor;

  constructor(editor: Editor) {
    this.#editor = editor;
  }

  /** Begins with what most likely comes next: a winding on the tube and on a tape, a tape on a winding. */
  open(at: number, chamber = 0, ends: Partial<Pick<LayerWish, 'left' | 'right'>> = {}): void {
    const { doc } = this.#editor;
    const under = doc.layers.slice(0, at).findLast((layer) => (layer.chamber ?? 0) === chamber);
    const kind = under?.kind === 'winding' ? 'tape' : 'winding';
    this.wish = {
      ...blank(doc),
      at,
      chamber,
      kind,
      left: '',
      right: '',
      ...ends,
    };
    this.#try();
  }

  set(changed: Partial<LayerWish>): void {
    if (this.wish === null) return;
    this.wish = { ...this.wish, ...changed };
    this.#try();
  }

  /** Where it lies in the list afterwards; null where nothing was being put in, or a figure of it cannot be read. */
  put(): number | null {
    const { wish } = this;
    if (wish === null) return null;
    this.#try();
    if (this.#editor.faults.length > 0) return null;
    this.wish = null;
    this.#editor.change(this.#editor.shown, `put in a ${wish.kind}`);
    return wish.at;
  }

  putBack(): void {
    if (this.wish === null) return;
    this.wish = null;
    this.#editor.cancel();
  }

  #try(): void {
    if (this.wish !== null) this.#editor.propose(putIn(this.#editor.doc, this.wish));
  }
}

/** Nothing is said of it yet but whose it may be. */
function blank(doc: DesignFile): Omit<LayerWish, 'at' | 'chamber' | 'kind' | 'left' | 'right'> {
  const wound = new Set(doc.windings.map(({ circuit }) => circuit));
  const next = doc.circuits.find(({ id }) => !wound.has(id)) ?? doc.circuits[0];
  return {
    of: next === undefined ? '' : `circuit:${next.id}`,
    turns: '',
    wire: 'unknown',
    conductor: '',
    material: 'unknown',
    plies: '',
    thickness: '',
    filled: false,
  };
}
