// One fault of a design file, made of where it is, what stands there and what was expected.

import type { BadInput } from './bad-input.ts';
import { fieldPath } from '#model/field-path.ts';

const LONGEST = 120;
/** Where every id of a long list would do, its beginning tells which ones are meant. */
const LONGEST_EXPECTED = 300;

export function badField(keys: readonly PropertyKey[], found: unknown, wanted: string): BadInput {
  const expected = shorten(wanted, LONGEST_EXPECTED);
  const field = shorten(fieldPath(keys));
  const shown = shownAs(found);
  const where = field === '' ? 'the file' : field;
  const says =
    found === undefined
      ? `${where} is missing; expected ${expected}.`
      : `${where} is ${shown}; expected ${expected}.`;
  return { field, found: shown, expected, says };
}

/** A value of any size and kind in at most 120 characters; nothing is built that is much longer than that. */
function shownAs(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string')
    return shorten(JSON.stringify(value.slice(0, LONGEST)), LONGEST, value.length > LONGEST);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null)
    return shorten(`an object with the fields ${Object.keys(value).slice(0, 12).join(', ')}`);
  return value === Infinity || value === -Infinity ? 'a number too large to hold' : shorten(String(value));
}

/** `isCut`: something is missing at its end already. */
const shorten = (text: string, longest = LONGEST, isCut = false): string =>
  text.length > longest || isCut ? `${text.slice(0, longest - 1)}…` : text;
