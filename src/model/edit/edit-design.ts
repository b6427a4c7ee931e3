// Edits of a design file as it stands in JSON, by the path of a field: the old document stays, what did not change is shared.
// A path that cannot be followed is a bug of the caller and throws; nothing reaches a prototype.

import { keysOf, type Key } from '#model/field-path.ts';
import type { DesignFile } from '#model/schema/schema.ts';

type Node = Readonly<Record<string, unknown>>;

const HOSTILE: readonly Key[] = ['__proto__', 'constructor', 'prototype'];

/** Sets the field, making the records above it where they are missing; `undefined` takes it out. */
export function editDesign(doc: DesignFile, path: string, value: unknown): DesignFile {
  return set(doc, followable(path), value) as DesignFile;
}

/** What stands at the path, `undefined` where nothing does. */
export function fieldAt(doc: DesignFile, path: string): unknown {
  return followable(path).reduce<unknown>(
    (node, key) => (isNode(node) && Object.hasOwn(node, key) ? node[key] : undefined),
    doc,
  );
}

function followable(path: string): readonly Key[] {
  const keys = keysOf(path);
  if (keys === null || keys.length === 0 || keys.some((key) => HOSTILE.includes(key)))
    throw new RangeError(`no path of a field: ${path}`);
  return keys;
}

function set(node: unknown, [key, ...rest]: readonly Key[], value: unknown): unknown {
  if (key === undefined) return value;
  if (typeof key === 'number') return setInList(node, key, rest, value);
  // a text such as "unknown" or a null gives way to the record that is to hold the field
  const record: Node = isNode(node) && !Array.isArray(node) ? node : {};
  const before = Object.hasOwn(record, key) ? record[key] : undefined;
  if (value === undefined && before === undefined) return node;
  const after = set(before, rest, value);
  if (after === before) return node;
  if (after !== undefined) return { ...record, [key]: after };
  return Object.fromEntries(Object.entries(record).filter(([name]) => name !== key));
}

function setInList(node: unknown, index: number, rest: readonly Key[], value: unknown): unknown {
  const list: readonly unknown[] = Array.isArray(node) ? node : [];
  if (index > list.length) throw new RangeError(`the list has ${list.length} entries, so none at ${index}`);
  const after = set(list[index], rest, value);
  if (after === list[index]) return node;
  if (after === undefined) throw new RangeError('an entry is taken out of a list with removeAt');
  return [...list.slice(0, index), after, ...list.slice(index + 1)];
}

const isNode = (value: unknown): value is Node & Readonly<Record<Key, unknown>> =>
  typeof value === 'object' && value !== null;
