// Reads a design from the text of a file: bounds its size, says where it stops being JSON, then reads the JSON.

import type { BadInput } from '#model/faults/bad-input.ts';
import type { KnownIds } from '#model/check/check-ids.ts';
import { jsonFault } from '#model/faults/json-fault.ts';
import { readDesign, type ReadDesign } from './read-design.ts';

const MOST_BYTES = 2_000_000;
const SHOWN = 40;

export function readDesignText(text: string, known: KnownIds): ReadDesign {
  const fault = (found: string, expected: string): ReadDesign => ({
    kind: 'bad',
    faults: [wholeFile(found, expected)],
  });
  if (text.length > MOST_BYTES || bytesOf(text) > MOST_BYTES)
    return fault(`${bytesOf(text)} bytes`, 'at most 2 MB');
  const plain = text.replace(/^\uFEFF/, '');
  if (plain.trim() === '') return fault('empty', 'one JSON object, a design file');
  try {
    return readDesign(JSON.parse(plain), known);
  } catch (error) {
    // anything else is a bug of ours and must not be told as a fault of the file
    if (!(error instanceof SyntaxError)) throw error;
  }
  return fault(placeOf(plain, jsonFault(plain)), 'JSON');
}

const wholeFile = (found: string, expected: string): BadInput => ({
  field: '',
  found,
  expected,
  says: `the file is ${found}; expected ${expected}.`,
});

function placeOf(text: string, at: number): string {
  const before = text.slice(0, at).split('\n');
  const place = `line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1}`;
  const rest = text.slice(at, at + SHOWN);
  return rest === ''
    ? `no JSON: it ends at ${place}, too early`
    : `no JSON from ${place} on: ${JSON.stringify(rest)}`;
}

const bytesOf = (text: string): number => new TextEncoder().encode(text).length;
