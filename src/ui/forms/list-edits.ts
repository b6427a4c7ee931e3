// Taking out of the lists of a build, as steps of its history.

import { removeAt } from '#model/edit/edit-list.ts';
import type { Editor } from '#state/document/editor.svelte.ts';

export function takeFrom(editor: Editor, list: string, index: number, says: string): void {
  editor.change(removeAt(editor.doc, list, index), says);
}
