// Adding to and taking out of the lists of a build, as steps of its history.

import { fieldAt } from '#model/edit/edit-design.ts';
import { insertAt, removeAt } from '#model/edit/edit-list.ts';
import type { Editor } from '#state/document/editor.svelte.ts';

export function addTo(editor: Editor, list: string, item: unknown, says: string): void {
  const found = fieldAt(editor.doc, list);
  const { length } = Array.isArray(found) ? found : [];
  editor.change(insertAt(editor.doc, list, length, item), says);
}

export function takeFrom(editor: Editor, list: string, index: number, says: string): void {
  editor.change(removeAt(editor.doc, list, index), says);
}

/** A name that none of the others has: `out`, `out2`, `out3`. */
export function freeId(taken: readonly string[], wish: string): string {
  if (!taken.includes(wish)) return wish;
  for (let n = 2; ; n++) if (!taken.includes(`${wish}${n}`)) return `${wish}${n}`;
}
