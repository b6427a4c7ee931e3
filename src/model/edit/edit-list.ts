// Edits of the lists in a design file: put in, take out, move.
// Evidence names its fields by path, so the numbers in those paths follow the entries; evidence for an entry that went goes too.

import { editDesign, fieldAt } from './edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export function insertAt(doc: DesignFile, path: string, index: number, item: unknown): DesignFile {
  const list = listAt(doc, path);
  inBounds(index, list.length);
  const after = editDesign(doc, path, [...list.slice(0, index), item, ...list.slice(index)]);
  return withEvidence(after, path, (old) => (old >= index ? old + 1 : old));
}

export function removeAt(doc: DesignFile, path: string, index: number): DesignFile {
  const list = listAt(doc, path);
  inBounds(index, list.length - 1);
  const after = editDesign(doc, path, list.toSpliced(index, 1));
  return withEvidence(after, path, (old) => (old === index ? null : old > index ? old - 1 : old));
}

/** `to` is the index that the entry has afterwards. */
export function moveItem(doc: DesignFile, path: string, from: number, to: number): DesignFile {
  const list = listAt(doc, path);
  inBounds(from, list.length - 1);
  inBounds(to, list.length - 1);
  if (from === to) return doc;
  const after = editDesign(doc, path, list.toSpliced(from, 1).toSpliced(to, 0, list[from]));
  return withEvidence(after, path, (old) => movedIndex(old, from, to));
}

function movedIndex(old: number, from: number, to: number): number {
  if (old === from) return to;
  const closedUp = old > from ? old - 1 : old;
  return closedUp >= to ? closedUp + 1 : closedUp;
}

function listAt(doc: DesignFile, path: string): readonly unknown[] {
  const list = fieldAt(doc, path) ?? [];
  if (!Array.isArray(list)) throw new RangeError(`no list at ${path}`);
  return list;
}

function inBounds(index: number, highest: number): void {
  if (!Number.isInteger(index) || index < 0 || index > highest)
    throw new RangeError(`no place ${index} in this list`);
}

/** Renumbers what evidence says of the entries at `path`; `null` means that the entry is gone. */
function withEvidence(doc: DesignFile, path: string, renumber: (old: number) => number | null): DesignFile {
  return (doc.evidence ?? []).reduce((edited, { fields }, i) => {
    if (!fields?.some((field) => field.startsWith(`${path}[`))) return edited;
    const after = fields.flatMap((field) => renumbered(field, path, renumber));
    return editDesign(edited, `evidence[${i}].fields`, after);
  }, doc);
}

function renumbered(
  field: string,
  path: string,
  renumber: (old: number) => number | null,
): readonly string[] {
  const [, digits, rest] =
    (field.startsWith(path) ? /^\[(\d+)\](.*)$/s.exec(field.slice(path.length)) : null) ?? [];
  if (digits === undefined) return [field];
  const index = renumber(Number(digits));
  return index === null ? [] : [`${path}[${index}]${rest ?? ''}`];
}
