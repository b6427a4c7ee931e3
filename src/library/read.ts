// A design file for the library: its text, or the object that it holds, read and checked as the command line reads it.

import { knownIds } from '#judge/conductors/known-ids.ts';
import type { BadInput } from '#model/faults/bad-input.ts';
import { readDesignText } from '#model/read/read-design-text.ts';
import { readDesign as readJson } from '#model/read/read-design.ts';

/** A design that was read: every reference checked, every default filled in. What else it holds is for `judge` alone. */
export interface Design {
  readonly format: 'layerwright-design/1';
  readonly title: string;
  /** Id of the rule book that the file asks for. */
  readonly rules: string;
  readonly origin: 'proposed' | 'dissected' | 'lesson';
  readonly notes: string;
}

/** What was read, or all that is wrong with it: up to twenty faults, each with its field, what was found and expected. */
export type ReadDesign =
  | { readonly kind: 'design'; readonly design: Design }
  | { readonly kind: 'bad'; readonly faults: readonly BadInput[] };

/**
 * Reads a design file. Never throws for what stands in it.
 *
 * @param source the text of the file, or the object that was parsed from it
 */
export const readDesign = (source: string | object): ReadDesign =>
  typeof source === 'string' ? readDesignText(source, knownIds) : readJson(source, knownIds);
