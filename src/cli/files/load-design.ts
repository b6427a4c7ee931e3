// From a file name to a read design, or to all that is wrong with the file.

import type { BadInput } from '#model/faults/bad-input.ts';
import type { Design } from '#model/design.ts';
import type { ReadDesign } from '#model/read/read-design.ts';
import { readDesignText } from '#model/read/read-design-text.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { attachedDesign } from '#papers/html/evidence/attached.ts';
import { printable } from '#words/text/printable.ts';
import { readFile } from './read-file.ts';

/** `text`: the design file as it stood. */
export type Loaded =
  | { readonly kind: 'design'; readonly design: Design; readonly text: string }
  | { readonly kind: 'bad'; readonly faults: readonly BadInput[] };

/** `rules`: id of the rule book that stands in for the file's own; null keeps the file's. */
export function loadDesign(file: string, rules: string | null = null): Loaded {
  const read = readFile(file);
  if (read.kind === 'bad') return { kind: 'bad', faults: [read.fault] };
  // a report holds the design that it tells of
  const text = attachedDesign(read.text) ?? read.text;
  const found = readDesignOf(text, rules);
  return found.kind === 'bad' ? found : { ...found, text };
}

export function readDesignOf(text: string, rules: string | null): ReadDesign {
  const found = readDesignText(text, knownIds);
  if (found.kind === 'bad' || rules === null) return found;
  return { kind: 'design', design: { ...found.design, rules } };
}

/** A sentence for each fault, each with its file. */
export const faultLines = (file: string, faults: readonly BadInput[]): string =>
  faults.map(({ says }) => printable(`${file}: ${says}`)).join('\n');
