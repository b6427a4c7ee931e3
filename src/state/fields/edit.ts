// One change of a field in the design file, by its path; many together are one step of the history.

import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export interface Edit {
  readonly path: string;
  /** `undefined` takes the field out. */
  readonly value: unknown;
}

export const applyEdits = (doc: DesignFile, edits: readonly Edit[]): DesignFile =>
  edits.reduce((edited, { path, value }) => editDesign(edited, path, value), doc);
