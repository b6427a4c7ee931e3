// The material of a tape or of a wound tube, without its plies: taken out of a build, and put into the place of another.

import type { DesignFile } from '#model/schema/schema.ts';
import { editDesign, fieldAt } from './edit-design.ts';

type Template = NonNullable<DesignFile['templates']>[number];
export type SheetMaterial = Extract<Template, { readonly material: unknown }>['material'];

const FIELDS = ['material', 'plyThickness', 'film', 'plyWithstand'] as const;

export const materialAt = (doc: DesignFile, path: string): SheetMaterial =>
  Object.fromEntries(
    FIELDS.flatMap((field) => {
      const value = fieldAt(doc, `${path}.${field}`);
      return value === undefined ? [] : [[field, value]];
    }),
  );

/** What the other does not say is left out here as well. */
export const withMaterial = (doc: DesignFile, path: string, material: SheetMaterial): DesignFile =>
  FIELDS.reduce((edited, field) => editDesign(edited, `${path}.${field}`, material[field]), doc);
