// From a file name to a read design, or to all that is wrong with the file.

import type { BadInput } from '#model/bad-input.ts';
import type { Design } from '#model/design.ts';
import { readDesignText } from '#model/read-design-text.ts';
import { knownIds } from '#rules/known-ids.ts';
import { printable } from '#report/printable.ts';
import { readFile } from './read-file.ts';

export type Loaded =
  | { readonly kind: 'design'; readonly design: Design }
  | { readonly kind: 'bad'; readonly faults: readonly BadInput[] };

/** `rules`: id of the rule book that stands in for the file's own; null keeps the file's. */
export function loadDesign(file: string, rules: string | null = null): Loaded {
  const read = readFile(file);
  if (read.kind === 'bad') return { kind: 'bad', faults: [read.fault] };
  const found = readDesignText(read.text, knownIds);
  if (found.kind === 'bad' || rules === null) return found;
  return { kind: 'design', design: { ...found.design, rules } };
}

/** A sentence for each fault, each with its file. */
export const faultLines = (file: string, faults: readonly BadInput[]): string =>
  faults.map(({ says }) => printable(`${file}: ${says}`)).join('\n');
