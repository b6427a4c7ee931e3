// From the issues of the schema library to faults: the path, what stands there, the leaf's own "expected ...".
// Where a field may be one of several shapes, the shape that was evidently meant speaks.

import type * as z from 'zod';
import type { BadInput } from './bad-input.ts';
import { badField } from './bad-field.ts';

type Issue = z.core.$ZodIssue;

export const schemaFaults = (issues: readonly Issue[], json: unknown): readonly BadInput[] =>
  issues.flatMap((issue) => faultsOf(issue, [], json));

function faultsOf(issue: Issue, above: readonly PropertyKey[], json: unknown): readonly BadInput[] {
  const path = [...above, ...issue.path];
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => badField([...path, key], at(json, [...path, key]), issue.message));
  const meant = issue.code === 'invalid_union' ? shapeMeant(issue.errors) : null;
  if (meant) return meant.flatMap((inner) => faultsOf(inner, path, json));
  const found = at(json, path);
  const isClosed = found === 'unknown' && !issue.message.includes('"unknown"');
  return [badField(path, found, isClosed ? `${issue.message}; ${NEVER_UNKNOWN}` : issue.message)];
}

const NEVER_UNKNOWN =
  'it cannot be left unknown: measure it, give an interval { value, plusMinus }, or choose a value';

/** The shape that fits at the field itself and fails only below it; else, of a text, a quantity tells most. */
function shapeMeant(shapes: readonly (readonly Issue[])[]): readonly Issue[] | null {
  const failsBelow = shapes.find((issues) => issues.some((issue) => issue.path.length > 0));
  const quantity = shapes.find((issues) => issues.some((issue) => issue.code === 'custom'));
  return failsBelow ?? quantity ?? null;
}

const at = (json: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, key)
        ? (value as Record<PropertyKey, unknown>)[key]
        : undefined,
    json,
  );
