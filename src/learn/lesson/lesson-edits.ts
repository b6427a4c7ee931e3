// The edits that a lesson stores, made on a design file: fields set, entries of lists put in or taken out.

import { editDesign } from '#model/edit/edit-design.ts';
import { insertAt, removeAt } from '#model/edit/edit-list.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { LessonEdit } from './lesson-schema.ts';

/** Throws where a path cannot be followed; reading a lesson does not try its edits, its test does. */
export const applyLessonEdits = (doc: DesignFile, edits: readonly LessonEdit[]): DesignFile =>
  edits.reduce(applyOne, doc);

function applyOne(doc: DesignFile, edit: LessonEdit): DesignFile {
  if ('set' in edit) return editDesign(doc, edit.set, edit.to);
  if ('insert' in edit) {
    const [list, index] = entryOf(edit.insert);
    return insertAt(doc, list, index, edit.value);
  }
  const [list, index] = entryOf(edit.remove);
  return removeAt(doc, list, index);
}

/** `layers[1]` is entry 1 of `layers`. */
function entryOf(path: string): readonly [list: string, index: number] {
  const found = /^(.+)\[(\d+)\]$/.exec(path);
  if (!found) throw new RangeError(`no entry of a list: ${path}`);
  return [found[1]!, Number(found[2])];
}
