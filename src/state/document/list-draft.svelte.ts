// An entry of a list of the build while it is being filled in: no entry of the file before it is whole, so that neither a
// fault nor a figure that nobody gave stands there. The field that makes it whole puts it in, as one step of the history.

import { fieldAt } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Edit } from '#state/fields/edit.ts';
import type { Editor } from './editor.svelte.ts';

export class ListDraft<Entry extends object> {
  #begun: { readonly at: number; readonly entry: Entry } | null = $state.raw(null);
  readonly #editor: Editor;
  readonly #list: string;

  constructor(editor: Editor, list: string) {
    this.#editor = editor;
    this.#list = list;
  }

  /** What is filled in, and the place it will have at the end of the list; null: nothing, or it is in the build by now. */
  readonly open = $derived.by(() => {
    const { doc } = this.#editor;
    return this.#begun?.at === this.#entries(doc).length ? this.#begun : null;
  });

  begin(entry: Entry): void {
    this.#begun = { at: this.#entries(this.#editor.doc).length, entry };
  }

  set(changed: Partial<Entry>): void {
    if (this.open !== null) this.#begun = { ...this.open, entry: { ...this.open.entry, ...changed } };
  }

  drop(): void {
    this.#begun = null;
    this.#editor.cancel();
  }

  /** The edits by which it enters the build with this field; nothing typed is no edit. */
  entering(key: string, value: unknown): readonly Edit[] {
    if (this.open === null || value === undefined || value === '') return [];
    const whole = { ...this.open.entry, [key]: value };
    return [{ path: this.#list, value: [...this.#entries(this.#editor.doc), whole] }];
  }

  #entries(doc: DesignFile): readonly unknown[] {
    const found = fieldAt(doc, this.#list);
    return Array.isArray(found) ? found : [];
  }
}
