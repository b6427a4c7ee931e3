// Which fields of one design file differ from another: the paths of the leaves, in the order of the second file.

import { fieldPath } from '#model/field-path.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export const changedFields = (before: DesignFile, after: DesignFile): readonly string[] =>
  differing(before, after, []).map(fieldPath);

function differing(
  a: unknown,
  b: unknown,
  path: readonly (string | number)[],
): readonly (readonly (string | number)[])[] {
  if (Object.is(a, b)) return [];
  if (!isNode(a) || !isNode(b)) return [path];
  const keys = [...new Set([...Object.keys(b), ...Object.keys(a)])];
  const isList = Array.isArray(b);
  return keys.flatMap((key) => differing(a[key], b[key], [...path, isList ? Number(key) : key]));
}

const isNode = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
