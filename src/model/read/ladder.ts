// Old formats of the design file, raised step by step to the one that is read now.
// Each step names the format it starts from and changes only its own fields; format 1 is the first, so there is none yet.

import type { BadInput } from '#model/faults/bad-input.ts';
import { badField } from '#model/faults/bad-field.ts';
import { FORMAT } from '#model/schema/schema.ts';

type Doc = Readonly<Record<string, unknown>>;

export interface Step {
  readonly from: string;
  readonly to: string;
  readonly up: (doc: Doc) => Doc;
}

const STEPS: readonly Step[] = [];

const KIND = 'layerwright-design/';

/** The file in the newest format, or why it cannot be raised to it. */
export function raised(
  json: unknown,
  steps: readonly Step[] = STEPS,
  newest: string = FORMAT,
): { readonly kind: 'raised'; readonly doc: unknown } | { readonly kind: 'bad'; readonly fault: BadInput } {
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    return { kind: 'bad', fault: badField([], json, 'one JSON object, a design file') };
  let doc = json as Doc;
  while (doc['format'] !== newest) {
    const step = steps.find(({ from }) => from === doc['format']);
    if (!step)
      return { kind: 'bad', fault: badField(['format'], doc['format'], known(doc['format'], newest)) };
    doc = { ...step.up(doc), format: step.to };
  }
  return { kind: 'raised', doc };
}

function known(format: unknown, newest: string): string {
  const isNewer = typeof format === 'string' && number(format) > number(newest);
  return isNewer
    ? `${newest} or older: the file was written by a newer version of the program`
    : JSON.stringify(newest);
}

const number = (format: string): number =>
  /^layerwright-design\/\d{1,6}$/.test(format) ? Number(format.slice(KIND.length)) : NaN;
