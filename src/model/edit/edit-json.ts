// Edits of a file that is no design yet: any JSON, by the path that a fault names. Whatever stands there may be anything, so
// nothing is taken for granted; a path that cannot be followed changes nothing.

import type { Key } from '#model/field-path.ts';

const PIECE = /(?:^|\.)([A-Za-z_$][\w$]*)|\[(\d{1,6})\]|\[("(?:[^"\\]|\\.)*")\]/y;

/** The keys of any path that `fieldPath` writes, names in quotes too; null for the file as a whole and for no path. */
export function keysOfFault(path: string): readonly Key[] | null {
  const keys: Key[] = [];
  PIECE.lastIndex = 0;
  while (PIECE.lastIndex < path.length) {
    const found = PIECE.exec(path);
    if (found === null) return null;
    const [, name, index, quoted] = found;
    keys.push(name ?? (index === undefined ? unquoted(quoted ?? '""') : Number(index)));
  }
  return keys.length === 0 ? null : keys;
}

export const jsonAt = (json: unknown, keys: readonly Key[]): unknown =>
  keys.reduce<unknown>(
    (node, key) => (isNode(node) && Object.hasOwn(node, key) ? node[key] : undefined),
    json,
  );

/** `undefined` takes the field or the entry out. */
export function withJsonAt(json: unknown, [key, ...rest]: readonly Key[], value: unknown): unknown {
  if (key === undefined) return value;
  if (!isNode(json)) return json;
  const after = withJsonAt(Object.hasOwn(json, key) ? json[key] : undefined, rest, value);
  if (Array.isArray(json)) {
    if (typeof key !== 'number' || key > json.length) return json;
    return after === undefined ? json.toSpliced(key, 1) : json.toSpliced(key, 1, after);
  }
  if (after === undefined) return Object.fromEntries(Object.entries(json).filter(([name]) => name !== key));
  return { ...json, [key]: after };
}

function unquoted(text: string): string {
  try {
    return String(JSON.parse(text));
  } catch {
    return text;
  }
}

type Node = Readonly<Record<Key, unknown>>;

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;
