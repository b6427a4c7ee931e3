// Whether a text from outside (a file, a paste, a link) or what this browser kept can be laid on the sheet. It passes the same
// reading as on the command line: with faults it is put right first. What is no design file at all is refused in a sentence.

import type { BadInput } from '#model/faults/bad-input.ts';
import { hostileFaults } from '#model/faults/hostile-faults.ts';
import { readDesign, type ReadDesign } from '#model/read/read-design.ts';
import { readDesignText } from '#model/read/read-design-text.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';

export type Openable =
  | { readonly kind: 'build'; readonly doc: DesignFile }
  | { readonly kind: 'faulty'; readonly json: unknown; readonly faults: readonly BadInput[] }
  | { readonly kind: 'refused'; readonly says: string };

export function openable(text: string): Openable {
  const read = readDesignText(text, knownIds);
  return opened(parsed(text), read);
}

/** What was kept as JSON; it may have been damaged since. */
export const openableJson = (json: unknown): Openable => opened(json, readDesign(json, knownIds));

function opened(json: unknown, read: ReadDesign): Openable {
  if (read.kind === 'design') return { kind: 'build', doc: json as DesignFile };
  const { faults } = read;
  const says = `This is no design file: ${faults[0]?.says ?? 'it cannot be read.'}`;
  const isMeant = isRecord(json) && /^layerwright-design\//.test(String(json.format));
  if (!isMeant || hostileFaults(json).length > 0) return { kind: 'refused', says };
  return { kind: 'faulty', json, faults };
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

/** Whether the sheet can show it though it has faults: what it walks through is there, and every id stands once. */
export function isSheetSafe(json: unknown): json is DesignFile {
  if (!hasBones(json)) return false;
  const named = ['circuits', 'windings', 'parts', 'bridges', 'evidence'] as const;
  return named.every((list) => areDistinct((json[list] ?? []) as readonly Record<string, unknown>[]));
}

function areDistinct(entries: readonly Record<string, unknown>[]): boolean {
  const ids = entries.map(({ id }) => id);
  return ids.every((id) => typeof id === 'string') && new Set(ids).size === ids.length;
}

/** What the page walks through without asking: lists of records, and the records that hold fields. */
function hasBones(json: unknown): json is Record<string, unknown> {
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
  (list as readonly Record<string, unknown>[]).every(
    ({ between }) => Array.isArray(between) && between.every((id) => typeof id === 'string'),
  );
