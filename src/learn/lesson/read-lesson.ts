// Reads a lesson: JSON in, a lesson whose build reads like any design file, or all that is wrong with it by field.

import { badField } from '#model/faults/bad-field.ts';
import type { BadInput } from '#model/faults/bad-input.ts';
import type { KnownIds } from '#model/check/check-ids.ts';
import { readDesign } from '#model/read/read-design.ts';
import { lessonSchema, type Lesson } from './lesson-schema.ts';

export type ReadLesson =
  | { readonly kind: 'lesson'; readonly lesson: Lesson }
  | { readonly kind: 'bad'; readonly faults: readonly BadInput[] };

const MOST_FAULTS = 20;

export function readLesson(json: unknown, known: KnownIds): ReadLesson {
  const parsed = lessonSchema.safeParse(json);
  if (!parsed.success) {
    const faults = parsed.error.issues
      .slice(0, MOST_FAULTS)
      .map(({ path, message }) => badField(path, found(json, path), message));
    return { kind: 'bad', faults };
  }
  const build = readDesign(parsed.data.build, known);
  return build.kind === 'bad'
    ? { kind: 'bad', faults: build.faults.map((fault) => ({ ...fault, field: `build.${fault.field}` })) }
    : { kind: 'lesson', lesson: parsed.data };
}

const found = (json: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (node, key) =>
      typeof node === 'object' && node !== null && Object.hasOwn(node, key)
        ? (node as Record<PropertyKey, unknown>)[key]
        : undefined,
    json,
  );
