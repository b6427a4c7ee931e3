// What no design file may hold, whatever its schema: keys that reach into prototypes, deep nesting, endless lists.
// Looked for first, so that nothing after it meets them. Stops at the first find.

import type { BadInput } from './bad-input.ts';
import { badField } from './bad-field.ts';

const DEEPEST = 32;
/** No list of the format may be longer (schema.ts); this keeps a long one from being read entry by entry. */
const LONGEST_LIST = 400;
const HOSTILE_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

export function hostileFaults(json: unknown): readonly BadInput[] {
  const keys: PropertyKey[] = [];
  const visit = (value: unknown): BadInput | null => {
    if (typeof value !== 'object' || value === null) return null;
    if (keys.length > DEEPEST)
      return badField(keys.slice(0, 3), value, `at most ${DEEPEST} levels of nesting`);
    if (Array.isArray(value) && value.length > LONGEST_LIST)
      return badField(keys, value, `a list of at most ${LONGEST_LIST} entries`);
    for (const key of Object.keys(value)) {
      keys.push(Array.isArray(value) ? Number(key) : key);
      const inner = (value as Readonly<Record<string, unknown>>)[key];
      const fault = HOSTILE_KEYS.has(key) ? badField(keys, inner, 'no field of this name') : visit(inner);
      if (fault) return fault;
      keys.pop();
    }
    return null;
  };
  const fault = visit(json);
  return fault ? [fault] : [];
}
