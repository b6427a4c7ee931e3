// Whether a text from outside (a file, a paste, a link) can be laid on the sheet. A build with a wrong entry can: the
// entry stays in view with its reason. One whose bones are missing cannot, and is refused in a sentence.

import { hostileFaults } from '#model/read/hostile-faults.ts';
import { readDesignText } from '#model/read/read-design-text.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { knownIds } from '#judge/fill/known-ids.ts';

export type Openable =
  { readonly kind: 'build'; readonly doc: DesignFile } | { readonly kind: 'refused'; readonly says: string };

export function openable(text: string): Openable {
  const read = readDesignText(text, knownIds);
  const json = parsed(text);
  if (read.kind === 'design') return { kind: 'build', doc: json as DesignFile };
  const [first] = read.faults;
  const says = first === undefined ? 'This is no design file.' : `This is no design file: ${first.says}`;
  if (json === null || hostileFaults(json).length > 0 || !hasBones(json)) return { kind: 'refused', says };
  return { kind: 'build', doc: json as DesignFile };
}

/** Null for what is too large or no JSON. */
function parsed(text: string): unknown {
  if (text.length > 2_000_000) return null;
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return null;
  }
}

/** What the page walks through without asking: lists of records, and the records that hold fields. */
export function hasBones(json: unknown): boolean {
  if (!isRecord(json) || typeof json.format !== 'string') return false;
  const lists = [json.circuits, json.windings, json.layers];
  const optional = [json.workingVoltages, json.outside, json.bridges, json.parts, json.evidence];
  return (
    lists.every(isRecords) &&
    optional.every((list) => list === undefined || isRecords(list)) &&
    isRecord(json.former) &&
    isRecords(json.former.chambers) &&
    isRecord(json.supply) &&
    [json.surroundings, json.core].every((record) => record === undefined || isRecord(record)) &&
    (json.layers as readonly Record<string, unknown>[]).every(({ kind }) => KINDS.includes(String(kind))) &&
    [json.workingVoltages, json.outside, json.bridges].every(isBetween) &&
    (json.converter === undefined || (isRecord(json.converter) && isRecords(json.converter.outputs)))
  );
}

const KINDS = ['winding', 'tape', 'screen'];

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isRecords = (value: unknown): value is Record<string, unknown>[] =>
  Array.isArray(value) && value.every(isRecord);

const isBetween = (list: unknown): boolean =>
  list === undefined ||
  (list as readonly Record<string, unknown>[]).every(({ between }) => Array.isArray(between));
